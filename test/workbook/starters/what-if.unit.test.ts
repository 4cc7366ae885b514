import type { WorkbookPlan } from "../../../src/workbook/plan";
import { retyped } from "../retyped";
import { planOf, show } from "./shown-sheet";

jest.setTimeout(60_000);

/** The plan with a number typed into the cell of a name. */
function typed(plan: WorkbookPlan, name: string, value: number): WorkbookPlan {
  const place = plan.names.find((one) => one.name === name);
  if (!place) throw new Error(`no name ${name}`);
  return retyped(plan, place.sheet, { row: place.area.top, column: place.area.left }, value);
}

describe("figures to try in the farm plan", () => {
  it("reckons with the plan while they are blank, and with them once they are typed; the budget stays", async () => {
    const plan = planOf("farm-plan");
    const asPlanned = await show(plan);
    const changed = await show(typed(typed(plan, "whatif_yield_try", 50), "whatif_cost_try", 400));
    expect(asPlanned.beside("What if", "Yield")).toBe(asPlanned.beside("What if", "Yield planned"));
    expect(changed.beside("What if", "Yield planned")).toBe(asPlanned.beside("What if", "Yield planned"));
    expect(changed.beside("What if", "Yield")).toBe(50);
    // (400 + 50 × 0.12) / 50
    expect(changed.beside("What if", "Price that covers all costs")).toBeCloseTo(8.12, 9);
    expect(changed.beside("What if", "Price")).toBe(asPlanned.beside("What if", "Price planned"));
  });

  it.each([
    ["farm-plan", ["crop", "acres", "yield", "price", "cost", "per_bushel", "other"].map((key) => `whatif_${key}`)],
    ["quick-what-if", ["crop", "yield", "price", "cost", "per_bushel", "other"].map((key) => `quick_${key}`)],
  ])("gives the places of the %s names", (starter, names) => {
    expect(planOf(starter).names.map(({ name }) => name)).toEqual(expect.arrayContaining(names));
  });
});
