import { seedCost } from "../../../src/functions/seed/buying";
import { seedRate } from "../../../src/functions/seed/planting";
import { removal } from "../../../src/functions/nutrients/removal";
import { call } from "../../../src/workbook/formula/call";
import { place } from "../../../src/workbook/formula/reference";

const read = (expression: ReturnType<typeof call>) =>
  expression.parts.map((part) => (typeof part === "string" ? part : "<ref>")).join("");

describe("call", () => {
  it("puts arguments in the declared order, whatever order they were given in", () => {
    expect(read(call(removal, { nutrient: "K2O", yield: 200, crop: place("x") }))).toBe(
      'LOAM.REMOVAL(<ref>,200,"K2O")',
    );
  });
  it("leaves out optional arguments at the end", () => {
    expect(read(call(seedRate, { targetStand: 30_000, germination: 95 }))).toBe("LOAM.SEEDRATE(30000,95)");
  });
  it("keeps the place of an optional argument before one that is given", () => {
    expect(read(call(seedCost, { rate: 1, unitPrice: 2, treatmentPerUnit: 3 }))).toBe("LOAM.SEEDCOST(1,2,,3)");
  });
  it("does not compile with an argument that does not exist or one that is missing", () => {
    // @ts-expect-error -- "stand" is not an argument of SEEDRATE
    expect(read(call(seedRate, { targetStand: 1, germination: 2, stand: 3 }))).toBe("LOAM.SEEDRATE(1,2)");
    // @ts-expect-error -- SEEDRATE needs a germination
    expect(read(call(seedRate, { targetStand: 1 }))).toBe("LOAM.SEEDRATE(1)");
  });
});
