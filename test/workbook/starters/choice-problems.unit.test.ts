import { choiceProblems, cropChoice, defaultChoices, type StarterChoices } from "../../../src/workbook/starters";

const sentences = (changes: Partial<StarterChoices>) =>
  choiceProblems({ ...defaultChoices, ...changes }).map(({ field, sentence }) => `${field}: ${sentence}`);

describe("choiceProblems", () => {
  it("lets the defaults pass", () => {
    expect(choiceProblems(defaultChoices)).toEqual([]);
  });
  it("asks for a farm name of a bearable length", () => {
    expect(sentences({ farmName: "  " })).toEqual([
      "farmName: Give the farm a name: it stands at the head of every page.",
    ]);
    expect(sentences({ farmName: "x".repeat(61) })).toEqual([
      "farmName: A farm name may have 60 letters; this one has 61.",
    ]);
  });
  it("asks for a guide that is known, and names those that are", () => {
    expect(sentences({ guide: "nowhere" })[0]).toMatch(/^guide: No guide is called "nowhere"\. Known: .*IN-MI-OH/);
    expect(sentences({ guide: "Ohio" })).toEqual([]);
  });
  it("asks for at least one crop, each once", () => {
    expect(sentences({ crops: [] })).toEqual(["crops: Choose at least one crop."]);
    expect(sentences({ crops: [cropChoice("corn"), cropChoice("corn")] })).toEqual(["crops: A crop is chosen twice."]);
  });
  it("names the crop, the value and the range of a price or yield that cannot be", () => {
    expect(sentences({ crops: [{ ...cropChoice("soybean"), priceUsdPerBu: 0 }] })).toEqual([
      "crops: The price of soybean must be between 0.01 and 100 $/bu; got 0.",
    ]);
    expect(sentences({ crops: [{ ...cropChoice("corn"), yieldBuPerAc: 900 }] })).toEqual([
      "crops: The yield of corn must be between 1 and 650 bu/ac; got 900.",
    ]);
    expect(sentences({ crops: [{ ...cropChoice("corn"), yieldBuPerAc: Number.NaN }] })).toEqual([
      "crops: The yield of corn must be a number.",
    ]);
  });
  it("asks for a whole number of fields it can lay out", () => {
    expect(sentences({ numberOfFields: 0 })).toEqual([
      "numberOfFields: The number of fields must be between 1 and 60; got 0.",
    ]);
    expect(sentences({ numberOfFields: 2.5 })).toEqual([
      "numberOfFields: The number of fields is a whole number from 1 to 60.",
    ]);
  });
  it("lists every problem at once", () => {
    expect(sentences({ farmName: "", crops: [], numberOfFields: 61 })).toHaveLength(3);
  });
});
