import type { Page } from "playwright-core";
import { serveBuiltPages, until } from "../browser/page";
import { planOf } from "../workbook/starters/shown-sheet";
import type { Figure } from "./figure";

/** A large farm plan in the built page: filled and calculated, then one yield typed and all that hangs on it. */
export async function farmInPage(fields: number): Promise<Figure[]> {
  const pages = await serveBuiltPages();
  try {
    const { page } = await pages.open("index.html");
    await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
    const plan = planOf("farm-plan", { numberOfFields: fields });
    const filled = await page.evaluate(async (given) => {
      const begun = performance.now();
      await window.loamsheet?.fill(given, { protect: false });
      return performance.now() - begun;
    }, plan);
    return [
      { what: "filled and calculated", value: filled, unit: "ms" },
      { what: "the interest rate changed, until the farm's profit followed", value: await oneEdit(page), unit: "ms" },
      { what: "memory of the page's script", value: await heap(page), unit: "MB" },
    ];
  } finally {
    await pages.stop();
  }
}

/** The interest rate stands behind every budget and the summary. */
async function oneEdit(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const host = window.loamsheet;
    if (!host) throw new Error("The workbook is not open.");
    const before = JSON.stringify((await host.read("Summary!A1:F20")).values);
    const begun = performance.now();
    const { address, values } = await host.read("interest_rate");
    await host.write([{ address, rows: [[Number(values[0]?.[0]) + 0.01]] }], "typedValues");
    while (JSON.stringify((await host.read("Summary!A1:F20")).values) === before) {
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    return performance.now() - begun;
  });
}

async function heap(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  return usedSize / 2 ** 20;
}
