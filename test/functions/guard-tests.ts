import { FormulaError } from "../../src/core/fault";
import type { Argument, WorksheetFunction } from "../../src/functions/frame";
import { readValues } from "../../src/functions/frame/run";

/** Arguments left to the sheet: their formula takes them as they come, or first stumbles over another one. */
const leftToSheet: Readonly<Record<string, string>> = {
  REMOVAL: "moisture",
  ROTATIONBALANCE: "applied",
  TESTDRIFT: "balance lbPerPpm cec",
  LIMITINGNUTRIENT: "cec",
  LIMENEED: "pH bufferPH depthIn acidity monthsSince",
  LIMEQUALITY: "cce moisture",
  LIMERATE: "need quality moisture",
  POTASHNEED: "cec",
  TESTCONVERT: "value depth",
  TESTRATING: "cec",
  NITROGENNEED: "organicMatter credits stand priceN priceGrain guidelineRate criticalNitrate",
  NITROGENOPTIMUM: "linear quadratic priceN priceGrain plateauAt highestRate",
  LEGUMECREDIT: "stand regrowth previousYield",
  MANURECREDIT: "rate content ammoniumN ammoniumLoss dryMatter",
  ORGANICNITROGEN: "organicMatter",
  SULFURNEED: "organicMatter soilTest credits",
  MICRONEED: "soilTest pH cec",
  CHLOROSISRISK: "carbonate salts",
  SALTLIMIT: "rowWidth cec",
  SOILCEC: "calcium magnesium potassium sodium bufferPH pH acidity",
  BASESHARE: "calcium magnesium potassium sodium bufferPH pH acidity",
  PRODUCTRATE: "need analysis",
  NUTRIENTPRICE: "pricePerTon analysis otherNutrientsValue",
  SEEDCURVEOPTIMUM: "fewestPlants mostPlants",
  TREATMENTCOST: "grainPrice",
  TREATMENTLIQUID: "grainPrice",
  STANDYIELD: "plantingDate rowWidth",
  PLANTINGDELAY: "plantingDate",
  REPLANTGAIN: "keepDate replantDate rowWidth",
  REPLANTCHANCE: "keepDate replantDate rowWidth",
  MATURITYNEED: "plantingDate",
  MATURITYMARGIN: "plantingDate",
  PASSCOST:
    "tractorPrice tractorHours tractorYears tractorListPrice salvage tractorSalvage ownershipExtras laborFactor",
  TILLAGECOMPARE: "fuel hours costs",
  TRIALPOWER: "gain",
  TRIALPAIRS: "check treated price cost",
  TRIALBLOCKS: "yields price",
  TRIALTREND: "positions yields",
  TRIALPOOL: "gains",
  TRIALADDUP: "check a b both",
  VARIETYMEANS: "yields",
  PRACTICEUPDATE: "cost price",
  PRACTICEPICK: "currentYield attainableYield",
  PRACTICEDECISION: "pairCost pairSd",
  LOSSBYPLACE: "headerWidth residueWidth",
  DRYINGFUEL: "targetMoisture",
  SELLWETORDRY: "elevatorShrink",
  STORAGEUSED: "moistures temperatures",
  UNITCONVERT: "value",
};

/** A formula refuses what its sheet would refuse, under the name that the sheet shows, whoever else calls it. */
export function guardTests(fn: WorksheetFunction): void {
  const values = readValues(fn, fn.example.call);
  const left = (leftToSheet[fn.name] ?? "").split(" ");
  for (const [name, argument] of Object.entries<Argument>(fn.args)) {
    const outside = outsideOf(argument, values[name], name);
    const refused = (value: unknown) => refusedBy(() => fn.compute({ ...values, [name]: value }));
    if (left.includes(name))
      it(`leaves ${name} to its sheet`, () => expect(outside.every((value) => refused(value) === name)).toBe(false));
    else for (const value of outside) it(`refuses ${name} ${shown(value)}`, () => expect(refused(value)).toBe(name));
  }
}

/** What compute would receive for an argument just outside its limit; nothing where it takes no number. */
function outsideOf(argument: Argument, inExample: unknown, name: string): unknown[] {
  const { limit } = argument;
  if (!limit) return [];
  const inner = argument.shape === "optional" ? argument.inner : argument;
  const inside = inner.shape === "one" ? inner.read((limit.min + limit.max) / 2, name) : inExample;
  return holdsNumber(inside) ? [limit.min - 1, limit.max + 1].map((number) => withNumber(inside, number)) : [];
}

function holdsNumber(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return typeof value === "number";
  return Object.values(value).some((part) => typeof part === "number");
}

/** The value with its first number changed: { ftPerDay: 2 } to { ftPerDay: 501 }, [3, 4] to [501, 4]. */
function withNumber(value: unknown, number: number): unknown {
  if (typeof value !== "object" || value === null) return number;
  const entries = Object.entries(value);
  const first = entries.findIndex(([, part]) => typeof part === "number");
  const changed = entries.map(([key, part], index) => [key, index === first ? number : part] as const);
  return Array.isArray(value) ? changed.map(([, part]) => part) : Object.fromEntries(changed);
}

function shown(value: unknown): string {
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

/** The argument that a formula refuses. */
function refusedBy(run: () => unknown): string | undefined {
  try {
    run();
  } catch (thrown) {
    if (!(thrown instanceof FormulaError)) throw thrown;
    return "argument" in thrown.fault ? thrown.fault.argument : undefined;
  }
  return undefined;
}
