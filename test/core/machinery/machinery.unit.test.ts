import { capacityNeed } from "../../../src/core/machinery/capacity-need";
import { customRate } from "../../../src/core/machinery/custom-rate";
import { fieldCapacity } from "../../../src/core/machinery/field-capacity";
import { fuelUse } from "../../../src/core/machinery/fuel-use";
import { latenessCost } from "../../../src/core/machinery/lateness-cost";
import { machineValue, tractorClass } from "../../../src/core/machinery/machine-value";
import { passCost, type PassCostInput } from "../../../src/core/machinery/pass-cost";
import { powerNeed } from "../../../src/core/machinery/power-need";
import { repairCost } from "../../../src/core/machinery/repair-cost";
import { tillageCompare, type SystemPass } from "../../../src/core/machinery/tillage-compare";
import { wearCost } from "../../../src/core/machinery/wear-cost";
import { faultOf } from "../fault-of";

describe("fieldCapacity", () => {
  it("takes a machine's typical efficiency: planter 65 %, 30 × 5 / 8.25 × 0.65 = 11.818 ac/h", () => {
    const planter = fieldCapacity({ widthFt: 30, mph: 5, efficiency: { machine: "planter" } });
    expect(planter.acPerHour).toBeCloseTo(11.818, 3);
    expect(planter.cited).toHaveLength(1);
    expect(fieldCapacity({ widthFt: 30, mph: 5, efficiency: { efficiencyPct: 65 } }).cited).toEqual([]);
  });
  it("asks about an efficiency typed as a share", () => {
    const fault = faultOf(() => fieldCapacity({ widthFt: 30, mph: 5, efficiency: { efficiencyPct: 0.85 } }));
    expect(fault).toMatchObject({ argument: "efficiency", suggestion: "85" });
  });
});

describe("fuelUse", () => {
  it("knows gasoline by the season only: 0.06 × 100", () => {
    const gasoline = { horsepower: 100, fuel: "gasoline", throttleReductionPct: 0 } as const;
    expect(fuelUse({ ...gasoline, load: "average" }).galPerHour).toBeCloseTo(6, 10);
    expect(faultOf(() => fuelUse({ ...gasoline, load: { loadPct: 60 } }))?.kind).toBe("notPublished");
  });
  it("by load is told for each hp-hour of work, not of rated power", () => {
    const at = fuelUse({ horsepower: 100, fuel: "diesel", load: { loadPct: 50 }, throttleReductionPct: 0 });
    // (0.22 × 0.5 + 0.096) × 0.7457 × 100 / 3.785412 = 4.05806 gal/h for 50 hp of work
    expect(at.galPerHour).toBeCloseTo(4.05806, 4);
    expect(at.galPerHpHour).toBeCloseTo(4.05806 / 50, 6);
  });
  it("refuses a throttle with the season average, and loads outside the equation", () => {
    const base = { horsepower: 100, fuel: "diesel" } as const;
    expect(faultOf(() => fuelUse({ ...base, load: "average", throttleReductionPct: 10 }))).toMatchObject({
      kind: "refused",
      argument: "throttleReduction",
    });
    for (const loadPct of [19, 101]) {
      expect(faultOf(() => fuelUse({ ...base, load: { loadPct }, throttleReductionPct: 0 }))).toMatchObject({
        kind: "outOfRange",
        argument: "load",
      });
    }
  });
});

describe("machineValue", () => {
  it("is nothing, not something again, once the bracket has gone below 0", () => {
    // 0.891 - 0.110 √n is 0 at 65.6 years, past the limit; a combine of 900 h/yr: 1.132 - 0.0079 × 30 = 0.895,
    // 0.895 - 0.165 √n is 0 at 29.4 years.
    const at = (ageYears: number) =>
      machineValue({ valueClass: "combine", ageYears, hoursPerYear: 900, listPriceUsd: 500_000 }).valueUsd;
    expect(at(29)).toBeGreaterThan(0);
    expect([at(30), at(50)]).toEqual([0, 0]);
  });
  it("waits for hours where they count, and only there", () => {
    const ask = (valueClass: "tractorLarge" | "planterDrill") =>
      faultOf(() => machineValue({ valueClass, ageYears: 5, hoursPerYear: null, listPriceUsd: 100_000 }));
    expect(ask("tractorLarge")).toEqual({ kind: "waiting", argument: "hoursPerYear" });
    expect(ask("planterDrill")).toBeUndefined();
  });
  it("gives the planter (0.883 - 0.0787 × 2)² = 0.52650 after four years", () => {
    const left = machineValue({ valueClass: "planterDrill", ageYears: 4, hoursPerYear: null, listPriceUsd: 100_000 });
    expect(left.valueUsd).toBeCloseTo(52_649.5, 0); // 0.7256² = 0.52649536
  });
  it("parts tractors at 80 and 150 hp and knows none under 30", () => {
    expect([30, 79.9, 80, 149.9, 150].map(tractorClass)).toEqual([
      "tractorSmall",
      "tractorSmall",
      "tractorMiddle",
      "tractorMiddle",
      "tractorLarge",
    ]);
    expect(faultOf(() => tractorClass(25))?.kind).toBe("notPublished");
  });
});

describe("repairCost", () => {
  it("is the difference of two readings: 100,000 × 0.04 × (2^2.1 - 1) = 13,148", () => {
    const repairs = repairCost({ machine: "combine", listPriceUsd: 100_000, fromHours: 1000, toHours: 2000 });
    expect(repairs.costUsd).toBeCloseTo(13_148.4, 0); // 2^2.1 = 4.28709
    expect(repairs.usdPerHour).toBeCloseTo(13.148, 3);
  });
  it("flags hours past the wear-out life and refuses a meter that runs back", () => {
    const at = (toHours: number) =>
      repairCost({ machine: "combine", listPriceUsd: 100_000, fromHours: 0, toHours }).isPastLife;
    expect([at(3000), at(3001)]).toEqual([false, true]);
    const back = { machine: "combine", listPriceUsd: 100_000, fromHours: 100, toHours: 99 } as const;
    expect(faultOf(() => repairCost(back))).toMatchObject({ kind: "refused", argument: "toHours" });
  });
  it("has no cost an hour over no hours", () => {
    const none = repairCost({ machine: "drill", listPriceUsd: 100_000, fromHours: 500, toHours: 500 });
    expect([none.costUsd, none.usdPerHour]).toEqual([0, null]);
  });
});

const combinePass: PassCostInput = {
  implement: "combine",
  widthFt: 30,
  mph: 3,
  efficiencyPct: null,
  acresPerYear: 1500,
  priceUsd: 400_000,
  listPriceUsd: null,
  salvageUsd: null,
  years: 8,
  rate: 0.07,
  extrasPct: 1,
  horsepower: 350,
  load: "average",
  fuelPriceUsdPerGal: 3.5,
  wageUsdPerHour: 25,
  laborFactor: 1.1,
  tractor: null,
};
const tractor = {
  kind: "twoWheel",
  priceUsd: 200_000,
  listPriceUsd: null,
  years: null,
  hoursPerYear: 400,
  salvageUsd: null,
} as const;

describe("passCost", () => {
  it("lets a combine drive itself and refuses a tractor for it", () => {
    const cost = passCost(combinePass);
    expect([cost.isSelfPropelled, cost.countsTractor, cost.tractorOwnership.usdPerAc]).toEqual([true, false, 0]);
    expect(faultOf(() => passCost({ ...combinePass, tractor }))).toMatchObject({ argument: "tractorPrice" });
  });
  it("waits for the tractor's hours with its price", () => {
    const planter = { ...combinePass, implement: "planter", tractor: { ...tractor, hoursPerYear: null } } as const;
    expect(faultOf(() => passCost(planter))).toEqual({ kind: "waiting", argument: "tractorHours" });
  });
  it("keeps the tractor as long as the implement and at its price as list, when nothing else is said", () => {
    const planter = { ...combinePass, implement: "planter", tractor } as const;
    const said = { ...planter, tractor: { ...tractor, years: 8, listPriceUsd: 200_000 } };
    expect(passCost(planter).total).toEqual(passCost(said).total);
  });
  it("burns 350 × 0.044 = 15.4 gal/h over 30 × 3 × 0.70 / 8.25 = 7.636 ac/h: 2.017 gal/ac", () => {
    expect(passCost(combinePass).fuelGalPerAc).toBeCloseTo(2.017, 3);
  });
  it("cites every figure it took, once: efficiency and repairs stand in one row", () => {
    const alone = passCost(combinePass);
    expect(alone.cited).toEqual(expect.arrayContaining([alone.fuelUse.published, ...alone.implement.cited]));
    expect(alone.cited).toHaveLength(6);
    const own = passCost({ ...combinePass, efficiencyPct: 70, salvageUsd: 90_000 });
    expect(own.implement.cited).toHaveLength(1);
    expect(own.cited).toHaveLength(5);
    const pulled = passCost({ ...combinePass, implement: "planter", tractor });
    expect(pulled.cited).toEqual(expect.arrayContaining([...(pulled.tractor?.cited ?? [])]));
    expect(pulled.tractor?.cited).toHaveLength(2);
  });
});

describe("powerNeed", () => {
  it("needs no depth for a planter: 12 rows × 350 lb = 4,200 lb, × 5.5 / 375 = 61.6 hp", () => {
    const need = powerNeed({ implement: "planterFull", width: 12, mph: 5.5, soil: "fine", depthIn: null });
    expect([need.draftLb, need.drawbarHp]).toEqual([4200, 61.6]);
    const deep = powerNeed({ implement: "planterFull", width: 12, mph: 5.5, soil: "fine", depthIn: 2 });
    expect(deep.draftLb).toBe(4200);
  });
  it("grows with the square of speed for a plow: (113 + 2.3 × 25) × 10 ft × 8 in × 0.7 = 9,548 lb", () => {
    const need = powerNeed({ implement: "moldboardPlow", width: 10, mph: 5, soil: "medium", depthIn: 8 });
    expect(need.draftLb).toBeCloseTo(9548, 6);
  });
  it("waits for the depth of a tillage tool", () => {
    const fault = faultOf(() =>
      powerNeed({ implement: "tandemPrimary", width: 20, mph: 5, soil: "fine", depthIn: null }),
    );
    expect(fault).toEqual({ kind: "waiting", argument: "depth" });
  });
});

describe("customRate", () => {
  it("gives the newest survey that asked, or the one named", () => {
    expect(customRate("noTillPlant", null)).toMatchObject({ rateUsdPerAc: 27.1, survey: "y2023" });
    expect(customRate("noTillPlant", "y2019").rateUsdPerAc).toBe(22.9);
    expect(customRate("moldboardPlow", null)).toMatchObject({ rateUsdPerAc: 20.2, survey: "y2019" });
  });
  it("says which survey has the operation", () => {
    expect(faultOf(() => customRate("stripTill", "y2019"))).toMatchObject({
      kind: "notPublished",
      instead: "Leave survey blank for 2023.",
    });
  });
});

describe("getting done in time", () => {
  it("800 ac in 10 days of 10 h, 80 % of them in the field, need 10 ac/h", () => {
    const need = capacityNeed({ acres: 800, days: 10, hoursPerDay: 10, inFieldPct: 80 });
    expect(need).toEqual({ acPerHour: 10, fieldHours: 80, acPerDay: 80 });
  });
  it("loses half as much with the best day in the middle: 10 days, 0.5 % a day, 600 ac × 190 × 4.35", () => {
    const base = {
      acres: 600,
      yieldPerAc: 190,
      priceUsd: 4.35,
      lossPctPerDay: 0.5,
      acresPerHour: 12,
      hoursPerDay: 10,
      workableDaysPct: 50,
    };
    const end = latenessCost({ ...base, bestDay: "end" });
    expect(end.spanDays).toBeCloseTo(10, 10);
    expect(end.costUsd).toBeCloseTo(12_397.5, 6); // 495,900 × 0.005 × 10 / 2
    expect(latenessCost({ ...base, bestDay: "middle" }).costUsd).toBeCloseTo(6198.75, 6);
    expect(end.nextAcrePerHourUsd).toBeCloseTo(12_397.5 / 13, 6);
  });
});

it("60 sweeps at $12 that last 1,800 ac wear $0.40/ac", () => {
  expect(wearCost({ parts: 60, pricePerPartUsd: 12, lifeAcres: 1800 })).toEqual({ costUsdPerAc: 0.4, setUsd: 720 });
});

describe("tillageCompare", () => {
  const row = (
    system: string,
    pass: SystemPass["pass"],
    fuel: number | null,
    hours: number | null,
    cost: number | null,
  ) => ({
    system,
    pass,
    fuelGalPerAc: fuel,
    hoursPerAc: hours,
    costUsdPerAc: cost,
  });
  const passes: readonly SystemPass[] = [
    row("chisel", { pass: "chiselStraight" }, 1, 0.1, 10),
    row("no-till", { pass: "noTillPlanterRipple" }, 0.5, 0.12, null),
    row("chisel", { pass: "winterAfterFall" }, null, null, null),
    row("chisel", { pass: "planterDoubleDisk" }, 0.5, 0.1, 12),
  ];
  const base = {
    passes,
    start: { coverPct: 80 },
    kind: "nonFragile",
    fuelPriceUsdPerGal: 4,
    wageUsdPerHour: 20,
    laborFactor: 1.1,
  } as const;
  const chiselAndNoTill = () => tillageCompare(base);

  it("sets up to 100 systems side by side and asks for their names where there are more", () => {
    const many = (count: number) => () =>
      tillageCompare({
        ...base,
        passes: Array.from({ length: count }, (_, index) =>
          row(`system ${index}`, { pass: "chiselStraight" }, 1, 0.1, 10),
        ),
      });
    expect(many(100)()).toHaveLength(100);
    expect(faultOf(many(101))).toMatchObject({
      argument: "systems",
      because: "at most 100 different ones; got 101. Name the system of each pass, not the pass.",
    });
  });
  it("keeps systems in the order they come, with passes from anywhere in the list", () => {
    expect(chiselAndNoTill().map(({ system }) => system)).toEqual(["chisel", "no-till"]);
  });
  it("adds passes up: 1.5 gal × $4 + 0.2 h × 1.1 × $20 + 22 = 32.40", () => {
    const [chisel] = chiselAndNoTill();
    expect(chisel?.fuelGalPerAc).toBeCloseTo(1.5, 10);
    expect(chisel?.laborHoursPerAc).toBeCloseTo(0.22, 10);
    expect(chisel?.costUsdPerAc).toBeCloseTo(32.4, 10);
  });
  it("counts winter in the cover, 80 × 0.70 × 0.875 × 0.90 = 44.1, but not as a pass that lacks fuel", () => {
    const [chisel] = chiselAndNoTill();
    expect(chisel?.cover.coverPct.middle).toBeCloseTo(44.1, 10);
    expect([chisel?.passes, chisel?.withoutFuel, chisel?.withoutCost]).toEqual([2, 0, 0]);
  });
  it("tells a cost that was not entered", () => {
    const [, noTill] = chiselAndNoTill();
    expect([noTill?.passes, noTill?.withoutCost]).toEqual([1, 1]);
  });
});
