import type { WorkbookPlan } from "../../../src/workbook/plan";
import { retyped } from "../retyped";
import { headOf, retypedBelow } from "./practice-cells";
import { planOf, show, typed, type ShownBook } from "./shown-sheet";

const plan = planOf("farm-plan", { parts: ["practices", "page"] });
let book: ShownBook;
beforeAll(async () => {
  book = await show(plan);
});

const soybean = 3;
const wholeFarm = 5;
const page = (label: string, column: number) => Number(book.beside("Landlord or lender", label, column));
const range = (label: string, column = soybean, shown = book) => Number(shown.beside("Range of profit", label, column));

describe("the range of profit", () => {
  it("reaches from the lowest to the highest yield and price: 75 % of the goal, 125 % of $10.60", () => {
    const goal = (62 * 154 + 54 * 96 + 58 * 140 + 60 * 203 + 57 * 227) / 820;
    expect(book.at("Range of profit", headOf(plan, "Range of profit", "unit").row + 7, soybean)).toBeCloseTo(
      0.75 * goal,
      6,
    );
    expect(book.at("Range of profit", headOf(plan, "Range of profit", "unit").row + 10, soybean)).toBeCloseTo(13.25, 6);
  });

  it("covers all costs as often as the yield passes the one that covers them, when the price is fixed", async () => {
    // rows below the heading: lowest price, highest price, how they move together
    const { row } = headOf(plan, "Range of profit", "unit");
    const typed = [
      [4, 100],
      [5, 100],
      [6, 0],
    ] as const;
    const fixed = typed.reduce(
      (before, [down, value]) => retyped(before, "Range of profit", { row: row + down, column: soybean }, value),
      plan,
    );
    const shown = await show(fixed);
    expect(shown.errors()).toEqual([]);
    const goal = Number(shown.beside("Crop budgets", "Yield goal", soybean));
    const needed = Number(shown.beside("Crop budgets", "Yield that covers all costs", soybean));
    // needed lies above the likely yield: the tip of the triangle beyond it
    const tip = (1.15 * goal - needed) ** 2 / (0.4 * goal * 0.15 * goal);
    expect(range("All costs are covered in", soybean, shown)).toBeCloseTo(tip, 3); // 0.314
  });

  it("orders a bad year, a middling and a good one", () => {
    expect(range("1 year in 10 is below")).toBeLessThan(range("Half of the years are below"));
    expect(range("Half of the years are below")).toBeLessThan(range("1 year in 10 is above"));
    expect(range("Mean of the worst 1 year in 20")).toBeLessThan(range("1 year in 10 is below"));
  });
});

describe("the page for landlord or lender", () => {
  it("is one page", () => {
    const sheet = plan.sheets.find(({ name }) => name === "Landlord or lender");
    expect(sheet?.print).toMatchObject({ orientation: "portrait", fit: { wide: 1, tall: 1 } });
  });

  it("adds up the farm as the summary does", () => {
    const summary = (label: string) => Number(book.beside("Summary", label, wholeFarm));
    expect(page("Acres", wholeFarm)).toBe(1480);
    expect(page("Income", wholeFarm)).toBeCloseTo(summary("Income"), 4);
    expect(page("Left over all costs", wholeFarm)).toBeCloseTo(summary("Left over all costs"), 4);
    // land at $225 on 1,480 acres
    expect(page("Land", wholeFarm)).toBeCloseTo(333_000, 6);
  });

  it("adds the practices taken up once: what the stack nets on 820 acres of soybean", () => {
    const more = page("Left with the practices taken up", wholeFarm) - page("Left over all costs", wholeFarm);
    expect(more).toBeCloseTo(820 * Number(book.beside("Stack", "Expected net")), 4);
    expect(Number(book.beside("Crop budgets", "Over all costs with them", soybean))).toBeCloseTo(
      Number(book.beside("Crop budgets", "Over all costs", soybean)) + Number(book.beside("Stack", "Expected net")),
      6,
    );
    expect(book.beside("Crop budgets", "Practices cost", 2)).toBe(0); // corn
  });

  it("says where the soil is going, and what is done about each practice and why", () => {
    const words = book.words("Landlord or lender");
    expect(words).toContain("▼ Mill Road is drawing potash down by 31 lb/ac a year; 7 of 10 fields draw down.");
    expect(words).toContain("● Taken up on soybean: 3 practices, $30.63 on an acre of it for 6.6 bu/ac expected.");
    // 12 / 10.48 = 1.145; (-0.5 + 0.3 + 1.5) / 3 = 0.433; (1.5 - 1.145)² / (2 × 1.2) = 5 %
    expect(words).toContain(
      "▼ Foliar micronutrient: not taken up. $12.00/ac; pays from 1.1 bu/ac, 0.4 expected, odds 5%.",
    );
    expect(words.some((line) => line.startsWith("● Seed treatment with inoculant: in the budget;"))).toBe(true);
  });

  it("points up where a practice that pays stands in the budget already, and not where it is left out", async () => {
    const named = "narrower rows, lower rate"; // pays even at its lowest gain
    const signOf = async (changed: WorkbookPlan) => {
      const words = (await show(changed)).words("Landlord or lender");
      return words.find((line) => line.includes("Narrower rows, lower rate: "));
    };
    expect(await signOf(plan)).toMatch(/^▲ .*: taken up\. /);
    const inBudget = typed(plan, [[["Practices", named, "In the budget now"], "yes"]]);
    expect(await signOf(inBudget)).toMatch(/^▲ .*: in the budget\. /);
    // the third practice of the invented farm
    const leftOut = retypedBelow(plan, "Stack", "Leave out", 3, "yes");
    expect(await signOf(leftOut)).toMatch(/^● .*: not taken up\. /);
  });

  it("leaves practices out where the plan has none", () => {
    const alone = planOf("farm-plan", { parts: ["page"] });
    const shown = alone.sheets.find(({ name }) => name === "Landlord or lender")?.cells.map(({ content }) => content);
    expect(shown).not.toContain("Practices, and why");
    expect(shown).not.toContain("Left with the practices taken up");
  });
});
