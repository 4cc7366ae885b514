import { allFunctions } from "../../../src/functions";
import { citedBy } from "../../../src/functions/cited-by";
import { choice, optional, vocabulary, worksheetFunction, type WorksheetFunction } from "../../../src/functions/frame";
import { runFunction } from "../../../src/functions/frame/run";
import { sourceFunction } from "../../../src/functions/units/source";
import { guideWords } from "../../../src/functions/words";
import { guides } from "../../../src/reference/guides";
import { sources } from "../../../src/reference/sources";
import type { Cited } from "../../../src/reference/table";

const animals = vocabulary("animal", { cow: { label: "cow", also: [] }, hen: { label: "hen", also: [] } });
const rows = {
  cow: { mark: "V", source: "mn-statutes-239.32", locator: "Table 1" },
  hen: { mark: "M", source: "mn-statutes-239.32", locator: "Table 2" },
} as const satisfies Record<"cow" | "hen", Cited>;

/** A function of two words, one row each, with a second source that no row cites. */
const counting = worksheetFunction({
  name: "COUNTING",
  family: "units",
  summary: "Legs.",
  args: { animal: choice(animals, { says: "whose" }) },
  returns: { shape: "one", unit: "legs", says: "how many" },
  sources: ["nist-sp-811-2008"],
  example: { call: ["cow"], gives: 4, because: "by hand" },
  compute: ({ animal }) => ({ animal, legs: animal === "cow" ? 4 : 2 }),
  value: (result) => result.legs,
  working: () => [],
  cites: (result) => [rows[result.animal]],
});

const source = sourceFunction([counting] as readonly WorksheetFunction[]);
const statute = sources["mn-statutes-239.32"];
const nist = sources["nist-sp-811-2008"];

describe("SOURCE", () => {
  const listed = [
    ["Publisher", "Title", "Year", "Where", "Note"],
    [nist.publisher, nist.title, nist.year, "", ""],
    [statute.publisher, statute.title, statute.year, "Table 1; Table 2", "Check against the current bulletin."],
  ];
  it("lists what is declared and what any word's row cites, with the places and what to check", () => {
    expect(runFunction(source, ["COUNTING"])).toEqual(listed);
  });
  it.each(["counting", "LOAM.COUNTING", "=LOAM.COUNTING()"])("understands %j", (name) => {
    expect(runFunction(source, [name])).toEqual(listed);
  });
  it("pays no heed to a guide where the function knows none", () => {
    expect(runFunction(source, ["COUNTING", "Ohio"])).toEqual(listed);
  });
  it("offers names near one it does not know, and waits for a blank", () => {
    expect(runFunction(source, ["COUNTED"])).toEqual([
      [{ code: "#VALUE!", message: 'function "COUNTED" is not known here. Use: COUNTING.' }],
    ]);
    expect(runFunction(source, [null])).toEqual([[{ code: "#N/A", message: "waiting for function" }]]);
  });
  it("says so when a guide has no number for the function", () => {
    const guided = worksheetFunction({
      ...counting,
      args: { ...counting.args, guide: optional(choice(guideWords, { says: "guide" }), null, "none") },
      compute: ({ animal }) => ({ animal, legs: 0 }),
      cites: () => [],
    });
    expect(runFunction(sourceFunction([guided] as readonly WorksheetFunction[]), ["COUNTING", "Ohio"])).toEqual([
      [{ code: "#N/A", message: expect.stringMatching(/IN-MI-OH publishes no number for COUNTING/) }],
    ]);
  });
});

describe("SOURCE over all functions", () => {
  const real = allFunctions.find((fn) => fn.name === "SOURCE");
  const others = allFunctions.filter((fn) => fn !== real);
  const ask = (...call: string[]) => (real ? runFunction(real, call) : []);

  it.each(others.map((fn) => [fn.name, fn.sources] as const))("%s has each source it declares", (name, declared) => {
    const titles = ask(name).map((row) => row[1]);
    for (const key of declared) expect(titles).toContain(sources[key].title);
    expect(titles.length).toBeGreaterThan(1);
  });
  it("notes a number quoted from memory: the sunflower's seed unit, the millet's bushel", () => {
    for (const [name, key] of [
      ["SEEDUNITS", "trade-seed-units"],
      ["BUSHELWEIGHT", "trade-bushel-weights"],
    ] as const) {
      const row = ask(name).find((cells) => cells[1] === sources[key].title);
      expect(row?.[4]).toBe("Check against the current bulletin.");
    }
  });
  it("lists under one guide nothing that only another guide rests on", () => {
    for (const fn of others.filter(({ args }) => "guide" in args)) {
      for (const guide of Object.values(guides)) {
        const shown = ask(fn.name, guide.label);
        if (shown.length === 1) continue; // this guide has no number for it
        const titles = shown.slice(1).map((row) => row[1]);
        const own: readonly string[] = guide.sources.map((key) => sources[key].title);
        const cited: readonly string[] = citedBy(fn, guide.label).map((row) => sources[row.source].title);
        const foreign = Object.values(guides)
          .flatMap((other): string[] => other.sources.map((key) => sources[key].title))
          .filter((title) => !own.includes(title) && !cited.includes(title));
        for (const title of own) expect(titles).toContain(title);
        for (const title of foreign) expect(titles).not.toContain(title);
      }
    }
  });
  it("finds rows that several words together lead to: Wisconsin's classes by crop and soil group", () => {
    const titles = ask("TESTRATING", "WI").map((row) => row[1]);
    expect(titles).toContain(sources["uw-demand-levels"].title);
    expect(titles).not.toContain(sources["osu-974-2020"].title);
  });
  it("lists removal a guide's maintenance rests on, and what is from memory", () => {
    const rows = ask("PHOSPHATENEED", "Illinois");
    expect(rows.map((row) => row[1])).toContain(sources["cftm-180090-2019"].title);
    const handbook = rows.find((row) => row[1] === sources["uiuc-handbook-8"].title);
    expect(handbook?.[4]).toBe("Check against the current bulletin.");
  });
  it("says so where a guide's rates are not held", () => {
    for (const guide of ["DE", "NJ"]) {
      expect(ask("PHOSPHATENEED", guide)).toEqual([
        [{ code: "#N/A", message: expect.stringMatching(/publishes no number for PHOSPHATENEED/) }],
      ]);
      expect(ask("TESTRATING", guide).length).toBeGreaterThan(1);
    }
  });
});
