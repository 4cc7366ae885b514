import { convertUnit } from "../../../src/core/units/convert-unit";
import { readUnit } from "../../../src/core/units/read-unit";
import type { GrainKey } from "../../../src/reference/grain";
import fixture from "./gnu-units.fixture.json";

function convert(value: number, fromText: string, toText: string, grain: GrainKey | null = null): number {
  const [from, to] = [readUnit(fromText), readUnit(toText)];
  if (!from || !to) throw new Error(`unread: ${fromText} or ${toText}`);
  return convertUnit({ value, from, to, grain }).value;
}

describe("convertUnit agrees with GNU Units", () => {
  // 1e-12: both programs carry doubles; the answers are printed with 15 digits.
  it.each(fixture.rows.map(({ from, to, factor }) => [from, to, factor] as const))("1 %s in %s", (from, to, factor) => {
    const [unit = "", grain] = from.split(" of ").length === 2 && !/water/.test(from) ? from.split(" of ") : [from];
    expect(convert(1, unit, to, (grain ?? null) as GrainKey | null) / factor - 1).toBeCloseTo(0, 12);
  });
});

describe("convertUnit agrees with print", () => {
  it.each([
    ["University of Wisconsin: a volume bushel is 1.244 cubic feet", 1, "volume bushel", "ft3", null, 1.244, 0.0005],
    ["Canadian trade list: 36.744 bushels of lentil per tonne", 1, "tonne", "bu", "lentil", 36.744, 0.0005],
    ["Ontario: kg/ha to lb/ac by 0.8922", 1, "kg/ha", "lb/ac", null, 0.8922, 0.000_05],
    ["t/ha to ton/ac by 0.4461", 1, "t/ha", "ton/ac", null, 0.4461, 0.000_05],
    ["kg/hL is lb/bu by 1.287", 1, "lb/bu", "kg/hL", null, 1.287, 0.0005],
    ["USDA: corn at 56 lb/bu is 72 kg/hL (Florida AG442)", 56, "lb/bu", "kg/hL", null, 72, 0.5],
    ["an acre-inch is 27,154 gallons", 1, "ac-in", "gal", null, 27_154, 0.5],
    ["an inch an hour is 0.6096 m a day", 1, "in/h", "m/day", null, 0.6096, 1e-12],
    ["a mile an hour is 88 ft a minute", 1, "mph", "ft/min", null, 88, 1e-12],
    ["a pound is 453.592 g", 1, "lb", "g", null, 453.592, 0.0005],
    ["an acre is 0.404686 ha", 1, "ac", "ha", null, 0.404_686, 5e-7],
    ["kilowatt-hour: 3,412 BTU", 1, "kWh", "BTU", null, 3412, 0.5],
  ] as const)("%s", (_what, value, from, to, grain, printed, tolerance) => {
    expect(Math.abs(convert(value, from, to, grain) - printed)).toBeLessThanOrEqual(tolerance);
  });
});
