import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { programGroups } from "../../../src/functions/protection/program-groups";
import { resistanceRisk } from "../../../src/functions/protection/resistance-risk";
import { siteOfAction } from "../../../src/functions/protection/site-of-action";
import { herbicideGroups, herbicides } from "../../../src/reference/protection/herbicides";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const column = (...cells: (string | number | boolean | null)[]) => cells.map((cell) => [cell]);
const sentences = (cells: readonly (readonly unknown[])[]) =>
  cells.filter(([what]) => what === "Look at").map(([, sentence]) => sentence);

describe("SITEOFACTION on a sheet", () => {
  it.each(herbicideGroups.rows.map((row) => [herbicides[row.active].label, row.site] as const))(
    "%s is group %i, in capitals too",
    (label, site) => {
      expect(runFunction(siteOfAction, [[[label], [label.toUpperCase()]]])).toEqual([[site], [site]]);
    },
  );
  it("knows the spellings of esters and salts", () => {
    expect(runFunction(siteOfAction, [column("chlorimuron-ethyl", "2,4-D choline", "glufosinate ammonium")])).toEqual([
      [2],
      [4],
      [10],
    ]);
  });
  it("brings former numbers up to date and lets a label's number stand", () => {
    expect(runFunction(siteOfAction, [column(7, "Group 8", "WSSA 28", 9, "#14", 33)])).toEqual([
      [5],
      [15],
      [27],
      [9],
      [14],
      [33],
    ]);
  });
  it("names the nearest ingredients for a word it does not know, and refuses broken numbers", () => {
    expect(messageOf(runFunction(siteOfAction, ["atrazin"]))).toContain("Nearest: atrazine");
    expect(messageOf(runFunction(siteOfAction, [9.5]))).toContain("is no group number");
    expect(messageOf(runFunction(siteOfAction, [99]))).toContain("between 1 and 40");
  });
  it("says where a number is from memory, and only there", () => {
    expect(JSON.stringify(explain(siteOfAction, ["tribenuron"]))).toContain("Check against the current bulletin.");
    expect(JSON.stringify(explain(siteOfAction, ["glyphosate"]))).not.toContain("Check against");
  });
});

describe("PROGRAMGROUPS on a sheet", () => {
  it("counts two ingredients of one group once", () => {
    const cells = runFunction(programGroups, [
      column("atrazine", "metribuzin"),
      column("yes", "yes"),
      column("pre", "pre"),
    ]);
    expect(cells[1]).toEqual(["pre", "5", 1, 1, "5"]);
    expect(sentences(cells)).toContain('Pass "pre": atrazine and metribuzin are both group 5 and count once.');
    expect(sentences(cells)).toContain(
      "The whole season leans on group 5 alone against your driver weed; the usual rule is 2 to 3 effective groups.",
    );
    expect(sentences(cells)).toContain("Group 5 is the one used most: 2 of 2 uses.");
  });
  it("does not count what the person says does not control", () => {
    const cells = runFunction(programGroups, [
      column("glyphosate", "imazethapyr", "fomesafen"),
      column("no", "resistant", "yes"),
    ]);
    expect(cells[1]).toEqual(["Whole season", "2 + 9 + 14", 3, 1, "14"]);
    const none = runFunction(programGroups, [column("glyphosate"), column(false)]);
    expect(sentences(none)[0]).toContain("No group of the season is said to control");
  });
  it("says so when control is left out, wholly or for some", () => {
    const without = runFunction(programGroups, [column("glyphosate", "dicamba")]);
    expect(without[1]).toEqual(["Whole season", "4 + 9", 2, "not said", "not said"]);
    expect(sentences(without)[0]).toContain("Say which ingredients control your driver weed");
    const partly = runFunction(programGroups, [
      column("glyphosate", "dicamba", "mesotrione"),
      column("yes", null, "yes"),
    ]);
    expect(sentences(partly)).toEqual(["1 of 3 uses have no word on control and are not counted as effective."]);
  });
  it("carries a pass down over blanks, passes over blank rows, and keeps the order typed", () => {
    const cells = runFunction(programGroups, [
      column("S-metolachlor", "mesotrione", null, "glufosinate"),
      column("yes", "yes", null, "yes"),
      column("Pre", null, null, "pre "),
    ]);
    expect(cells[1]).toEqual(["Pre", "10 + 15 + 27", 3, 3, "10 + 15 + 27"]);
    expect(cells[2]?.[0]).toBe("Whole season");
  });
  it("reports what comes again from last season, former numbers included", () => {
    const cells = runFunction(programGroups, [
      column("EPTC", "linuron"),
      column("yes", "yes"),
      null,
      column(8, "Group 7", "mesotrione"),
    ]);
    expect(cells.find(([what]) => what === "In both seasons")).toEqual(["In both seasons", "5 + 15", 2, 2, "5 + 15"]);
    expect(sentences(cells)).toEqual([
      "Groups 5 and 15 were used last season too.",
      "Every effective group was used last season too: nothing new stands against your driver weed.",
    ]);
  });
  it("has a sentence when nothing stands out", () => {
    const cells = runFunction(programGroups, [
      column("S-metolachlor", "mesotrione"),
      column("yes", "yes"),
      column("pre", "pre"),
      column("glufosinate"),
    ]);
    expect(sentences(cells)).toEqual([
      "Nothing stands out by these rules; resistance can still come in from elsewhere.",
    ]);
  });
  it("wants one answer on control for every ingredient, and waits for the first ingredient", () => {
    expect(messageOf(runFunction(programGroups, [column("glyphosate", "dicamba"), column("yes")]))).toContain(
      "differ in size",
    );
    expect(runFunction(programGroups, [column(null, null)])).toEqual([
      [{ code: "#N/A", message: "waiting for activeIngredients" }],
    ]);
  });
});

describe("RESISTANCERISK on a sheet", () => {
  it("is the checklist when nothing is answered", () => {
    const cells = runFunction(resistanceRisk, []);
    expect(cells).toHaveLength(9);
    expect(cells[8]).toEqual(["Answers counted", 0, 0, 0, "7 open"]);
    expect(cells[2]?.slice(1, 4)).toEqual([
      "cultural, mechanical and chemical",
      "cultural and chemical",
      "chemical only",
    ]);
  });
  it("counts answers and refuses more than it has rows", () => {
    const all = column("high", "high", "medium", "low", "low", "low", "low");
    expect(runFunction(resistanceRisk, [all])[8]).toEqual(["Answers counted", 4, 1, 2, "all answered"]);
    expect(messageOf(runFunction(resistanceRisk, [[...all, ["low"]]]))).toContain("7 rows");
  });
});
