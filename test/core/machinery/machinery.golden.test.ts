import { customRate } from "../../../src/core/machinery/custom-rate";
import { fieldCapacity } from "../../../src/core/machinery/field-capacity";
import { fuelUse } from "../../../src/core/machinery/fuel-use";
import { machineValue } from "../../../src/core/machinery/machine-value";
import { ownedMachine } from "../../../src/core/machinery/owned-machine";
import { passCost, type PassCostInput } from "../../../src/core/machinery/pass-cost";
import { powerNeed } from "../../../src/core/machinery/power-need";
import { operationFuel, systemFuelOf } from "../../../src/core/machinery/published-fuel";
import { repairCost } from "../../../src/core/machinery/repair-cost";
import { squareFootPerAcre, footPerMile } from "../../../src/core/units/units";
import { operationFuels, type OperationFuelKey } from "../../../src/reference/machinery/operation-fuel";

const diesel = { fuel: "diesel", throttleReductionPct: 0 } as const;

describe("Iowa State University PM 696 and A3-24: acres an hour, printed to a tenth", () => {
  it.each([
    ["fertilizer spreader", 40, 6, 70, 20.4],
    ["fertilizer spreader", 60, 6, 68, 29.7],
    ["fertilizer spreader", 80, 6, 68, 39.6],
    ["fertilizer spreader", 80, 12, 68, 79.1],
    ["manure spreader", 15, 5, 63, 5.7],
    ["manure spreader", 30, 6, 60, 13.1],
    ["manure spreader", 36, 5, 60, 13.1],
    ["9-knife applicator", 22.5, 5, 65, 8.9],
    ["17-knife applicator", 42.5, 5, 63, 16.2],
    ["plow, 7 × 16 in", (7 * 16) / 12, 5, 85, 4.8],
    ["plow, 10 × 18 in", 15, 5, 83, 7.5],
    ["subsoiler, 5 × 24 in", 10, 5, 85, 5.2],
    ["subsoiler, 7 × 30 in", 17.5, 5, 83, 8.8],
    ["chisel plow", 11.25, 5.5, 85, 6.4],
    ["chisel plow", 13.75, 5.5, 85, 7.8],
    ["chisel plow", 16.25, 5.5, 83, 9.0],
  ])("%s, %d ft at %d mph and %i %%: %d", (_machine, widthFt, mph, efficiencyPct, printed) => {
    const { acPerHour } = fieldCapacity({ widthFt, mph, efficiency: { efficiencyPct } });
    expect(Math.abs(acPerHour - printed)).toBeLessThanOrEqual(0.0501);
  });
});

describe("Iowa State University A3-29: the 180-hp tractor, list 150,000, price 130,000, 15 years of 400 h, 8 %", () => {
  const tractor = () =>
    ownedMachine({
      machine: "twoWheel",
      valueClass: "tractorLarge",
      priceUsd: 130_000,
      listPriceUsd: 150_000,
      years: 15,
      hoursPerYear: 400,
      rate: 0.08,
      extrasPct: 1,
      salvageUsd: 34_500,
    });
  it("prints 23 % of list after 15 years", () => {
    const left = machineValue({ valueClass: "tractorLarge", ageYears: 15, hoursPerYear: 400, listPriceUsd: 150_000 });
    expect(Math.round(left.ofListPct)).toBe(23);
  });
  it("costs 95,500 × 0.116830 + 34,500 × 0.08 + 1,300 = 15,217.22 $/yr, 38.043 $/h", () => {
    expect(tractor().ownershipUsdPerYr).toBeCloseTo(15_217.22, 1);
    expect(tractor().ownershipUsdPerHour).toBeCloseTo(38.043, 3);
  });
  it("is repaired for 150,000 × 0.007 × 6² = 37,800 in 6,000 h, 6.30 $/h", () => {
    const repairs = repairCost({ machine: "twoWheel", listPriceUsd: 150_000, fromHours: 0, toHours: 6000 });
    expect(repairs.costUsd).toBeCloseTo(37_800, 6);
    expect(tractor().repairUsdPerHour).toBeCloseTo(6.3, 10);
  });
  it("burns 0.044 × 180 = 7.92 gal/h over a season", () => {
    expect(fuelUse({ horsepower: 180, load: "average", ...diesel }).galPerHour).toBeCloseTo(7.92, 10);
  });
});

describe("diesel by load (Grisso, Kocher and Vaughan 2004), 180 hp = 134.226 kW", () => {
  // (0.22 × 0.5 + 0.096) × 134.226 = 27.6506 L/h; (0.22 + 0.096) × 134.226 = 42.4154 L/h; / 3.785412
  // At half load and 20 % less speed: 1 - (-0.0045 × 0.5 × 20 + 0.00877 × 20) = 0.8696
  it.each([
    [50, 0, 7.3045],
    [100, 0, 11.205],
    [50, 20, 6.352],
  ])("%i %% load, %i %% less speed: %d gal/h", (loadPct, throttleReductionPct, worked) => {
    const use = fuelUse({ horsepower: 180, load: { loadPct }, fuel: "diesel", throttleReductionPct });
    expect(use.galPerHour).toBeCloseTo(worked, 3);
  });
});

describe("the chisel plow of 16.25 ft behind that tractor", () => {
  const acPerHour = (16.25 * 5.5 * 0.83) / 8.25;
  const input: PassCostInput = {
    implement: "chiselPlow",
    widthFt: 16.25,
    mph: 5.5,
    efficiencyPct: 83,
    acresPerYear: 100 * acPerHour,
    priceUsd: 28_000,
    listPriceUsd: 32_000,
    salvageUsd: null,
    years: 12,
    rate: 0.08,
    extrasPct: 1,
    horsepower: 180,
    load: "average",
    fuelPriceUsdPerGal: 3.5,
    wageUsdPerHour: 20,
    laborFactor: 1.1,
    tractor: {
      kind: "twoWheel",
      priceUsd: 130_000,
      listPriceUsd: 150_000,
      years: 15,
      hoursPerYear: 400,
      salvageUsd: 34_500,
    },
  };
  const cost = () => passCost(input);

  it("is worth (0.891 - 0.110 √12)² = 26.005 % of list after 12 years", () => {
    expect(cost().implement.salvageUsd / 320).toBeCloseTo(26.005, 3);
  });
  it("costs 3,556.96 $/yr to own, 35.57 $/h, and 9.638 $/h to repair", () => {
    expect(cost().implement.ownershipUsdPerYr).toBeCloseTo(3556.96, 1);
    expect(cost().implementOwnership.usdPerHour).toBeCloseTo(35.57, 2);
    expect(cost().implementRepair.usdPerHour).toBeCloseTo(9.638, 3); // 32,000 × 0.28 × 1.2^1.4 / 1,200
  });
  it("costs 143.428 $/h and 15.951 $/ac in all, 0.1112 h/ac", () => {
    expect(cost().total.usdPerHour).toBeCloseTo(143.428, 2);
    expect(cost().total.usdPerAc).toBeCloseTo(15.951, 2);
    expect(cost().capacity.hoursPerAc).toBeCloseTo(0.1112, 4);
  });
  it("stays below the 18.35 $/ac of the custom median of 2019", () => {
    expect(customRate("chiselPlow", null).rateUsdPerAc).toBe(18.35);
    expect(cost().total.usdPerAc).toBeLessThan(18.35);
  });
});

it("ASABE D497 draft: 60 field cultivator tools 3 in deep at 7 mph in medium soil pull 4,834.8 lb, 90.25 hp", () => {
  const need = powerNeed({ implement: "cultivatorSecondary", width: 60, mph: 7, soil: "medium", depthIn: 3 });
  expect(need.draftLb).toBeCloseTo(4834.8, 1);
  expect(need.drawbarHp).toBeCloseTo(90.25, 2);
});

describe("University of Nebraska: diesel of whole systems, printed totals", () => {
  it.each([
    ["plow", 5.28, 6],
    ["chisel", 3.34, 5],
    ["disk", 2.71, 5],
  ] as const)("%s %d gal/ac in %i passes", (system, printed, passes) => {
    expect(systemFuelOf(system).galPerAc).toBeCloseTo(printed, 10);
    expect(systemFuelOf(system).passes).toBe(passes);
  });
});

describe("University of Missouri G1208: power and fuel agree with each other", () => {
  // Printed beside the fuel: hp-hours an acre, which are the hp of a foot of width over the acres it works in an hour.
  it.each([
    ["moldboardPlow8InDeep", 24.75],
    ["chiselPlow8InDeep", 15.35],
    ["fieldCultivator", 7.8],
    ["rowCropPlanterTilledGround", 6.42],
    ["rotaryHoe", 2.71],
  ] as const)("%s: %d hp-h/ac", (operation, printed) => {
    const { ptoHpPerFt, mph } = operationFuel(operation);
    expect((ptoHpPerFt * squareFootPerAcre) / footPerMile / mph).toBeCloseTo(printed, 1);
  });
  it("burns 0.06 to 0.10 gallons for each hp-hour", () => {
    for (const key of Object.keys(operationFuels) as OperationFuelKey[]) {
      // keys of a literal record
      const { galPerAc, ptoHpPerFt, mph } = operationFuels[key];
      const perHpHour = galPerAc / ((ptoHpPerFt * 8.25) / mph);
      expect([key, perHpHour > 0.06 && perHpHour < 0.1]).toEqual([key, true]);
    }
  });
});

it("Iowa custom medians of 2019: chisel, field cultivate, plant 54.75; no-till plant and a spray 30.55 $/ac", () => {
  const of = (operation: Parameters<typeof customRate>[0]) => customRate(operation, "y2019").rateUsdPerAc;
  expect(of("chiselPlow") + of("fieldCultivate") + of("plantWithoutAttachments")).toBeCloseTo(54.75, 10);
  expect(of("noTillPlant") + of("sprayBroadcastSelfPropelled")).toBeCloseTo(30.55, 10);
});
