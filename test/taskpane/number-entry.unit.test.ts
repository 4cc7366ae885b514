/** @jest-environment jsdom */
import { allFunctions } from "../../src/functions";
import type { Argument } from "../../src/functions/frame/arguments";
import { readEntry, takesList } from "../../src/taskpane/pane/find/form/entry";
import { mountPane } from "../../src/taskpane/pane";
import { readNumber } from "../../src/taskpane/pane/parts/read-number";
import { FakeHost } from "./fake-host";

const noBreak = "\u00a0";

/** A number as people write it: with spaces, a dollar sign where dollars are asked for, commas, the unit behind. */
function waysOf(plain: string, unit: string): string[] {
  const [whole = "", part] = plain.split(".");
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, ",") + (part === undefined ? "" : `.${part}`);
  return [
    ` ${plain} `,
    `${noBreak}${plain}${noBreak}`,
    parted,
    ...(unit.includes("$") ? [`$${parted}`, `$ ${plain}`, `${plain} $`] : []),
    ...(unit === "%" ? [`${plain}%`, `${plain} %`, `${plain}${noBreak}%`] : []),
  ];
}

describe("a number as it is typed", () => {
  const read = (text: string, unit: string) => readNumber("It", text, { min: -1e6, max: 1e6, unit });

  it.each([
    ["4.35", "$/bu", ["$4.35", "$ 4.35", "4.35$", "4.35 $/bu", "$4.35/bu", "$4.35 per bushel", "4.35 per bu"], 4.35],
    ["1200", "$/ac", ["1,200", "$1,200.00", " $ 1,200 / ac", "1,200", "+1200", "1200."], 1200],
    ["200", "bu/ac", ["200 bu", "200 bu/ac", "200bu/ac", "200 bushels per acre", "200 Bu/Ac"], 200],
    ["80", "ac", ["80 acres", "80 acre", "80ac"], 80],
    ["3400", "lb", ["3,400 lb", "3400 lbs", "3,400 pounds", "3 400"], 3400],
    ["600", "ft", ["600 ft", "600 feet"], 600],
    ["6", "blocks", ["6 blocks"], 6],
    ["15.5", "%", ["15.5%", "15.5 %"], 15.5],
    ["-12", "$/ac", ["-12", "−12", "(12)", "($12)", "-$12", "- 12"], -12],
    ["0.5", "$/bu", [".5", "$.50"], 0.5],
  ] as const)("is %s (%s) in each of its ways", (_plain, unit, ways, value) => {
    for (const text of ways) expect([text, read(text, unit)]).toEqual([text, { value }]);
  });

  it.each([
    ["%", "$/bu", "4 %"],
    ["another unit", "bu/ac", "190 lb"],
    ["a word", "bu/ac", "plenty"],
    ["a unit alone", "bu/ac", "bu/ac"],
    ["a dollar sign alone", "$/ac", "$"],
    ["a comma in the wrong place", "$/ac", "1,20"],
    ["two numbers", "bu/ac", "180-200"],
    ["an open bracket", "$/ac", "(12"],
  ])("is no number with %s: it is refused and quoted", (_what, unit, text) => {
    expect(read(text, unit)).toEqual({ refusal: `It must be a number (${unit}); got "${text}".` });
  });

  it("is not there while its box is blank", () => {
    expect([read("", "ac"), read(` ${noBreak}`, "ac")]).toEqual(["blank", "blank"]);
  });
});

describe("the boxes of every function", () => {
  const cases = allFunctions.flatMap((fn) => {
    const args = Object.entries<Argument>(fn.args);
    return args.flatMap(([name, argument], index) => {
      const value = fn.example.call[index];
      const isNumber = typeof value === "number" && argument.limit !== undefined && argument.limit.unit !== "date";
      return isNumber && !takesList(argument) ? [{ called: `${fn.name} ${name}`, name, argument, value }] : [];
    });
  });

  it("are many", () => {
    expect(cases.length).toBeGreaterThan(250);
  });

  it.each(cases.map((one) => [one.called, one] as const))("%s reads a number in each of its ways", (_called, one) => {
    const { name, argument, value } = one;
    const unit = argument.limit?.unit ?? "";
    const plain = readEntry(name, argument, { text: String(value) });
    // A small percentage keeps its sign, which tells it from a share.
    const ways = waysOf(String(value), unit).filter((text) => !(text.includes("%") && Math.abs(value) < 1));
    for (const text of ways) {
      const { raw, formula, refusal } = readEntry(name, argument, { text });
      expect([text, raw, formula, refusal]).toEqual([text, plain.raw, plain.formula, undefined]);
    }
  });
});

describe("the boxes of the other parts", () => {
  function byId(id: string): HTMLInputElement {
    const found = document.getElementById(id);
    if (!(found instanceof HTMLInputElement || found instanceof HTMLTextAreaElement)) throw new Error(`no box ${id}`);
    return found as HTMLInputElement; // both are typed into alike
  }

  function type(id: string, text: string): void {
    byId(id).value = text;
    byId(id).dispatchEvent(new Event("input", { bubbles: true }));
    byId(id).dispatchEvent(new Event("focusout", { bubbles: true }));
  }

  function press(label: string): void {
    [...document.querySelectorAll("button")].find(({ textContent }) => textContent === label)?.click();
  }

  const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 10));

  /** All that the part shows beside what is typed into its boxes. */
  const shown = (): string => document.querySelector(".view")?.textContent ?? "";

  const boxes = (): HTMLInputElement[] => [...document.querySelectorAll<HTMLInputElement>(".view input.number")];

  /** Types each number in each of its ways: the part shows the same as for the plain number, and refuses nothing. */
  function expectAllWays(numbers: Readonly<Record<string, string>>): void {
    for (const { id } of boxes()) {
      const plain = numbers[id];
      if (plain === undefined) throw new Error(`What is typed into ${id}?`);
      const unit = document.getElementById(`${id}-unit`)?.textContent ?? "";
      type(id, plain);
      const asPlain = shown();
      for (const text of waysOf(plain, unit)) {
        type(id, text);
        expect([id, text, byId(id).getAttribute("aria-invalid"), shown()]).toEqual([id, text, null, asPlain]);
      }
      type(id, plain);
    }
  }

  beforeEach(() => {
    document.body.innerHTML = "<div id='root'></div>";
    const root = document.getElementById("root");
    if (root) mountPane(root, new FakeHost(), { kind: "excel" });
  });

  it("of a start", () => {
    press("Start a workbook");
    const figures = document.querySelector<HTMLInputElement>("input[value='empty']");
    figures?.click();
    figures?.dispatchEvent(new Event("input", { bubbles: true }));
    const numbers = Object.fromEntries(
      boxes().map(({ id }) => [id, id.includes("price") ? "4.35" : id.includes("fields") ? "12" : "190"]),
    );
    expect(Object.keys(numbers).length).toBeGreaterThanOrEqual(5);
    expectAllWays(numbers);
  });

  it("of What if", async () => {
    press("What if");
    await settled();
    const wanted: Readonly<Record<string, string>> = {
      ...{ "what-if-yield": "190", "what-if-price": "4.35", "what-if-cost": "1025", "what-if-perBushel": "0.3" },
      ...{ "what-if-other": "20", "what-if-acres": "1480" },
    };
    for (const [id, text] of Object.entries(wanted)) type(id, text);
    press("Add a cost");
    const ends = Object.fromEntries(boxes().map(({ id }) => [id, endFor(id, wanted)]));
    expect(boxes().length).toBeGreaterThan(12);
    expectAllWays(ends);
  });

  /** As tried, except that a lowest stands below and a highest above. */
  function endFor(id: string, wanted: Readonly<Record<string, string>>): string {
    const [, name = "", end] = /^(.*?)(?:-(low|high|planned))?$/.exec(id) ?? [];
    const tried = Number(wanted[name] ?? "100");
    return String(end === "low" ? tried / 2 : end === "high" ? tried * 2 : tried);
  }

  it("of a strip trial", () => {
    press("Strip trials");
    type("trial-treatments", "check\nfungicide");
    const numbers: Record<string, string> = { "trial-blocks": "4", "trial-width": "20", "trial-length": "1200" };
    for (const [id, text] of Object.entries({ ...numbers, "trial-seed": "1009" })) type(id, text);
    press("Make the layout");
    expect(document.getElementById("trial-map")).not.toBeNull();
    expect(boxes().length).toBeGreaterThan(12);
    const fitting: Readonly<Record<string, string>> = {
      ...numbers,
      ...{ "trial-seed": "1009", "trial-price": "4.35", "trial-confidence": "90", "trial-confidence-size": "95" },
      ...{ "trial-gainToSee": "10", "trial-stripSd": "7", "trial-power": "80" },
    };
    expectAllWays(Object.fromEntries(boxes().map(({ id }) => [id, fitting[id] ?? "180"])));
  });
});
