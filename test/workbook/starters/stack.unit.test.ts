import { below, retypedBelow, retypedBeside } from "./practice-cells";
import { planOf, show, type ShownBook } from "./shown-sheet";

/** The plan with no other part: it is worked out anew for every change. */
const plan = planOf("farm-plan", { parts: ["practices"] });
let book: ShownBook;
beforeAll(async () => {
  book = await show(plan);
});

const price = 10.48;
/** Potash is for 227 of 820 acres. */
const potashShare = 227 / 820;
const expected = (practice: string) => Number(below(book, "Practices", "Expected gain bu/ac", practice));
const set = (label: string, shown = book) => Number(shown.beside("Stack", label));

describe("the stack of practices of the invented farm", () => {
  it("spreads cost and gain over the acres of the crop", () => {
    expect(below(book, "Stack", "Cost on a crop acre $/ac", "potash before soybean")).toBeCloseTo(42 * potashShare, 9);
    expect(below(book, "Stack", "Gain on a crop acre bu/ac", "narrower rows, lower rate")).toBeCloseTo(6.5 / 3, 9);
  });

  it("takes up the three that net something, within $35: 11.63 + 1 + 18", () => {
    // on a crop acre potash nets 3.68, narrower rows 21.71, the herbicide 13.44; the others lose
    const gain = expected("potash before soybean") * potashShare + 6.5 / 3 + 3;
    expect(set("Practices picked")).toBe(3);
    expect(set("Cost")).toBeCloseTo(42 * potashShare + 19, 6);
    expect(set("Expected gain")).toBeCloseTo(gain, 6);
    expect(set("Expected net")).toBeCloseTo(gain * price - 42 * potashShare - 19, 6); // 38.83
    expect(below(book, "Stack", "Why", "potash before soybean")).toBe("in the set");
    expect(below(book, "Stack", "Why", "fungicide pass at pod set")).toBe(
      "brings less than it costs beside the others",
    );
  });

  it("leaves out what the crop budget pays for already", () => {
    expect(below(book, "Stack", "Pick", "seed treatment with inoculant")).toBe("");
    expect(below(book, "Stack", "Why", "seed treatment with inoculant")).toBe("in the crop budget already");
  });

  it("says what one case in ten nets: 1.2816 standard deviations below, beliefs off together by 0.3", () => {
    const sd = (practice: string) => Number(below(book, "Practices", "Give or take bu/ac", practice));
    const sds = [
      sd("potash before soybean") * potashShare,
      sd("narrower rows, lower rate"),
      sd("second residual herbicide group"),
    ];
    const squares = sds.reduce((sum, each) => sum + each ** 2, 0);
    const sum = sds.reduce((all, each) => all + each, 0);
    const together = Math.sqrt(0.7 * squares + 0.3 * sum ** 2);
    expect(set("1 case in 10 nets less than")).toBeCloseTo(set("Expected net") - 1.2816 * price * together, 6);
  });

  it("shows the set on top of the budget, nothing counted twice", () => {
    const row = (label: string, column: number) => Number(book.beside("Stack", label, column));
    const budget = (label: string) => Number(book.beside("Crop budgets", label, 3));
    expect(row("Left over all costs", 2)).toBeCloseTo(budget("Over all costs"), 9);
    expect(row("Left over all costs", 4)).toBeCloseTo(set("Expected net"), 9);
    expect(row("Price that covers all costs", 2)).toBeCloseTo(budget("Price that covers all costs"), 9);
  });

  it("keeps within the money: $25 has room for the herbicide and narrower rows, not for potash", async () => {
    const tight = await show(retypedBeside(plan, "Stack", "Most to spend", 25));
    expect(set("Cost", tight)).toBe(19);
    expect(below(tight, "Stack", "Why", "potash before soybean")).toBe("budget is $5.63/ac short"); // 19 + 11.63 - 25
  });

  it("keeps to what it is told: one left out, one that does not go with another, one at most", async () => {
    const withoutNarrow = retypedBelow(plan, "Stack", "Leave out", 3, "yes");
    const apart = retypedBelow(withoutNarrow, "Stack", "Does not go with", 4, "potash before soybean");
    const told = await show(apart);
    expect(told.errors()).toEqual([]);
    expect(below(told, "Stack", "Why", "narrower rows, lower rate")).toBe("left out");
    expect(below(told, "Stack", "Pick", "second residual herbicide group")).toBe("yes");
    expect(below(told, "Stack", "Why", "potash before soybean")).toBe(
      "does not go with second residual herbicide group",
    );
    expect(set("Cost", told)).toBe(18);
  });

  it("closes shares of the gap where gains diminish: potash then nets nothing more, and the set changes", () => {
    const gap = 75 - Number(book.beside("Stack", "Yield without them"));
    const gain = gap * (1 - (1 - 6.5 / 3 / gap) * (1 - 3 / gap));
    expect(below(book, "Stack", "diminishing", "Expected net")).toBeCloseTo(gain * price - 19, 6);
    expect(book.words("Stack").some((words) => words.startsWith("▼ The set changes"))).toBe(true);
  });
});
