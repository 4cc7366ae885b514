import { allFunctions } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine";
import { defaultChoices } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { readFarm, type FarmFigures } from "../../../src/taskpane/pane/overview/farm-figures";
import { findingsOf } from "../../../src/taskpane/pane/overview/findings";
import { starterNamed } from "../starter-named";
import { PlanHost } from "../plan-host";
import { FakeHost } from "../fake-host";

jest.setTimeout(60_000);

async function farmHost(choices = defaultChoices, taken?: Parameters<typeof makePlan>[2]) {
  const plan = makePlan(starterNamed("farm-plan"), choices, taken);
  const values = await calculate(plan, allFunctions);
  return { plan, values, host: new PlanHost(plan, values) };
}

async function figuresOf(host: PlanHost): Promise<FarmFigures> {
  const figures = await readFarm(host);
  if (!figures) throw new Error("The farm plan was not found.");
  return figures;
}

describe("the overview of the invented farm", () => {
  it("says what the summary sheet works out by its own formulas", async () => {
    const { plan, values, host } = await farmHost();
    const summary = plan.sheets.find(({ name }) => name === "Summary");
    const sentences = (summary?.cells ?? []).map(({ row, column }) => String(values.valueAt("Summary", row, column)));
    const [potash, lime, price] = findingsOf(await figuresOf(host));
    // Removal of K2O: corn 0.20, soybean 1.15 lb/bu. Mill Road: (40 - 0.20 x 182 - 1.15 x 57) / 2 = -30.98.
    expect(potash?.says[0]).toBe("Mill Road is drawing potash down by 31 lb/ac a year; 7 of 10 fields draw down.");
    // Left of it before soybean: (49.2 + 25.8 + 22.4 + 21.4 + 3.6) / 5 = 24.48; taken 1.15 x 58.2 = 66.93.
    expect(potash?.says[1]).toBe(
      "Before soybean, the last crop leaves 24 lb/ac of the potash put on; soybean takes 67.",
    );
    expect(sentences).toContain(`▼ ${potash?.says[0]}`);
    expect(sentences).toContain(`● ${potash?.says[1]}`);
    expect(sentences).toContain(`● ${lime?.says[0]?.replace("are short of lime", "call for lime")}`);
    const [, crop, needs, has] =
      /^(\w+) comes nearest: it needs \$([\d.]+)\/bu, the plan has \$([\d.]+)\.$/.exec(price?.says[1] ?? "") ?? [];
    expect(crop).toBe("Soybean");
    expect(sentences.some((text) => text.startsWith(`● Soybean covers all costs at $${needs} or`))).toBe(true);
    expect(sentences.some((text) => text.includes(`the plan has $${has} and`))).toBe(true);
  });

  it("leads to the very cells", async () => {
    const { host } = await farmHost();
    const figures = await figuresOf(host);
    for (const { goTo } of findingsOf(figures)) {
      const shown = (await host.read(goTo?.address ?? "")).values[0]?.[0];
      expect(typeof shown).toBe("number");
    }
    expect(figures.acres).toBe(1480);
    expect(figures.summarySheet).toBe("Summary");
  });

  it("finds the plan under the number it was given beside another", async () => {
    const { host } = await farmHost(defaultChoices, { sheets: ["Fields"], names: [], tables: ["Fields"] });
    const figures = await figuresOf(host);
    expect([figures.farm, figures.summarySheet]).toEqual(["Windmill Hollow Farm", "Summary 2"]);
    expect(findingsOf(figures).every(({ goTo }) => goTo !== undefined)).toBe(true);
  });

  it("waits calmly for an empty plan, and finds none in a workbook without one", async () => {
    const { host } = await farmHost({ ...defaultChoices, withDemo: false });
    const [potash, lime] = findingsOf(await figuresOf(host));
    expect([potash?.says, lime?.says]).toEqual([
      ["Waits for fields, yields and what was put on."],
      ["Waits for soil tests."],
    ]);
    expect(await readFarm(new FakeHost())).toBeUndefined();
  });
});

describe("findings", () => {
  const none: FarmFigures = {
    farm: "",
    acres: 0,
    summarySheet: undefined,
    potash: [],
    lime: [],
    budgets: [],
  };
  const budget = (crop: string, priceUsdPerBu: number, coversUsdPerBu: number) => ({
    crop,
    priceUsdPerBu,
    coversUsdPerBu,
    at: "Budgets!C9",
  });

  it("tells a farm whose crops all pay by the one with the least room", () => {
    const [, , price] = findingsOf({ ...none, budgets: [budget("corn", 5, 4), budget("wheat", 6, 5.9)] });
    expect([price?.sign, price?.says.slice(0, 2)]).toEqual([
      "▲",
      [
        "Every crop covers all its costs at the price planned.",
        "Wheat has the least room: it needs $5.90/bu, the plan has $6.00.",
      ],
    ]);
  });

  it("names the crop farthest off when some pay", () => {
    const [, , price] = findingsOf({ ...none, budgets: [budget("corn", 5, 4), budget("wheat", 5, 5.9)] });
    expect(price?.says.slice(0, 2)).toEqual([
      "1 of 2 crops cover all costs at the price planned.",
      "Wheat is farthest off: it needs $5.90/bu, the plan has $5.00.",
    ]);
  });

  it("says so when nothing draws down and no field calls for lime", () => {
    const row = { field: "A", isBeforeSoybean: false, leftLbPerAc: undefined, takesLbPerAc: undefined, at: "L!F6" };
    const [potash, lime] = findingsOf({
      ...none,
      potash: [{ ...row, perYearLbPerAc: -2 }],
      lime: [{ field: "A", rateTonPerAc: 0, tons: 0, costUsd: 0, at: "P!C6" }],
    });
    expect([potash?.says, lime?.says]).toEqual([
      ["No field is drawing potash down by more than 2 lb/ac a year."],
      ["No field calls for lime."],
    ]);
  });
});
