import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { WorkbookHost } from "../../../src/hosts/port";
import { answerRequests, loadOffice, makeGlobal, type Answer, type GenuineOffice } from "./genuine-office";
import { MemoryWorkbook } from "./memory/memory-workbook";

/** The genuine library, loaded before the tests of a file and put away after them. */
export interface ExcelInTest {
  readonly office: GenuineOffice;
  /** Excel on a workbook, a new one when none is given, and our host that speaks to it. */
  open(workbook?: MemoryWorkbook): { readonly workbook: MemoryWorkbook; readonly host: WorkbookHost };
  /** Lets something else answer from now on, such as a workbook that fails. */
  answer(answer: Answer): void;
}

/** @param level highest ExcelApi level that this Excel knows, such as 12 for "1.12"; today's when left out */
export function excelInTest(level?: number): ExcelInTest {
  let loaded: GenuineOffice | undefined;
  beforeAll(async () => {
    loaded = await loadOffice(level);
    makeGlobal(loaded);
  });
  afterAll(() => loaded?.close());
  return {
    get office() {
      if (!loaded) throw new Error("The library loads before the first test: use it in tests only.");
      return loaded;
    },
    open(workbook = new MemoryWorkbook()) {
      this.answer(workbook.answer);
      return { workbook, host: excelHost() };
    },
    answer(answer) {
      answerRequests(this.office, answer);
    },
  };
}
