import { removal, type Harvest } from "../../../src/core/nutrients/removal";
import { removalTable } from "../../../src/core/nutrients/removal-table";
import { faultOf } from "../fault-of";

const corn: Harvest = { crop: "corn", yieldPerAc: 200, nutrient: "K2O", part: null, set: null, moisturePct: null };

describe("removal", () => {
  it("multiplies yield by the usual number: 200 × 0.20 = 40 lb K2O", () => {
    expect(removal(corn).removedLbPerAc).toBeCloseTo(40, 9);
  });

  it("shows the spread of published sets: corn K2O runs from 0.19 (MN) to 0.30 (SD)", () => {
    const { lowLbPerAc, highLbPerAc } = removal(corn);
    expect(lowLbPerAc).toBeCloseTo(38, 9);
    expect(highLbPerAc).toBeCloseTo(60, 9);
  });

  it("takes a nutrient that the usual row leaves out from the North Carolina table: 200 × 0.001 lb Zn", () => {
    const { removedLbPerAc, pieces } = removal({ ...corn, nutrient: "Zn" });
    expect(removedLbPerAc).toBeCloseTo(0.2, 9);
    expect(pieces[0]?.number.row.set).toBe("northCarolina");
  });

  it("is not available, and not 0, when the named set does not print the nutrient", () => {
    const fault = faultOf(() => removal({ ...corn, set: "iowa", nutrient: "Zn" }));
    expect(fault).toMatchObject({ kind: "notPublished" });
    expect(JSON.stringify(fault)).toContain("NC");
  });

  it("is not available for a crop without a published number", () => {
    expect(faultOf(() => removal({ ...corn, crop: "triticale" }))).toMatchObject({ kind: "notPublished" });
  });

  it("names the parts a crop has when another is asked for", () => {
    const fault = faultOf(() => removal({ ...corn, crop: "potato", part: "straw" }));
    expect(fault).toMatchObject({ kind: "notPublished", instead: "Parts of potato with numbers: tuber." });
  });

  it("refuses a yield above published records and says the unit", () => {
    expect(faultOf(() => removal({ ...corn, yieldPerAc: 651 }))).toMatchObject({ max: 650, unit: "bu/ac" });
    expect(faultOf(() => removal({ ...corn, part: "stover", yieldPerAc: 17 }))).toMatchObject({ unit: "ton/ac" });
  });

  it.each([Number.NaN, -1])("refuses a yield of %d", (yieldPerAc) => {
    expect(faultOf(() => removal({ ...corn, yieldPerAc }))).toMatchObject({ kind: "outOfRange" });
  });

  it("reads straw of spring wheat in the rows of wheat, and no other part of it", () => {
    const straw = { ...corn, part: "straw", yieldPerAc: 2 } as const;
    expect(removal({ ...straw, crop: "springWheat" }).removedLbPerAc).toBe(
      removal({ ...straw, crop: "wheat" }).removedLbPerAc,
    );
    expect(faultOf(() => removal({ ...corn, crop: "cornSilage", part: "grain", yieldPerAc: 20 }))).toMatchObject({
      kind: "notPublished",
    });
  });

  it("brings what was weighed at one moisture to that of the number: 22 ton of silage at 60 % are 22 × 40 / 35 at 65 %", () => {
    const silage = { ...corn, crop: "cornSilage", yieldPerAc: 22 } as const;
    const { number, yieldPerAc } = removal(silage).pieces[0] ?? {};
    expect(number?.moisturePct).not.toBeNull();
    const printedAtPct = number?.moisturePct ?? NaN;
    expect(removal({ ...silage, moisturePct: printedAtPct }).removedLbPerAc).toBeCloseTo(
      removal(silage).removedLbPerAc,
      9,
    );
    expect(yieldPerAc).toBe(22);
    expect(removal({ ...silage, moisturePct: 60 }).removedLbPerAc).toBeCloseTo(
      (removal(silage).removedLbPerAc * 40) / (100 - printedAtPct),
      9,
    );
  });

  it("understands straw of soybean as stover: 2 ton × 23 lb K2O", () => {
    expect(removal({ ...corn, crop: "soybean", part: "straw", yieldPerAc: 2 }).removedLbPerAc).toBeCloseTo(46, 9);
  });

  it("brings hay at 12 % to the dry matter the number stands on: 5 × 0.88 × 49 = 215.6 lb K2O", () => {
    const hay = { ...corn, crop: "alfalfa", yieldPerAc: 5, moisturePct: 12 } as const;
    expect(removal(hay).removedLbPerAc).toBeCloseTo(215.6, 9);
  });

  it("takes a yield without a moisture as tons on the printed basis: 5 × 49", () => {
    expect(removal({ ...corn, crop: "alfalfa", yieldPerAc: 5 }).removedLbPerAc).toBeCloseTo(245, 9);
  });

  it("refuses a moisture for a number printed per ton as baled", () => {
    const fault = faultOf(() => removal({ ...corn, part: "stover", yieldPerAc: 2, moisturePct: 20 }));
    expect(fault).toMatchObject({ kind: "refused", argument: "moisture" });
  });

  it("adds straw from the grain yield: 80 bu wheat", () => {
    // grain 80 × 0.25 = 20; straw 80 × 60 × 0.865 / 2000 = 2.076 ton × 29 = 60.204
    const result = removal({ ...corn, crop: "wheat", yieldPerAc: 80, part: "grain+straw" });
    expect(result.removedLbPerAc).toBeCloseTo(80.204, 9);
    expect(result.residueTonPerAc).toBeCloseTo(2.076, 9);
    expect(result.pieces.map(({ part }) => part)).toEqual(["grain", "straw"]);
  });

  it("reads stover per bushel of grain where a set prints it: 200 × (0.27 + 1.1)", () => {
    const result = removal({ ...corn, part: "grain+stover", set: "northCentral" });
    expect(result.removedLbPerAc).toBeCloseTo(274, 9);
  });

  it("does not guess straw for a crop without a residue rule", () => {
    const fault = faultOf(() => removal({ ...corn, crop: "oat", yieldPerAc: 80, part: "grain+straw" }));
    expect(fault).toMatchObject({ kind: "notPublished" });
  });

  it("marks a number from memory even where its row was seen", () => {
    const wheat = { ...corn, crop: "wheat", yieldPerAc: 80 } as const;
    expect(removal({ ...wheat, nutrient: "N" }).pieces[0]?.number.cited.mark).toBe("M");
    expect(removal({ ...wheat, nutrient: "K2O" }).pieces[0]?.number.cited.mark).toBe("V");
  });

  it("reads corn silage as a crop and as a part alike: 22 ton × 9.0", () => {
    const asCrop = removal({ ...corn, crop: "cornSilage", yieldPerAc: 22 });
    const asPart = removal({ ...corn, part: "silage", yieldPerAc: 22 });
    expect(asCrop.removedLbPerAc).toBeCloseTo(198, 9);
    expect(asPart.removedLbPerAc).toBeCloseTo(198, 9);
  });
});

describe("removalTable", () => {
  const whole = { crop: "buckwheat", yieldPerAc: 40, part: null, set: null, moisturePct: null } as const;

  it("lists the published nutrients only, in order", () => {
    expect(removalTable(whole).map(({ nutrient }) => nutrient)).toEqual(["N", "P2O5", "K2O"]);
  });

  it("agrees with removal line by line", () => {
    for (const { nutrient, removal: line } of removalTable(whole)) {
      expect(line.removedLbPerAc).toBe(removal({ ...whole, nutrient }).removedLbPerAc);
    }
  });

  it("keeps, for joined parts, the nutrients that both parts print", () => {
    const joined = removalTable({ ...whole, crop: "soybean", part: "grain+stover" });
    expect(joined.map(({ nutrient }) => nutrient)).toEqual(["P2O5", "K2O"]);
  });

  it("says why when a crop has nothing to list", () => {
    expect(faultOf(() => removalTable({ ...whole, crop: "triticale" }))).toMatchObject({ kind: "notPublished" });
  });

  it("lets any other refusal through", () => {
    expect(faultOf(() => removalTable({ ...whole, yieldPerAc: 81 }))).toMatchObject({ kind: "outOfRange" });
  });
});
