import fc from "fast-check";
import { fieldCapacity } from "../../../src/core/machinery/field-capacity";
import { fuelUse } from "../../../src/core/machinery/fuel-use";
import { machineValue } from "../../../src/core/machinery/machine-value";
import { passCost } from "../../../src/core/machinery/pass-cost";
import { repairCost } from "../../../src/core/machinery/repair-cost";
import {
  fieldMachines,
  machines,
  type FieldMachineKey,
  type MachineKey,
} from "../../../src/reference/machinery/machines";
import { remainingValues, type ValueClassKey } from "../../../src/reference/machinery/remaining-value";

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const machineKey = fc.constantFrom(...(Object.keys(machines) as MachineKey[])); // keys of a literal record
const implementKey = fc.constantFrom(...(Object.keys(fieldMachines) as FieldMachineKey[])); // the same
const classKey = fc.constantFrom(...(Object.keys(remainingValues) as ValueClassKey[])); // the same

describe("field capacity", () => {
  it("doubles with width and with speed, and hours an acre are its inverse", () => {
    fc.assert(
      fc.property(within(1, 90), within(1, 14), within(20, 100), (widthFt, mph, efficiencyPct) => {
        const at = (width: number, speed: number) =>
          fieldCapacity({ widthFt: width, mph: speed, efficiency: { efficiencyPct } });
        const { acPerHour, hoursPerAc, fullAcPerHour } = at(widthFt, mph);
        expect(at(2 * widthFt, mph).acPerHour).toBeCloseTo(2 * acPerHour, 8);
        expect(at(widthFt, 2 * mph).acPerHour).toBeCloseTo(2 * acPerHour, 8);
        expect(acPerHour * hoursPerAc).toBeCloseTo(1, 12);
        expect(acPerHour).toBeLessThanOrEqual(fullAcPerHour);
      }),
    );
  });
});

describe("fuel by load", () => {
  it("rises with the load and falls as the engine is throttled back", () => {
    fc.assert(
      fc.property(within(30, 600), within(20, 98), within(0, 28), (horsepower, loadPct, throttleReductionPct) => {
        const at = (load: number, throttle: number) =>
          fuelUse({ horsepower, load: { loadPct: load }, fuel: "diesel", throttleReductionPct: throttle }).galPerHour;
        const base = at(loadPct, throttleReductionPct);
        expect(at(loadPct + 1, throttleReductionPct)).toBeGreaterThan(base);
        expect(at(loadPct, throttleReductionPct + 1)).toBeLessThan(base);
      }),
    );
  });
});

describe("value and repairs", () => {
  it("a machine never gains value with age or hours, and never falls below nothing", () => {
    fc.assert(
      fc.property(classKey, within(1, 48), within(0, 3000), (valueClass, ageYears, hoursPerYear) => {
        const at = (age: number, hours: number) =>
          machineValue({ valueClass, ageYears: age, hoursPerYear: hours, listPriceUsd: 100_000 }).valueUsd;
        const base = at(ageYears, hoursPerYear);
        expect(base).toBeGreaterThanOrEqual(0);
        expect(base).toBeLessThanOrEqual(100_000);
        expect(at(ageYears + 1, hoursPerYear)).toBeLessThanOrEqual(base);
        expect(at(ageYears, hoursPerYear + 50)).toBeLessThanOrEqual(base);
      }),
    );
  });
  it("repairs over two stretches add up to those over both", () => {
    fc.assert(
      fc.property(machineKey, within(0, 5000), within(0, 5000), within(0, 5000), (machine, a, b, c) => {
        const between = (fromHours: number, toHours: number) =>
          repairCost({ machine, listPriceUsd: 1000, fromHours, toHours }).costUsd;
        const whole = between(a, a + b + c);
        expect(between(a, a + b) + between(a + b, a + b + c)).toBeCloseTo(whole, 5);
        expect(whole).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe("pass cost", () => {
  it("is the sum of its parts, and ownership per acre falls with more acres", () => {
    fc.assert(
      fc.property(
        implementKey,
        within(8, 60),
        within(100, 3000),
        within(1000, 300_000),
        (implement, widthFt, acres, price) => {
          const at = (acresPerYear: number) =>
            passCost({
              implement,
              widthFt,
              mph: 5,
              efficiencyPct: null,
              acresPerYear,
              priceUsd: price,
              listPriceUsd: null,
              salvageUsd: 0,
              years: 10,
              rate: 0.06,
              extrasPct: 1,
              horsepower: 200,
              load: "average",
              fuelPriceUsdPerGal: 3.5,
              wageUsdPerHour: 22,
              laborFactor: 1.1,
              tractor: null,
            });
          const cost = at(acres);
          const parts = [cost.implementOwnership, cost.implementRepair, cost.tractorOwnership, cost.tractorRepair];
          const all = [...parts, cost.fuel, cost.oil, cost.labor];
          expect(all.reduce((sum, { usdPerAc }) => sum + usdPerAc, 0)).toBeCloseTo(cost.total.usdPerAc, 6);
          for (const { usdPerAc } of all) expect(usdPerAc).toBeGreaterThanOrEqual(0);
          // The same dollars a year over twice the acres.
          expect(at(2 * acres).implementOwnership.usdPerAc).toBeCloseTo(cost.implementOwnership.usdPerAc / 2, 6);
        },
      ),
    );
  });
});
