import { organicNitrogen } from "../../../src/core/nitrogen/organic-nitrogen";
import { oatGroup2, oatMinnesota } from "../../../src/reference/nitrogen";
import { faultOf } from "../fault-of";
import { askNitrogen } from "./ask";

const faultWhen = (...asked: Parameters<typeof askNitrogen>) => faultOf(() => askNitrogen(...asked));

describe("what a method waits for", () => {
  it.each([
    ["organicMatter", { crop: "corn", guide: "NE", yieldGoal: 200, soilNitrate: 3 }],
    ["organicMatter", { crop: "wheat", guide: "KS", yieldGoal: 60, soilNitrate: 30 }],
    ["soilNitrate", { crop: "corn", guide: "SD", yieldGoal: 180 }],
    ["soilNitrate", { crop: "corn", guide: "IA", yieldGoal: 180 }],
    ["soilNitrate", { crop: "wheat", guide: "KS", yieldGoal: 60, organicMatterPct: 2 }],
    ["guidelineRate", { crop: "corn", guide: "mnEconomic", yieldGoal: 180, soilNitrate: 20 }],
    ["tillage", { crop: "springWheat", guide: "ND", yieldGoal: 60, soilNitrate: 20, guidelineLbPerAc: 170 }],
    ["previousCrop", { crop: "oat", guide: "mnEast", yieldGoal: 90, organicMatterPct: 2 }],
    ["organicMatter", { crop: "oat", guide: "mnEast", yieldGoal: 90, previous: "corn" }],
    ["organicMatter", { crop: "springWheat", guide: "ND", yieldGoal: 60, soilNitrate: 20, guidelineLbPerAc: 170, tillage: "tilled" }], // prettier-ignore
    ["soilNitrate, or soil for the guide's usual nitrate", { crop: "corn", guide: "NE", yieldGoal: 200, organicMatterPct: 2 }], // prettier-ignore
    ["stand", { crop: "oat", guide: "mnEast", yieldGoal: 90, organicMatterPct: 2, previous: "alfalfa" }],
    ["stand", { crop: "corn", guide: "SD", yieldGoal: 180, soilNitrate: 20, previous: "alfalfa" }],
  ] as const)("%s", (argument, asked) => {
    expect(faultWhen(asked)).toEqual({ kind: "waiting", argument });
  });
});

describe("credits are counted once", () => {
  it("takes at most 20 lb of fall nitrogen off Tri-State wheat and nothing for soybean", () => {
    const wheat = { crop: "wheat", guide: "IN-MI-OH", yieldGoal: 90 } as const;
    const plain = askNitrogen(wheat).needLbPerAc;
    expect(plain).toBeCloseTo(106.7, 9); // 1.33 × 90 − 13
    expect(askNitrogen({ ...wheat, creditsLbPerAc: 35 }).needLbPerAc).toBeCloseTo(86.7, 9);
    expect(askNitrogen({ ...wheat, previous: "soybean" }).needLbPerAc).toBe(plain);
  });

  it("refuses credits on top of a late-spring test and of a table by previous crop", () => {
    const iowa = { crop: "corn", guide: "IA", yieldGoal: 200, soilNitrate: 15 } as const;
    expect(faultWhen({ ...iowa, creditsLbPerAc: 30 })).toMatchObject({ kind: "refused", argument: "credits" });
    expect(askNitrogen({ ...iowa, previous: "soybean" }).needLbPerAc).toBe(80);
    const oats = { crop: "oat", guide: "mnEast", yieldGoal: 90, previous: "soybean", organicMatterPct: 2 } as const;
    expect(faultWhen({ ...oats, creditsLbPerAc: 30 })).toMatchObject({ kind: "refused", argument: "credits" });
  });

  it("says of every method what is inside", () => {
    expect(
      askNitrogen({ crop: "corn", guide: "NE", yieldGoal: 200, soilNitrate: 3, organicMatterPct: 2 }).inside,
    ).toContain("organic matter and soil nitrate");
  });
});

describe("what is not published", () => {
  it("is a crop outside the method, yields outside its range, a legume without a printed credit", () => {
    expect(faultWhen({ crop: "corn", guide: "IN-MI-OH", yieldGoal: 180 })).toMatchObject({
      kind: "notPublished",
      instead: expect.stringContaining("NITROGENOPTIMUM"),
    });
    expect(faultWhen({ crop: "wheat", guide: "IN-MI-OH", yieldGoal: 120 })).toMatchObject({ kind: "notPublished" });
    expect(
      faultWhen({ crop: "oat", guide: "mnEast", yieldGoal: 39, previous: "corn", organicMatterPct: 2 }),
    ).toMatchObject({
      kind: "notPublished",
    });
    const chickpea = { crop: "corn", guide: "SD", yieldGoal: 180, soilNitrate: 20, previous: "chickpea" } as const;
    expect(faultWhen(chickpea)).toMatchObject({ kind: "notPublished", where: "SD" });
    expect(askNitrogen({ ...chickpea, previous: "wheat" }).needLbPerAc).toBe(160);
  });
});

describe("the oat table of eastern Minnesota", () => {
  const oats = { crop: "oat", guide: "mnEast", yieldGoal: 90, organicMatterPct: 2 } as const;

  it("cites itself, and its crop groups where it needed them", () => {
    const sources = (previous: "soybean" | "corn") => askNitrogen({ ...oats, previous }).cited;
    expect(sources("soybean")).toEqual([oatMinnesota]);
    expect(sources("corn")).toEqual([oatMinnesota, oatGroup2]);
    expect(askNitrogen({ ...oats, previous: "corn" })).toMatchObject({ isUsualNitrate: false, nitrateRead: null });
  });
  it("asks for a stand of alfalfa, not of a clover, and sends a thin one to the groups", () => {
    expect(askNitrogen({ ...oats, previous: "sweetCloverLeft" }).needLbPerAc).toBe(0);
    expect(askNitrogen({ ...oats, previous: "alfalfa", standPerSqFt: 4 }).needLbPerAc).toBe(0);
    expect(faultWhen({ ...oats, previous: "alfalfa", standPerSqFt: 3.9 })).toMatchObject({
      kind: "notPublished",
      what: "row for alfalfa under 4 plants/sq ft",
      instead: expect.stringContaining("group 1 crop or group 2 crop"),
    });
  });
  it("sends other legumes and other crops to the groups too", () => {
    for (const [previous, because] of [
      ["chickpea", "with a crop group"],
      ["cotton", "by its crop group"],
    ] as const) {
      expect(faultWhen({ ...oats, previous })).toMatchObject({
        kind: "refused",
        argument: "previousCrop",
        because: expect.stringContaining(because),
      });
    }
  });
  it("is all that its method has", () => {
    expect(faultWhen({ crop: "wheat", guide: "mnEast", yieldGoal: 60 })).toMatchObject({
      kind: "notPublished",
      instead: "It has one for oat.",
    });
  });
});

describe("Nebraska's factors", () => {
  const corn = { crop: "corn", guide: "NE", yieldGoal: 200, soilNitrate: 3, organicMatterPct: 2 } as const;

  it("are cited where they were asked for: by prices, by timing, not otherwise", () => {
    const cited = (asked: Partial<Parameters<typeof askNitrogen>[0]>) =>
      askNitrogen({ ...corn, ...asked }).factors.cited;
    expect(cited({})).toEqual([]);
    expect(cited({ timing: "split" })).toHaveLength(1);
    expect(cited({ priceNUsdPerLb: 0.5, priceGrainUsdPerBu: 5 })).toEqual(cited({ timing: "split" }));
  });
  it("want both prices", () => {
    expect(faultWhen({ ...corn, priceGrainUsdPerBu: 5 })).toEqual({ kind: "waiting", argument: "priceN" });
  });
});

describe("bad input", () => {
  it("refuses a price ratio the adjustment is not printed for and half a pair of prices", () => {
    const corn = { crop: "corn", guide: "NE", yieldGoal: 200, soilNitrate: 3, organicMatterPct: 2 } as const;
    expect(faultWhen({ ...corn, priceNUsdPerLb: 1, priceGrainUsdPerBu: 3 })).toMatchObject({
      min: 4,
      max: 12,
      received: 3,
    });
    expect(faultWhen({ ...corn, priceNUsdPerLb: 1 })).toEqual({ kind: "waiting", argument: "priceGrain" });
    expect(faultWhen({ ...corn, priceNUsdPerLb: 0, priceGrainUsdPerBu: 3 })).toMatchObject({ argument: "priceN" });
  });

  it("asks whether a nitrate in lb/ac was meant in ppm", () => {
    const corn = { crop: "corn", guide: "IA", yieldGoal: 200, soilNitrate: 108 } as const;
    expect(faultWhen(corn)).toMatchObject({ kind: "outOfRange", unit: "ppm", suggestion: "30" }); // 108 / 3.6 per foot
  });

  it("refuses organic matter outside what Tri-State wheat is printed for", () => {
    expect(faultWhen({ crop: "wheat", guide: "IN-MI-OH", yieldGoal: 90, organicMatterPct: 8 })).toMatchObject({
      argument: "organicMatter",
      max: 5,
    });
  });
});

it("organic matter of 3 % releases 60 lb in the Corn Belt, 30 to 90", () => {
  expect(organicNitrogen(3, "cornBelt")).toMatchObject({ releasedLbPerAc: 60, lowLbPerAc: 30, highLbPerAc: 90 });
});
