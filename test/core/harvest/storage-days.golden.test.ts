import fc from "fast-check";
import { storageDays } from "../../../src/core/harvest/storage-days";
import { storageUsed } from "../../../src/core/harvest/storage-used";
import { storageTimes, type StorageTableKey } from "../../../src/reference/harvest/storage";
import { faultOf } from "../fault-of";

const daysOf = (moisturePct: number, temperatureF: number, table: StorageTableKey | null = null) =>
  storageDays({ moisturePct, temperatureF }, table).days;

describe("storageDays", () => {
  const within = storageTimes.rows.filter(({ temperatureF }) => temperatureF >= 40);
  it.each(within)("reads $table at $moisturePct % and $temperatureF °F as printed: $days days", (row) => {
    expect(daysOf(row.moisturePct, row.temperatureF, row.table)).toBeCloseTo(row.days, 8);
    expect(daysOf(row.moisturePct, row.temperatureF)).toBeLessThanOrEqual(row.days + 1e-8);
  });
  it("takes the smaller of two tables: 25 days by North Dakota, 29 by the Midwest table, at 20 % and 60 °F", () => {
    const both = storageDays({ moisturePct: 20, temperatureF: 60 }, null);
    expect(both.days).toBeCloseTo(25, 8);
    expect(both.governing).toBe("ndsu");
    expect(both.read.find(({ table }) => table === "midwest")?.days).toBeCloseTo(29, 8);
  });
  it("runs straight in the logarithm between places: at 17 % and 45 °F of the Midwest table", () => {
    // 16 and 18 %: 40 °F sqrt(763 × 291), 50 °F sqrt(339 × 130); then the geometric mean of the two.
    const expected = (763 * 291 * 339 * 130) ** 0.25;
    expect(daysOf(17, 45, "midwest")).toBeCloseTo(expected, 8);
  });
  it("lets a printed time bound wetter and warmer grain: at 21 % and 61 °F no longer than 25 days", () => {
    expect(daysOf(21, 61)).toBeLessThanOrEqual(25);
  });
  it("never rises with moisture or temperature", () => {
    const moisture = fc.double({ min: 13, max: 28, noNaN: true });
    const temperature = fc.double({ min: 40, max: 80, noNaN: true });
    fc.assert(
      fc.property(moisture, moisture, temperature, temperature, (m1, m2, t1, t2) => {
        const dryCool = daysOf(Math.min(m1, m2), Math.min(t1, t2));
        expect(daysOf(Math.max(m1, m2), Math.max(t1, t2))).toBeLessThanOrEqual(dryCool * (1 + 1e-12));
      }),
      { numRuns: 500 },
    );
  });
  it("never promises more than the Midwest table", () => {
    for (let moisture = 13; moisture <= 28; moisture += 0.5) {
      for (let temperature = 40; temperature <= 80; temperature += 2.5) {
        expect(daysOf(moisture, temperature)).toBeLessThanOrEqual(daysOf(moisture, temperature, "midwest") + 1e-9);
      }
    }
  });
  it("says where a table is silent, and refuses grain outside all of them", () => {
    expect(faultOf(() => daysOf(22, 60, "ndsu"))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => daysOf(15, 61, "arkansas"))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => daysOf(12, 60))).toMatchObject({ kind: "outOfRange", argument: "moisture" });
    expect(faultOf(() => daysOf(20, 90))).toMatchObject({ kind: "outOfRange", argument: "temperature" });
  });
});

describe("storageUsed", () => {
  it("adds up shares: 5 of 25 days and 60 of 120 are 70 %", () => {
    const used = storageUsed({ days: [5, 60], moisturesPct: [20, 16], temperaturesF: [60] });
    expect(used.usedPct).toBeCloseTo(70, 8);
    expect(used.isOver).toBe(false);
    expect(storageUsed({ days: [25.1], moisturesPct: [20], temperaturesF: [60] }).isOver).toBe(true);
  });
  it("wants one value or as many as there are periods", () => {
    const uneven = { days: [5, 60, 3], moisturesPct: [20, 16], temperaturesF: [60] };
    expect(faultOf(() => storageUsed(uneven))).toMatchObject({ kind: "sizesDiffer" });
  });
  it("takes a thousand periods and no more", () => {
    const days = Array.from({ length: 1001 }, () => 1);
    const sum = { days, moisturesPct: [15], temperaturesF: [50] };
    expect(faultOf(() => storageUsed(sum))).toMatchObject({ kind: "tooLarge", max: 1000 });
  });
});
