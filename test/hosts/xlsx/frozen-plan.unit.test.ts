import { frozenPlan } from "./frozen-plan";
import { smallPlan, smallValues } from "./small-plan";

describe("frozenPlan", () => {
  const contentAt = (plan: typeof smallPlan, row: number, column: number) =>
    plan.sheets[1]?.cells.find((cell) => cell.row === row && cell.column === column)?.content;

  it("puts values in the place of all formulas", () => {
    const frozen = frozenPlan(smallPlan, smallValues, () => true);
    const formulas = frozen.sheets.flatMap(({ cells }) => cells.filter(({ content }) => typeof content === "object"));
    expect(formulas).toEqual([]);
    expect([contentAt(frozen, 2, 1), contentAt(frozen, 4, 1), contentAt(frozen, 5, 1)]).toEqual([
      10676.6,
      true,
      "#N/A",
    ]);
  });
  it("fills what a formula had spilled over", () => {
    const frozen = frozenPlan(smallPlan, smallValues, () => true);
    expect([contentAt(frozen, 7, 2), contentAt(frozen, 8, 2)]).toEqual(["lb/ac", 134]);
  });
  it("leaves the formulas alone that it is told to leave", () => {
    const frozen = frozenPlan(smallPlan, smallValues, (formula) => formula.includes("LOAM"));
    expect(contentAt(frozen, 4, 1)).toEqual({ formula: "=B3>2000" });
    expect(contentAt(frozen, 2, 1)).toBe(10676.6);
  });
  it("does not touch the plan it is given", () => {
    expect(smallPlan.sheets[1]?.cells.some(({ content }) => typeof content === "object")).toBe(true);
  });
});
