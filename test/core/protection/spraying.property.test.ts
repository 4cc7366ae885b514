import fc from "fast-check";
import { bandRate } from "../../../src/core/protection/band-rate";
import { carrierDensity } from "../../../src/core/protection/carrier-density";
import { nozzleFlow } from "../../../src/core/protection/nozzle-flow";
import { sprayCourse } from "../../../src/core/protection/spray-course";
import { pressedFlow, sprayPressure } from "../../../src/core/protection/spray-pressure";
import { spraySpeed } from "../../../src/core/protection/spray-speed";
import { sprayVolume } from "../../../src/core/protection/spray-volume";
import { tankFill } from "../../../src/core/protection/tank-fill";
import { tankLoads } from "../../../src/core/protection/tank-loads";
import { mixUnits, tankPlan, type MixUnitKey } from "../../../src/core/protection/tank-plan";

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const speed = from(1, 20);
const spacing = from(7, 60);
const close = (got: number, wanted: number) => expect(got / wanted).toBeCloseTo(1, 9);

describe("spraying, as laws", () => {
  it("volume undoes flow", () => {
    fc.assert(
      fc.property(from(2, 60), speed, spacing, (volumeGalPerAc, speedMph, spacingIn) => {
        const { flowGalPerMin } = nozzleFlow({ volumeGalPerAc, speedMph, spacingIn });
        close(sprayVolume({ flowGalPerMin, speedMph, spacingIn }).volumeGalPerAc, volumeGalPerAc);
      }),
    );
  });
  it("ounces caught over the timed course are the gallons per acre", () => {
    fc.assert(
      fc.property(from(2, 60), from(10, 120), spacing, (volumeGalPerAc, seconds, spacingIn) => {
        const { feet } = sprayCourse({ spacingIn });
        const { speedMph } = spraySpeed({ feet, seconds });
        fc.pre(speedMph >= 0.5 && speedMph <= 40);
        const { ouncesPerMin } = nozzleFlow({ volumeGalPerAc, speedMph, spacingIn });
        close((ouncesPerMin * seconds) / 60, volumeGalPerAc);
      }),
    );
  });
  it("pressure undoes flow, and flow goes up with pressure", () => {
    fc.assert(
      fc.property(
        from(0.1, 2),
        fc.integer({ min: 10, max: 100 }),
        fc.integer({ min: 10, max: 100 }),
        (flow, pressurePsi, newPressurePsi) => {
          const { flowGalPerMin } = pressedFlow({ flowGalPerMin: flow, pressurePsi, newPressurePsi });
          close(
            sprayPressure({ flowGalPerMin: flow, newFlowGalPerMin: flowGalPerMin, pressurePsi }).pressurePsi,
            newPressurePsi,
          );
          expect(Math.sign(flowGalPerMin - flow)).toBe(Math.sign(newPressurePsi - pressurePsi));
        },
      ),
    );
  });
  it("a carrier as heavy as water needs no correction; a heavier one more", () => {
    fc.assert(
      fc.property(from(2, 60), from(8.35, 14), (rateGalPerAc, lbPerGal) => {
        close(carrierDensity({ rateGalPerAc, weight: { solution: "water" } }).waterGalPerAc, rateGalPerAc);
        expect(carrierDensity({ rateGalPerAc, weight: { lbPerGal } }).waterGalPerAc).toBeGreaterThan(rateGalPerAc);
      }),
    );
  });
  it("a band as wide as the row is a broadcast rate", () => {
    fc.assert(
      fc.property(from(0, 100), from(4, 60), (broadcastRatePerAc, width) => {
        const { ratePerFieldAc } = bandRate({ broadcastRatePerAc, bandWidthIn: width, rowWidthIn: width });
        expect(ratePerFieldAc).toBeCloseTo(broadcastRatePerAc, 9);
      }),
    );
  });
  it("full loads and the last one spray the field, whole fills and no more", () => {
    fc.assert(
      fc.property(from(0.1, 5000), from(50, 2000), from(2, 40), (acres, tankGal, volumeGalPerAc) => {
        const { loads, fullLoads, acresPerLoad, lastAcres, lastGal } = tankLoads({ acres, tankGal, volumeGalPerAc });
        close(fullLoads * acresPerLoad + lastAcres, acres);
        expect(lastGal).toBeLessThanOrEqual(tankGal * (1 + 1e-9));
        expect(loads - fullLoads).toBe(lastAcres > 0 ? 1 : 0);
      }),
    );
  });
  it("the product of all fills is the rate times the acres", () => {
    fc.assert(
      fc.property(from(1, 5000), from(50, 2000), from(2, 40), from(0.1, 64), (acres, tankGal, gpa, ratePerAc) => {
        const { fullLoads, lastAcres } = tankLoads({ acres, tankGal, volumeGalPerAc: gpa });
        const fill = (acresLeft: number | null) =>
          tankFill({ ratePerAc, tankGal, volumeGalPerAc: gpa, acresLeft }).productPerTank;
        close(fullLoads * fill(null) + (lastAcres > 0 ? fill(lastAcres) : 0), ratePerAc * acres);
      }),
    );
  });
  it("a tank plan's loads add up to the field for everything in it, water included", () => {
    const units = Object.keys(mixUnits) as MixUnitKey[]; // the keys of a closed record
    const part = fc.record({ name: fc.constant("a"), amount: from(0, 0.2), unit: fc.constantFrom(...units) });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), from(1, 3000), from(50, 2000), (mix, acres, tank) => {
        const { parts, water, loads } = tankPlan({ acres, tankGal: tank, volumeGalPerAc: 12, mix });
        for (const { inFullLoad, inLastLoad, inField } of [...parts, water]) {
          expect(loads.fullLoads * inFullLoad + inLastLoad).toBeCloseTo(inField, 6);
        }
      }),
    );
  });
});
