import { allFunctions } from "../../../src/functions";
import { searchFunctions } from "../../../src/taskpane/pane/find/search";

const found = (query: string): string[] => searchFunctions(allFunctions, query).map(({ name }) => name);

describe("searchFunctions", () => {
  it("lists every function when nothing is asked", () => {
    expect(found("  ")).toEqual(allFunctions.map(({ name }) => name));
  });

  it.each([
    ["how much potash does a guide recommend", "POTASHNEED"],
    ["what does the harvest carry off", "REMOVAL"],
    ["how many bags of seed do I buy", "SEEDUNITS"],
    ["break-even price", "BREAKEVENPRICE"],
    ["convert units", "UNITCONVERT"],
    ["removal", "REMOVAL"],
  ])("answers “%s” with %s among the first three", (query, name) => {
    expect(found(query).slice(0, 3)).toContain(name);
  });

  it("overlooks one wrong letter in a longer word", () => {
    expect(found("potesh")).toContain("POTASHNEED");
  });

  it("finds nothing for a word that stands nowhere", () => {
    expect(found("zeppelin")).toEqual([]);
  });

  it("finds nothing for words that say nothing", () => {
    expect(found("how much is it")).toEqual([]);
  });
});
