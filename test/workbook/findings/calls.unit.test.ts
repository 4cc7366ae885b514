import { fewBlocks } from "../../../src/workbook/findings/few-blocks";
import { foreignExtractions } from "../../../src/workbook/findings/foreign-extractions";
import { loneHerbicideGroups } from "../../../src/workbook/findings/lone-herbicide-groups";
import { callOf, column, sheetOf, workbookOf } from "./reading-of";

const nothing = workbookOf([]);

describe("a guide with another's extraction", () => {
  it("is found in calls, those alike together, at the first of them", () => {
    const calls = [3, 7].map((row) => callOf("PHOSPHATENEED", { guide: "IN-MI-OH", method: "Olsen" }, row));
    expect(foreignExtractions(nothing, calls)).toEqual([
      {
        ...{ kind: "foreignExtraction", at: { sheet: "Sheet1", row: 3, column: 0 }, guide: "IN-MI-OH" },
        ...{ nutrient: "P2O5", extraction: "Olsen", takes: ["Mehlich-3", "Mehlich-3 ICP"], cells: 2 },
      },
    ]);
  });
  it("is found in the names of a farm plan", () => {
    const sheet = sheetOf("Assumptions", [
      ["Guide", "IN-MI-OH"],
      ["Phosphorus method", "Bray P1"],
    ]);
    const names: Record<string, [string, number, number]> = {
      guide_2: ["Assumptions", 0, 1],
      phosphorus_method_2: ["Assumptions", 1, 1],
    };
    expect(foreignExtractions(workbookOf([sheet], names), [])).toMatchObject([
      { at: { sheet: "Assumptions", row: 1, column: 1 }, extraction: "Bray P1" },
    ]);
  });
  it("is not asked about where a sheet sets guides side by side", () => {
    const calls = ["IN-MI-OH", "IA", "MN"].map((guide, row) =>
      callOf("PHOSPHATENEED", { guide, method: "Mehlich-3" }, row),
    );
    expect(foreignExtractions(nothing, calls)).toEqual([]);
    expect(foreignExtractions(nothing, calls.slice(1))).toHaveLength(2);
  });
  it("is not one the guide takes, one left out, or words that are neither", () => {
    const given = (method: string | null) => callOf("TESTRATING", { nutrient: "P", guide: "IN-MI-OH", method });
    expect(foreignExtractions(nothing, [given("Mehlich-3"), given(null), given("hot water")])).toEqual([]);
  });
});

describe("one herbicide group alone", () => {
  const program = (actives: string[], control?: string[], passes?: string[]) =>
    callOf("PROGRAMGROUPS", {
      activeIngredients: column(...actives),
      ...(control && { control: column(...control) }),
      ...(passes && { passes: column(...passes) }),
    });

  it("is a season of several herbicides that all belong to one group", () => {
    // imazethapyr and cloransulam are both group 2.
    expect(loneHerbicideGroups([program(["imazethapyr", "cloransulam"])])).toMatchObject([
      { group: 2, uses: 2, pass: undefined },
    ]);
  });
  it("is asked about once where an answer is taken apart cell by cell", () => {
    const calls = [program(["imazethapyr", "cloransulam"]), program(["imazethapyr", "cloransulam"])];
    expect(loneHerbicideGroups(calls)).toHaveLength(1);
  });
  it("is a pass in which only one group controls the driver weed", () => {
    const found = loneHerbicideGroups([
      program(
        ["S-metolachlor", "metribuzin", "glyphosate", "fomesafen"],
        ["yes", "yes", "no", "yes"],
        ["pre", "pre", "post", "post"],
      ),
    ]);
    expect(found).toMatchObject([{ group: 14, pass: "post" }]);
  });
  it("is not a program of two groups, nor one herbicide written down alone", () => {
    expect(loneHerbicideGroups([program(["metribuzin", "S-metolachlor"]), program(["glyphosate"])])).toEqual([]);
  });
  it("is a list of SITEOFACTION answers that are all the same, and not one of two", () => {
    const site = (ingredient: string, row: number) => callOf("SITEOFACTION", { activeIngredient: ingredient }, row);
    expect(loneHerbicideGroups([site("imazethapyr", 1), site("cloransulam", 2)])).toMatchObject([
      { group: 2, uses: 2, at: { row: 1 } },
    ]);
    expect(loneHerbicideGroups([site("imazethapyr", 1), site("metribuzin", 2)])).toEqual([]);
  });
});

describe("a trial with few blocks", () => {
  const blocks = (...names: (number | null)[]) =>
    callOf("TRIALBLOCKS", {
      blocks: column(...names),
      yields: column(...names.map((name) => (name === null ? null : 200))),
    });

  it("has fewer than four, counted where a yield stands", () => {
    expect(fewBlocks([blocks(1, 2, 3, 1, 2, 3)])).toMatchObject([{ blocks: 3, usual: 4, unit: "blocks" }]);
    const pairs = callOf("TRIALPAIRS", { check: column(180, 176, 171, 183), treated: column(187, 179, null, 188) });
    expect(fewBlocks([pairs])).toMatchObject([{ blocks: 3, unit: "pairs" }]);
  });
  it("does not have four, and is not one that waits for its yields", () => {
    expect(fewBlocks([blocks(1, 2, 3, 4), blocks(null, null)])).toEqual([]);
  });
});
