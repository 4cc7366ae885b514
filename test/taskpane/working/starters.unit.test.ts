import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import { reportSelection, type CellReport } from "../../../src/taskpane/pane/working/report";
import { defaultChoices, starters } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { ownCells, PlanHost } from "../plan-host";

jest.setTimeout(60_000);

/** One call of ours and nothing after it, at most held back while its row has no name or a number is missing. */
function isWhole(formula: string): boolean {
  return /^=(?:IF\([^"]*="","",)?(?:IF\(COUNT\([^()]*\)=\d+,)?LOAM\.[A-Z]+\([^]*\)(?:,"")?\)*$/.test(formula);
}

describe.each(starters.map((starter) => [starter.title, starter] as const))("the starter “%s”", (_title, starter) => {
  const plan = makePlan(starter, defaultChoices);
  const reports: CellReport[] = [];
  const formulas = new Map<string, string>();

  beforeAll(async () => {
    const host = new PlanHost(plan, await calculate(plan, allFunctions));
    for (const address of ownCells(plan)) {
      host.selected = address;
      const report = await reportSelection(host);
      reports.push(report);
      formulas.set(report.address, String((await host.readSelection()).formulas[0]?.[0]));
    }
  });

  /** What a call is refused for, where the formula has no word of its own for that. */
  const unexplained = (report: CellReport): string[] =>
    report.calls.flatMap(({ fn, outcome }) =>
      "because" in outcome ? [`${report.address} ${fn.name}: ${outcome.because}`] : [],
    );

  it("shows steps for every cell that shows a number of ours", () => {
    const answered = reports.filter(({ shows, calls }) => typeof shows === "number" && calls.length > 0);
    expect(answered.length).toBeGreaterThan(0);
    expect(answered.flatMap(unexplained)).toEqual([]);
  });

  it("can work out every argument, also where the cell shows words", () => {
    const stuck = /Put that part in a cell of its own|could not be read|only the spreadsheet/;
    expect(reports.flatMap(unexplained).filter((said) => stuck.test(said))).toEqual([]);
  });

  it("works out again what the cell shows, wherever the call is the whole answer", () => {
    const whole = reports.filter(
      ({ address, isAnError, shows }) => !isAnError && shows !== "" && isWhole(formulas.get(address) ?? ""),
    );
    const others = whole.filter(({ calls }) => !calls[0]?.isWhatShows);
    expect(others.map(({ address, shows }) => `${address} shows ${String(shows)}`)).toEqual([]);
    expect(whole.length).toBeGreaterThan(0);
  });

  it("says why for every cell that shows an error of ours", () => {
    const silent = reports.filter(
      ({ isAnError, message, calls }) => isAnError && !message && calls.every(({ outcome }) => !("because" in outcome)),
    );
    expect(silent.map(({ address }) => address)).toEqual([]);
  });
});
