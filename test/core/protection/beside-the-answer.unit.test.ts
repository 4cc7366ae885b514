import { adjuvantVolume } from "../../../src/core/protection/adjuvant-volume";
import { coversStage, stageOrder } from "../../../src/core/protection/crop-stage";
import { pestDays } from "../../../src/core/protection/pest-growth";
import { plantBack } from "../../../src/core/protection/plant-back";
import { pressedFlow } from "../../../src/core/protection/spray-pressure";
import { tankLoads } from "../../../src/core/protection/tank-loads";
import { weedBenefit } from "../../../src/core/protection/weed-benefit";
import { workingPressure } from "../../../src/reference/protection/sprayer-practice";
import { faultOf } from "../fault-of";

// What stands beside the answer: read in the working, so it has to be right as well.

it("tells adjuvant in gallons, quarts and ounces", () => {
  const { gallons, quarts, ounces } = adjuvantVolume({ volumePct: 0.25, sprayGal: 400 });
  expect([gallons, quarts, ounces].map((amount) => Number(amount.toFixed(9)))).toEqual([1, 4, 128]);
});

it("tells the days since the application", () => {
  const back = plantBack({ appliedDate: 46_000.7, interval: { days: 120 }, plantDate: 46_100.2 });
  expect(back).toEqual({ daysShort: 20, firstDate: 46_120, daysSince: 100 });
});

it("tells the weeds at which a pass begins to pay", () => {
  const pass = { yieldBuPerAc: 200, controlPct: 90, priceUsdPerBu: 5, costUsdPerAc: 30 };
  const curve = { slope: { slopePct: 2 }, ceilingPct: 60, daysAfterCrop: 0, fadePerDay: null };
  const { payingDensity } = weedBenefit({ ...pass, ...curve, density: 4 });
  // Put back in as the density, it leaves neither gain nor loss.
  expect(weedBenefit({ ...pass, ...curve, density: payingDensity ?? Number.NaN }).netUsdPerAc).toBeCloseTo(0, 6);
});

it("tells whether an injury level is reached already, and that none is reached without pests", () => {
  const growth = { pctPerDay: 100 };
  // Doubling every day: 5 are 40 in three days.
  expect(pestDays({ count: 5, injuryLevel: 40, growth })).toMatchObject({ days: 3, isReached: false, pctPerDay: 100 });
  expect(pestDays({ count: 40, injuryLevel: 40, growth })).toMatchObject({ days: 0, isReached: true });
  for (const none of [() => pestDays({ count: 0, injuryLevel: 40, growth }), () => still()])
    expect(faultOf(none)?.kind).toBe("noSolution");
  function still() {
    return pestDays({ count: 5, injuryLevel: 40, growth: { pctPerDay: 0 } });
  }
});

it("calls pressures at the ends of the usual range usual", () => {
  const usual = (psi: number) => !pressedFlow({ flowGalPerMin: 0.4, pressurePsi: 40, newPressurePsi: psi }).isUnusual;
  const { lowPsi, highPsi } = workingPressure;
  expect([lowPsi - 1, lowPsi, highPsi, highPsi + 1].map(usual)).toEqual([false, true, true, false]);
});

it("counts a last part load only where there is one", () => {
  // 400 gallons at 10 an acre do 40 acres.
  const loads = (acres: number) => tankLoads({ acres, tankGal: 400, volumeGalPerAc: 10 });
  expect(loads(120)).toMatchObject({ loads: 3, fullLoads: 3, lastAcres: 0, lastGal: 0 });
  expect(loads(130)).toMatchObject({ loads: 4, fullLoads: 3, lastAcres: 10, lastGal: 100 });
});

it("orders crop stages from emergence to maturity, spaces and case aside", () => {
  const order = ["VE", " vc ", "V1", "V2", "V30", "VT", "R1", "R8"].map((code) => stageOrder(code) ?? Number.NaN);
  expect(order).toEqual([...order].sort((a, b) => a - b));
  expect(new Set(order).size).toBe(order.length);
  expect(["V0", "V31", "R9", "bloom"].map(stageOrder)).toEqual([undefined, undefined, undefined, undefined]);
});

it("covers a span's own ends, and everything where a span or a stage has no code", () => {
  const span = { first: "V3", last: "R2" };
  const asked = ["V2", "V3", "VT", "R2", "R3", "knee high"].map((code) => coversStage(span, code));
  expect(asked).toEqual([false, true, true, true, false, true]);
  expect([coversStage({}, "V2"), coversStage({ first: "V3" }, "V2")]).toEqual([true, true]);
});
