import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { harvestFunctions } from "../../../src/functions/harvest";
import { binVolume } from "../../../src/functions/harvest/bin-volume";
import { earCountYield, podCountYield, podRowYield } from "../../../src/functions/harvest/corn-and-soybean-counts";
import { dryingCost, dryingFuel } from "../../../src/functions/harvest/drying";
import { storageDays, storageUsed } from "../../../src/functions/harvest/keeping";
import { harvestLoss, lossByPlace } from "../../../src/functions/harvest/losses";
import { sellWetOrDry } from "../../../src/functions/harvest/sell-wet-or-dry";
import { grainShrink, overdryLoss } from "../../../src/functions/harvest/shrink";
import { storageCost } from "../../../src/functions/harvest/storage-cost";
import { testWeightDry } from "../../../src/functions/harvest/test-weight";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const shown = (...call: Parameters<typeof explain>) => JSON.stringify(explain(...call));

describe("yield counts on a sheet", () => {
  it("EARCOUNTYIELD fills a column of places and reads a word for the fill: 14,400 / 110 = 130.91", () => {
    const cells = runFunction(earCountYield, [[[30], [28]], 16, 30, "small"]);
    expect(cells[0]?.[0]).toBeCloseTo(130.909, 3);
    expect(cells[1]?.[0]).toBeCloseTo(122.182, 3); // 28 × 480 / 110
  });
  it("EARCOUNTYIELD asks about thousands", () => {
    expect(messageOf(runFunction(earCountYield, [30, 16, 30, 90]))).toBe(
      "kernelsPerBushel must be between 65,000 and 120,000 kernels/bu; got 90. Did you mean 90000?",
    );
  });
  it("PODCOUNTYIELD and PODROWYIELD take the size of seed as a word", () => {
    expect(runFunction(podCountYield, [120_000, 30, 2.5, "normal"])[0]?.[0]).toBeCloseTo(50, 8); // 9,000,000 / 3,000 / 60
    expect(runFunction(podRowYield, [300, 2.5, "large"])[0]?.[0]).toBeCloseTo(50, 8); // 750 / 15
  });
});

describe("losses on a sheet", () => {
  it("HARVESTLOSS shows percent, dollars and the target: 2 bu of 60 + 2 at $12", () => {
    const working = shown(harvestLoss, ["soybeans", 8, 0, null, 58, 12]);
    expect(working).toContain("Good work keeps to");
    expect(working).toContain("3.33333"); // 2 / 60
    expect(working).toContain('"label":"Worth","value":24,'); // 2 × 12
  });
  it("HARVESTLOSS has no bushel to work sunflower out with, but a printed count", () => {
    expect(runFunction(harvestLoss, ["sunflower", 10])).toEqual([[2]]);
    expect(messageOf(runFunction(harvestLoss, ["sunflower", 10, 0, 9000]))).toContain("bushel of sunflower");
  });
  it("HARVESTLOSS asks for another count when more lies under the standing crop", () => {
    expect(messageOf(runFunction(harvestLoss, ["corn", 2, 3]))).toContain("count both again");
  });
  it("LOSSBYPLACE waits for the second width, and takes no header narrower than its residue", () => {
    expect(messageOf(runFunction(lossByPlace, ["corn", 0, 1, 2, null, 30]))).toBe("waiting for residueWidth");
    expect(messageOf(runFunction(lossByPlace, ["corn", 0, 1, 2, null, 10, 20]))).toContain("residueWidth must be");
  });
});

describe("shrink on a sheet", () => {
  it("GRAINSHRINK takes the buyer's own market moisture and flat shrink: 10 points × 1.4 %", () => {
    expect(runFunction(grainShrink, [1000, 25, "corn", 0, 15, 1.4])[0]?.[0]).toBeCloseTo(860, 8);
  });
  it("GRAINSHRINK shows what overdry grain gives away, and pays no water that is not there", () => {
    expect(runFunction(grainShrink, [1000, 13, "corn", 0])).toEqual([[1000]]);
    expect(shown(grainShrink, [1000, 13, "corn", 0])).toContain("Given away");
  });
  it("GRAINSHRINK asks about a share and names what has no market moisture", () => {
    expect(messageOf(runFunction(grainShrink, [1000, 0.25, "corn"]))).toBe(
      "moisture is in percent: enter 25, not 0.25.",
    );
    expect(messageOf(runFunction(grainShrink, [1000, 20, "buckwheat"]))).toContain("Enter marketMoisture");
  });
  it("OVERDRYLOSS is nothing for grain at the market or wetter", () => {
    expect(runFunction(overdryLoss, [1000, [[13, 14]], "soybean"])).toEqual([[0, 0]]);
  });
  it("TESTWEIGHTDRY stays where it was fitted", () => {
    expect(messageOf(runFunction(testWeightDry, [52, 30]))).toContain("between 8 and 25 %");
    expect(messageOf(runFunction(testWeightDry, [52, 15, 20]))).toBe("dryMoisture must be between 8 and 15 %; got 20.");
  });
});

describe("drying and selling on a sheet", () => {
  it("DRYINGCOST adds fans and labor: 0.38 + 0.5 × 0.12 + 0.05 = 0.49 $/bu", () => {
    expect(runFunction(dryingCost, [10, 100, 1.9, null, 0.5, 0.12, 0.05])[0]?.[0]).toBeCloseTo(49, 8);
    expect(messageOf(runFunction(dryingCost, [10, 100, 1.9, null, 0.5]))).toBe("waiting for powerPrice");
  });
  it("DRYINGFUEL says to check what it holds from memory", () => {
    expect(shown(dryingFuel, [1000, 20, "corn", "propane"])).toContain("Check against the current bulletin.");
  });
  it("SELLWETORDRY leaves out ways without terms and waits where there are none", () => {
    expect(runFunction(sellWetOrDry, [1000, 25, "corn", 4, 0.8]).map(([first]) => first)).toEqual(["Way", "sell wet"]);
    expect(messageOf(runFunction(sellWetOrDry, [1000, 25, "corn", 4]))).toBe(
      "waiting for wetDiscount, elevatorCharge or homeCost",
    );
    expect(messageOf(runFunction(sellWetOrDry, [1000, 25, "corn", 4, null, null, 0.3]))).toBe(
      "waiting for elevatorShrink",
    );
  });
  it("STORAGECOST catches interest in percent points", () => {
    expect(messageOf(runFunction(storageCost, [4, 6, 9]))).toBe("rate is a rate: enter 9 % as 9% or 0.09.");
  });
});

describe("storage on a sheet", () => {
  it("STORAGEDAYS takes a table by name and warns of bins", () => {
    expect(runFunction(storageDays, [20, 60, "Midwest"])[0]?.[0]).toBeCloseTo(29, 8);
    expect(storageDays.cautions?.join(" ")).toContain("never enter a bin");
  });
  it("STORAGEUSED says when the life is used up", () => {
    expect(shown(storageUsed, [[[20], [10]], 20, 60])).toContain("used up");
  });
  it("BINVOLUME takes a peak by the grain and refuses a cone through the floor", () => {
    expect(Number(runFunction(binVolume, [30, 20, "soybean"])[0]?.[0])).toBeGreaterThan(
      Number(runFunction(binVolume, [30, 20, "corn"])[0]?.[0]),
    );
    expect(messageOf(runFunction(binVolume, [30, 2, -3]))).toContain("below the floor");
  });
});

describe("the harvest family", () => {
  it("asks in a grower's words, two to four questions a function", () => {
    for (const fn of harvestFunctions) {
      const count = fn.asks?.length ?? 0;
      expect([fn.name, count >= 2 && count <= 4]).toEqual([fn.name, true]);
    }
  });
});
