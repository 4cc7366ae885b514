import "./page-globals";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import { mountPane, type Pane, type PaneEnvironment } from "../../../src/taskpane/pane";
import { answerRequests, type GenuineOffice } from "./genuine-office";
import type { MemoryWorkbook } from "./memory/memory-workbook";

/** The pane on the page of the test, talking to a workbook in memory through the genuine library. */
export class PaneInExcel {
  private readonly pane: Pane;

  constructor(
    private readonly office: GenuineOffice,
    private readonly workbook: MemoryWorkbook,
    environment: Partial<PaneEnvironment> = {},
  ) {
    answerRequests(office, workbook.answer);
    document.body.innerHTML = "<div id='root'></div>";
    this.pane = mountPane(this.byId("root"), excelHost(), {
      kind: "excel",
      workbookId: async () => "farm.xlsx",
      ...environment,
    });
  }

  open(view: Parameters<Pane["open"]>[0]): Promise<void> {
    this.pane.open(view);
    return this.settled();
  }

  /** The person selects other cells. */
  select(sheet: string, address: string): Promise<void> {
    this.workbook.active = this.workbook.sheet(sheet);
    this.workbook.selected = { sheet: this.workbook.active, address };
    this.office.select();
    return this.settled();
  }

  byId(id: string): HTMLElement {
    const found = document.getElementById(id);
    if (!found) throw new Error(`There is no ${id} on the page.`);
    return found;
  }

  press(label: string): Promise<void> {
    const called = (one: HTMLButtonElement) => one.getAttribute("aria-label") ?? one.textContent;
    const found = [...document.querySelectorAll("button")].find((one) => called(one) === label);
    if (!found) throw new Error(`There is no button "${label}". The page says: ${this.text()}`);
    found.click();
    return this.settled();
  }

  pressId(id: string): Promise<void> {
    this.byId(id).click();
    return this.settled();
  }

  type(id: string, text: string): void {
    const field = this.byId(id) as HTMLInputElement; // fields of all kinds have a value
    field.value = text;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  }

  text(): string {
    return document.querySelector(".view")?.textContent ?? "";
  }

  /** Waits until nothing more is asked of the workbook and the page stays as it is. */
  async settled(): Promise<void> {
    let before = "";
    for (let calm = 0, tries = 0; calm < 3 && tries < 2000; tries++) {
      await new Promise((done) => setTimeout(done, 10));
      const now = `${this.workbook.asked.length} ${this.text()}`;
      calm = now === before ? calm + 1 : 0;
      before = now;
    }
  }
}
