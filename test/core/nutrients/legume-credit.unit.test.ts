import { legumeCredit, type LegumeCreditInput } from "../../../src/core/nutrients/legume-credit";
import { faultOf } from "../fault-of";

const ask = (asked: Pick<LegumeCreditInput, "guide" | "previous"> & Partial<LegumeCreditInput>) =>
  legumeCredit({
    standPerSqFt: null,
    nextCrop: null,
    soil: null,
    season: 1,
    regrowthIn: null,
    previousYieldBu: null,
    ...asked,
  });

describe("printed credits", () => {
  it("Wisconsin alfalfa: 190 on medium soil, 40 less under 8 in of regrowth, half in the second year", () => {
    const sod = { guide: "WI", previous: "alfalfa", soil: "medium", standPerSqFt: 5 } as const;
    expect(ask(sod).creditLbPerAc).toBe(190);
    expect(ask({ ...sod, regrowthIn: 6 }).creditLbPerAc).toBe(150);
    expect(ask({ ...sod, regrowthIn: 8 }).creditLbPerAc).toBe(190);
    expect(ask({ ...sod, season: 2 }).creditLbPerAc).toBe(95);
  });

  it.each([
    ["MN", "corn", [150, 100, 40, 40]],
    ["MN", "sunflower", [75, 50, 0, 0]],
    ["SD", "corn", [100, 50, 50, 0]],
  ] as const)("%s alfalfa before %s by 4, 2.5, 1 and 0.5 plants", (guide, nextCrop, expected) => {
    const credits = [4, 2.5, 1, 0.5].map(
      (standPerSqFt) => ask({ guide, previous: "alfalfa", nextCrop, standPerSqFt }).creditLbPerAc,
    );
    expect(credits).toEqual(expected);
  });

  it("South Dakota alfalfa with more than 5 plants: 150", () => {
    expect(ask({ guide: "SD", previous: "alfalfa", standPerSqFt: 6 }).creditLbPerAc).toBe(150);
    expect(ask({ guide: "SD", previous: "alfalfa", standPerSqFt: 5 }).creditLbPerAc).toBe(100);
  });

  it("Nebraska and Kansas print ranges: the middle, with both ends", () => {
    expect(ask({ guide: "NE", previous: "alfalfa", standPerSqFt: 4 })).toMatchObject({
      creditLbPerAc: 100,
      lowLbPerAc: 80,
      highLbPerAc: 120,
    });
    expect(ask({ guide: "KS", previous: "alfalfa", nextCrop: "corn", standPerSqFt: 4 })).toMatchObject({
      creditLbPerAc: 120,
      lowLbPerAc: 100,
      highLbPerAc: 140,
    });
  });

  it("soybean: Nebraska 45 or 35 and a pound a bushel under 30, the Dakotas 40, Minnesota by crop, Ohio wheat 0", () => {
    const soybean = { previous: "soybean" } as const;
    expect(ask({ ...soybean, guide: "NE", soil: "fine" }).creditLbPerAc).toBe(45);
    expect(ask({ ...soybean, guide: "NE", soil: "sandy" }).creditLbPerAc).toBe(35);
    expect(ask({ ...soybean, guide: "NE", soil: "fine", previousYieldBu: 22 }).creditLbPerAc).toBe(22);
    expect(ask({ ...soybean, guide: "NE", soil: "fine", previousYieldBu: 30 }).creditLbPerAc).toBe(45);
    expect(ask({ ...soybean, guide: "ND" }).creditLbPerAc).toBe(40);
    expect(ask({ ...soybean, guide: "MN", nextCrop: "wheat" }).creditLbPerAc).toBe(20);
    expect(ask({ ...soybean, guide: "MN", nextCrop: "corn", soil: "sandy" }).creditLbPerAc).toBe(30);
    expect(ask({ ...soybean, guide: "IA", previousYieldBu: 38 }).creditLbPerAc).toBe(38);
    expect(ask({ ...soybean, guide: "IA", previousYieldBu: 65 }).creditLbPerAc).toBe(50);
    expect(ask({ ...soybean, guide: "IN-MI-OH", nextCrop: "wheat" }).creditLbPerAc).toBe(0);
    expect(ask({ ...soybean, guide: "KS", nextCrop: "wheat" }).creditLbPerAc).toBe(0);
  });
});

describe("a crop without a credit", () => {
  it("that is no legume leaves none; a legume without a number is not available", () => {
    expect(ask({ guide: "WI", previous: "corn" })).toMatchObject({ creditLbPerAc: 0, isLegume: false, cited: [] });
    expect(faultOf(() => ask({ guide: "WI", previous: "soybean" }))).toMatchObject({
      kind: "notPublished",
      what: "nitrogen credit for soybean that is known here",
    });
    expect(
      faultOf(() => ask({ guide: "MN", previous: "alfalfa", nextCrop: "soybean", standPerSqFt: 4 })),
    ).toMatchObject({
      kind: "notPublished",
      what: "nitrogen credit for alfalfa before soybean that is known here",
    });
    expect(faultOf(() => ask({ guide: "MN", previous: "soybean", nextCrop: "corn", soil: "fine" }))).toMatchObject({
      kind: "notPublished",
      what: expect.stringContaining("on fine soil"),
    });
    expect(faultOf(() => ask({ guide: "ND", previous: "soybean", season: 2 }))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => ask({ guide: "KS", previous: "alfalfa", nextCrop: "corn", standPerSqFt: 2 }))).toMatchObject({
      kind: "notPublished",
    });
  });

  it("waits for stand, soil and next crop where they tell rows apart, refuses a third season", () => {
    expect(faultOf(() => ask({ guide: "NE", previous: "alfalfa" }))).toEqual({ kind: "waiting", argument: "stand" });
    expect(faultOf(() => ask({ guide: "NE", previous: "soybean" }))).toEqual({ kind: "waiting", argument: "soil" });
    expect(faultOf(() => ask({ guide: "MN", previous: "soybean" }))).toEqual({ kind: "waiting", argument: "nextCrop" });
    expect(faultOf(() => ask({ guide: "ND", previous: "soybean", season: 3 }))).toMatchObject({ argument: "season" });
  });
});
