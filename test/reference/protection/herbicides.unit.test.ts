import { herbicideGroups, herbicides } from "../../../src/reference/protection/herbicides";
import { formerNumbers, sitesOfAction } from "../../../src/reference/protection/sites-of-action";
import { resistanceChecklist } from "../../../src/reference/protection/resistance-checklist";

describe("the herbicide groups", () => {
  it("are frozen: 81 ingredients, numbers adding up to 705, ten marked M", () => {
    expect(herbicideGroups.rows).toHaveLength(81);
    expect(Object.keys(herbicides)).toHaveLength(81);
    expect(herbicideGroups.rows.reduce((sum, row) => sum + row.site, 0)).toBe(705);
    expect(herbicideGroups.rows.filter(({ mark }) => mark === "M").map(({ active }) => active)).toEqual([
      "thifensulfuron",
      "tribenuron",
      "iodosulfuron",
      "cloransulam",
      "thiencarbazone",
      "flucarbazone",
      "fluthiacet",
      "pyraflufen",
      "triallate",
      "bicyclopyrone",
    ]);
  });
  it("name each ingredient once, and every group has a meaning and an ingredient", () => {
    expect(new Set(herbicideGroups.rows.map(({ active }) => active)).size).toBe(81);
    const used = new Set(herbicideGroups.rows.map(({ site }) => site));
    expect([...used].sort((a, b) => a - b)).toEqual(Object.keys(sitesOfAction).map(Number));
  });
  // A second typing, by hand, one ingredient of each group.
  it.each([
    ["clethodim", 1],
    ["chlorimuron", 2],
    ["pendimethalin", 3],
    ["2,4-D", 4],
    ["metribuzin", 5],
    ["bromoxynil", 6],
    ["glyphosate", 9],
    ["glufosinate", 10],
    ["diflufenican", 12],
    ["clomazone", 13],
    ["flumioxazin", 14],
    ["S-metolachlor", 15],
    ["EPTC", 15],
    ["diflufenzopyr", 19],
    ["paraquat", 22],
    ["mesotrione", 27],
  ])("%s is group %i", (label, site) => {
    const row = herbicideGroups.rows.find(({ active }) => herbicides[active].label === label);
    expect(row?.site).toBe(site);
  });
  it("tell former numbers: 7 is 5, 8 is 15, 28 is 27", () => {
    expect(formerNumbers.map(({ former, now }) => [former, now])).toEqual([
      [7, 5],
      [8, 15],
      [28, 27],
    ]);
  });
});

describe("the resistance checklist", () => {
  it("is frozen: seven rows, all marked M, three different answers each", () => {
    expect(resistanceChecklist.rows).toHaveLength(7);
    for (const { low, moderate, high, mark } of resistanceChecklist.rows) {
      expect(mark).toBe("M");
      expect(new Set([low, moderate, high]).size).toBe(3);
    }
  });
});
