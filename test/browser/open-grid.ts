import type { Page } from "playwright-core";
import type { FillReceipt, HostRange, HostValue } from "../../src/hosts/port";
import type { WorkbookPlan } from "../../src/workbook/plan";
import { until } from "./page";

/** The workbook of a page as a person works with it: cells are gone to and typed into by keyboard. */
export interface OpenGrid {
  /** Settles when the workbook is open and drawn. */
  ready(): Promise<void>;
  fill(plan: WorkbookPlan, protect?: boolean): Promise<FillReceipt>;
  read(address: string): Promise<HostRange>;
  /** The value of one cell. */
  value(address: string): Promise<HostValue | undefined>;
  /** Goes to a cell by way of the name box, as a person would. */
  select(address: string): Promise<void>;
  type(address: string, text: string): Promise<void>;
  /** What the page says about keeping the workbook. */
  status(): Promise<string>;
  /** Waits until the last change has been written down. */
  kept(): Promise<void>;
}

/** @param page the page to work with at the time of asking */
export function openGrid(page: () => Page): OpenGrid {
  const read = (address: string) =>
    page().evaluate((given) => {
      if (!window.loamsheet) throw new Error("no host");
      return window.loamsheet.read(given);
    }, address);
  const status = () => page().locator("#page-status").innerText();
  return {
    ready: () => ready(page()),
    fill: (plan, protect = false) =>
      page().evaluate(
        ([given, locks]) => {
          if (!window.loamsheet) throw new Error("no host");
          return window.loamsheet.fill(given, { protect: locks });
        },
        [plan, protect] as const,
      ),
    read,
    value: async (address) => (await read(address)).values[0]?.[0],
    select: (address) => select(page(), address),
    type: (address, text) => type(page(), address, text),
    status,
    async kept() {
      await page().waitForTimeout(800);
      await until(async () => (await status()) === "Kept in this browser.", "it was kept");
    },
  };
}

async function ready(page: Page): Promise<void> {
  await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
  // The drawing follows the data by a moment; clicks need it.
  await page.waitForSelector("#grid canvas");
  await page.waitForTimeout(600);
}

async function select(page: Page, address: string): Promise<void> {
  const box = page.locator('#grid [data-u-comp="defined-name"] input');
  await box.click();
  await box.fill(address);
  await box.press("Enter");
  await until(
    async () => (await page.evaluate(() => window.loamsheet?.readSelection()))?.address.endsWith(address) ?? false,
    `${address} was selected`,
  );
  await page.waitForTimeout(150);
}

async function type(page: Page, address: string, text: string): Promise<void> {
  await select(page, address);
  await page.keyboard.type(text);
  // On a busy machine the list of matching functions closes late, and Enter would choose from it.
  await page.waitForTimeout(text.startsWith("=") ? 500 : 50);
  await page.keyboard.press("Enter");
}
