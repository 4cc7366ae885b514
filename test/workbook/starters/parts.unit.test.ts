import { allFarmParts, defaultChoices, isWanted, starters, type FarmPart } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { planOf, show } from "./shown-sheet";

jest.setTimeout(60_000);

const farm = starters.filter(({ key }) => key === "farm-plan").flatMap(({ sheets }) => sheets);
const choices: readonly (readonly [string, readonly FarmPart[]])[] = [
  ["no part", []],
  ...allFarmParts.map((part) => [`${part} alone`, [part]] as const),
  ...allFarmParts.map((part) => [`all but ${part}`, allFarmParts.filter((each) => each !== part)] as const),
  ["every part", allFarmParts],
];

describe("the parts of the farm plan", () => {
  it.each(choices)("%s: makes the sheets wanted, names no other, and shows no error", async (_name, parts) => {
    const book = await show(planOf("farm-plan", { parts }));
    const wanted = farm.filter((sheet) => isWanted(sheet, parts)).map(({ name }) => name);
    expect(book.plan.sheets.map(({ name }) => name)).toEqual(wanted);
    expect(book.errors()).toEqual([]);
    const [first, ...others] = wanted;
    const links = book.plan.sheets[0]?.cells.flatMap(({ link }) => link ?? []);
    expect(first).toBe("Start here");
    expect(links).toEqual(others);
  });

  it("leaves a sheet out for each part that is left out", () => {
    for (const part of allFarmParts) {
      const without = planOf("farm-plan", { parts: allFarmParts.filter((each) => each !== part) });
      expect(without.sheets.length).toBeLessThan(planOf("farm-plan").sheets.length);
    }
  });

  it("makes all of them unless told otherwise, and leaves the other starters alone", () => {
    expect(planOf("farm-plan").sheets.map(({ name }) => name)).toEqual(farm.map(({ name }) => name));
    for (const starter of starters.filter(({ key }) => key !== "farm-plan")) {
      expect(makePlan(starter, { ...defaultChoices, parts: [] })).toEqual(makePlan(starter, defaultChoices));
    }
  });
});
