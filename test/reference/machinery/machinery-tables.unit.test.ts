import { customRates, customSurveys, type CustomRate } from "../../../src/reference/machinery/custom-rates";
import { drafts, type DraftRow } from "../../../src/reference/machinery/draft";
import { dieselByLoad, fuels, laborHours, oilShare, ownershipExtras } from "../../../src/reference/machinery/fuel";
import { fieldMachines, machines, tractors } from "../../../src/reference/machinery/machines";
import { operationFuels, systemFuel } from "../../../src/reference/machinery/operation-fuel";
import { remainingValues, type RemainingValue } from "../../../src/reference/machinery/remaining-value";
import { sources } from "../../../src/reference/sources";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
const values: readonly RemainingValue[] = Object.values(remainingValues);
const pulls: readonly DraftRow[] = Object.values(drafts);
const rates: readonly CustomRate[] = Object.values(customRates);

describe("machines of the standard", () => {
  const all = Object.values(machines);
  const field = Object.values(fieldMachines);

  it("are frozen: 2 tractors and 16 field machines with the sums of their columns", () => {
    expect([Object.keys(tractors).length, field.length]).toEqual([2, 16]);
    expect(sum(all.map(({ repairFactor }) => repairFactor))).toBeCloseTo(4.04, 9);
    expect(sum(all.map(({ repairPower }) => repairPower))).toBeCloseTo(30.8, 9);
    expect(sum(all.map(({ lifeHours }) => lifeHours))).toBe(58_700);
    expect([0, 1, 2].map((at) => sum(field.map(({ efficiencyPct }) => efficiencyPct[at] ?? 0)))).toEqual([
      1040, 1235, 1365,
    ]);
    expect([0, 1, 2].map((at) => sum(field.map(({ mph }) => mph[at] ?? 0)))).toEqual([64, 92, 118]);
  });
  // The standard prints, beside the factors, repairs over the whole life in % of list, rounded to 5.
  it.each([
    ["twoWheel", 100],
    ["fourWheel", 80],
    ["moldboardPlow", 100],
    ["heavyDisk", 60],
    ["tandemDisk", 60],
    ["chiselPlow", 75],
    ["fieldCultivator", 70],
    ["springToothHarrow", 70],
    ["rollerPacker", 40],
    ["mulcherPacker", 40],
    ["rotaryHoe", 60],
    ["rowCultivator", 80],
    ["planter", 75],
    ["drill", 75],
    ["combine", 40],
    ["combinePto", 60],
    ["sprayer", 70],
    ["spreader", 80],
  ] as const)("%s is repaired for about %i %% of list in its life", (key, printed) => {
    const { repairFactor, repairPower, lifeHours } = machines[key];
    expect(Math.abs(100 * repairFactor * (lifeHours / 1000) ** repairPower - printed)).toBeLessThan(4);
  });
  it("run from low over typical to high", () => {
    for (const { efficiencyPct, mph } of field) {
      for (const [low, typical, high] of [efficiencyPct, mph]) expect(low <= typical && typical <= high).toBe(true);
    }
  });
});

describe("remaining values", () => {
  it("are frozen: 12 classes with the sums of their coefficients", () => {
    expect(values).toHaveLength(12);
    expect(sum(values.map(({ start }) => start))).toBeCloseTo(10.671, 9);
    expect(sum(values.map(({ age }) => age))).toBeCloseTo(1.1497, 9);
    expect(sum(values.map(({ use }) => use))).toBeCloseTo(0.0197, 9);
  });
  it("part tractors by horsepower without a gap", () => {
    const { tractorSmall, tractorMiddle, tractorLarge } = remainingValues;
    expect([tractorSmall.fromHp, tractorSmall.toHp]).toEqual([30, tractorMiddle.fromHp]);
    expect(tractorMiddle.toHp).toBe(tractorLarge.fromHp);
  });
});

describe("draft", () => {
  it("is frozen: 15 implements with the sums of their columns", () => {
    expect(pulls).toHaveLength(15);
    expect(sum(pulls.map(({ constant }) => constant))).toBe(1793);
    expect(sum(pulls.map(({ linear }) => linear))).toBeCloseTo(38.7, 9);
    expect(sum(pulls.map(({ square }) => square))).toBeCloseTo(8.5, 9);
    expect(sum(pulls.map(({ medium }) => medium))).toBeCloseTo(12.83, 9);
    expect(sum(pulls.map(({ coarse }) => coarse))).toBeCloseTo(10.64, 9);
    expect(pulls.every(({ fine }) => fine === 1)).toBe(true);
    expect(pulls.filter(({ countsDepth }) => !countsDepth)).toHaveLength(3); // planters
  });
});

describe("fuel tables", () => {
  it("keep 15 Missouri operations and 26 Nebraska cells", () => {
    const missouri = Object.values(operationFuels);
    expect(missouri).toHaveLength(15);
    expect(sum(missouri.map(({ galPerAc }) => galPerAc))).toBeCloseTo(9.23, 9);
    expect(sum(missouri.map(({ mph }) => mph))).toBeCloseTo(78, 9);
    expect(sum(missouri.map(({ ptoHpPerFt }) => ptoHpPerFt))).toBeCloseTo(74.4, 9);
    expect(systemFuel.rows).toHaveLength(26);
    expect(sum(systemFuel.rows.map(({ galPerAc }) => galPerAc))).toBeCloseTo(17.12, 9);
  });
  it("keep the coefficients of engines, oil and labor", () => {
    expect([fuels.diesel.galPerHpHour, fuels.gasoline.galPerHpHour]).toEqual([0.044, 0.06]);
    expect(dieselByLoad).toMatchObject({ slope: 0.22, idle: 0.096, cross: 0.0045, throttle: 0.008_77 });
    expect([oilShare.pct, laborHours.perMachineHour, ownershipExtras.pct]).toEqual([15, 1.1, 1]);
  });
});

describe("custom rates", () => {
  it("keep 20 medians of 2019, $430.80 together, and 8 averages of 2023, $156.30", () => {
    const of = (survey: keyof CustomRate["rates"]) => rates.flatMap(({ rates: by }) => by[survey] ?? []);
    expect([of("y2019").length, of("y2023").length]).toEqual([20, 8]);
    expect(sum(of("y2019"))).toBeCloseTo(430.8, 9);
    expect(sum(of("y2023"))).toBeCloseTo(156.3, 9);
  });
});

it("every machinery row cites a publication that exists", () => {
  const cited = [...Object.values(machines), ...values, ...pulls, ...Object.values(customSurveys)];
  for (const { source } of cited) expect(sources).toHaveProperty([source]);
});
