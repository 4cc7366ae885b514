import { capitalLimits } from "../../../../core/capital/capital-limits";
import {
  investmentReturn,
  investmentValue,
  neededGain,
  paybackYears,
  yearlyCost,
} from "../../../../functions/money/capital";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { less, quiet, whenNamed, whenNumbers } from "../../../formula/natives";
import { place, type Reference } from "../../../formula/reference";
import type { EntriesBlock, MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, pick, typedNumber, typedWords } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { computedRow, wordsRow } from "../../../model/matrix-rows";
import { headersOf, tableBlock, type TableBlock } from "../../../model/table";
import { drainageExample, drainageGains, drainageTerms } from "../../../scenario/drainage-examples";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { job } from "./tile-blocks";

const gainTable = headersOf("DrainageGains", {
  crop: "Crop",
  share: "Share of years %",
  net: "Net price $/bu",
  low: "Low gain bu/ac",
  likely: "Likely gain bu/ac",
  high: "High gain bu/ac",
  lowWorth: "Low worth $/ac a year",
  likelyWorth: "Likely worth $/ac a year",
  highWorth: "High worth $/ac a year",
});
const own = gainTable.own;
type Level = "low" | "likely" | "high";
const gainLevels = (["low", "likely", "high"] as const).map((level) => ({ key: level, head: `${level} gain` }));
const pay = (key: string) => place(`pay.${key}`);
const shortest = 1;

/** Bushels that tile adds, and what they are worth in a mean year of the rotation. */
export function gainBlock({ crops, fields }: FarmContext): TableBlock {
  const isDemo = fields.some(({ field }) => field === drainageExample.field);
  const examples = isDemo ? drainageGains.filter(({ crop }) => crops.some((each) => each.crop === crop)) : [];
  const bushels = {
    width: 12,
    format: formats.one,
    allow: { kind: "between", min: -100, max: 200, prompt: "Bushels that tile adds in a year of this crop." },
  } as const;
  return tableBlock(
    gainTable,
    { title: "What it adds", rows: 3, wholeLabel: "A mean year" },
    {
      crop: typedWords(pick(examples, "crop"), {
        width: 27,
        allow: cropList,
      }),
      share: typedNumber(pick(examples, "yearsPct"), {
        width: 12,
        format: formats.whole,
        allow: { kind: "between", min: 0, max: 100, prompt: "Percent of the years that grow this crop." },
        whole: formula`SUM(${gainTable.all("share")})`,
      }),
      net: computed(
        whenNamed(own("crop"), quiet(formula`${ofCrop(own("crop"), "price")}-${ofCrop(own("crop"), "costPerBushel")}`)),
        { width: 12, format: formats.cents, note: "Price of the plan less hauling and drying." },
      ),
      low: typedNumber(pick(examples, "lowBuPerAc"), {
        ...bushels,
        note: "A gain you would bet on nine years in ten.",
      }),
      likely: typedNumber(pick(examples, "likelyBuPerAc"), {
        ...bushels,
        note: "The mean over wet and dry years: most of the gain comes in a few wet ones.",
      }),
      high: typedNumber(pick(examples, "highBuPerAc"), bushels),
      lowWorth: worthColumn("low"),
      likelyWorth: worthColumn("likely"),
      highWorth: worthColumn("high"),
    },
  );
}

function worthColumn(level: Level) {
  const parts = [own("share"), own("net"), own(level)];
  const all = gainTable.all(`${level}Worth`);
  return computed(whenNumbers(parts, formula`${own("share")}/100*${own("net")}*${own(level)}`), {
    width: 13,
    format: formats.cents,
    whole: formula`IF(COUNT(${all})=0,"",SUM(${all}))`,
  });
}

/** Terms, and what the cost comes to a year. */
export function termsBlock(): EntriesBlock {
  const { years, interestRate, upkeepUsdPerAc } = drainageTerms;
  const shared = { investment: job("perAcre"), years: pay("years"), rate: pay("rate") };
  const parts = [job("perAcre"), pay("years"), pay("rate")];
  const money = { unit: "$/ac a year", format: formats.cents };
  return {
    kind: "entries",
    key: "pay",
    title: "What it costs a year",
    entries: [
      typedEntry({ key: "years", label: "Years it lasts", unit: "years", format: formats.whole }, years, {
        kind: "between",
        min: shortest,
        max: capitalLimits.years.max,
        whole: true,
        prompt: "Whole years; tile often lasts 30 and more.",
      }),
      typedEntry({ key: "rate", label: "Interest", unit: "a year", format: formats.rate }, interestRate, {
        kind: "between",
        min: 0,
        max: 1,
        prompt: "Interest of a long loan, or what your money could earn: 8 % is 8% or 0.08.",
      }),
      typedEntry({ ...money, key: "upkeep", label: "Upkeep" }, upkeepUsdPerAc, {
        kind: "between",
        min: 0,
        max: 1000,
        prompt: "Repairs and drainage tax, dollars an acre and year.",
      }),
      computedEntry({ ...money, key: "yearly", label: "Yearly cost" }, whenNumbers(parts, call(yearlyCost, shared))),
      computedEntry(
        { ...money, key: "needed", label: "Gain that pays for it", says: "Yearly cost and upkeep." },
        whenNumbers(parts, call(neededGain, { ...shared, upkeep: pay("upkeep") })),
      ),
    ],
  };
}

const value = (row: string, level: Level) => place("verdict", row, level);

/** Low, likely and high gain against the cost. */
export function verdictBlock(): MatrixBlock {
  return {
    kind: "matrix",
    key: "verdict",
    title: "Does it pay, an acre",
    corner: "At the",
    columns: gainLevels,
    rows: [
      row("gain", "Gain less upkeep", "$ a year", formats.cents, gainAfterUpkeep),
      row("over", "Left over yearly cost", "$ a year", formats.cents, (level) =>
        less(value("gain", level), pay("yearly")),
      ),
      row("worth", "Worth today beyond its price", "$", formats.dollars, (level) =>
        whenNumbers(
          [job("perAcre"), value("gain", level)],
          call(investmentValue, { ...priced(level), years: pay("years"), rate: pay("rate") }),
        ),
      ),
      row("return", "Return", "a year", formats.rate, (level) =>
        whenNumbers(
          [job("perAcre"), value("gain", level)],
          call(investmentReturn, { ...priced(level), years: pay("years") }),
        ),
      ),
      row("payback", "Paid back, interest not counted", "years", formats.one, (level) =>
        whenNumbers([job("perAcre"), value("gain", level)], call(paybackYears, priced(level))),
      ),
      wordsRow({ key: "words", label: "In words" }, gainLevels, (level) =>
        whenNumbers([value("over", level)], formula`IF(${value("over", level)}>=0,"▲ pays","▼ falls short")`),
      ),
    ],
  };
}

function priced(level: Level): { investment: Reference; yearlyGain: Reference } {
  return { investment: job("perAcre"), yearlyGain: value("gain", level) };
}

function gainAfterUpkeep(level: Level): Expression {
  const worth = gainTable.whole(`${level}Worth`);
  return less(worth, pay("upkeep"));
}

function row(key: string, label: string, unit: string, format: string, cell: (level: Level) => Expression): MatrixRow {
  return computedRow({ key, label, unit, format }, gainLevels, cell);
}
