import { replantGain as replantGainOf, type ReplantGain, type ReplantInput } from "../../core/seed/replant-gain";
import { seedLimits } from "../../core/seed/seed-limits";
import { chanceUnit } from "../chance";
import { sheetDate } from "../sheet-date";
import {
  line,
  optional,
  percent,
  quantity,
  rate,
  worksheetFunction,
  type ArgumentValues,
  type WorkingLine,
} from "../frame";
import { checkLines } from "../check-lines";
import {
  everyStandRow,
  hybrid,
  plants,
  standCrop,
  standGuide,
  standRowWidth,
  unevenLossArgument,
} from "./stand-table-arguments";

const asked = {
  crop: standCrop,
  keepDate: optional(sheetDate({ says: "day the stand was planted" }), null, "waited for, but for wheat"),
  keepStand: plants("plants that stand now"),
  replantDate: optional(sheetDate({ says: "day it could be planted again" }), null, "waited for, but for wheat"),
  replantStand: plants("plants wanted from the second planting"),
  yield: quantity(seedLimits.fullYield, { says: "yield of a full stand planted in good time" }),
  price: quantity(seedLimits.grainPrice, { says: "price of a bushel" }),
  cost: quantity(seedLimits.costPerAc, {
    says: "terminating the stand, planting, seed net of help, added sprays",
  }),
  guide: standGuide,
};

const refinements = {
  failYield: optional(quantity(seedLimits.yield, { says: "yield if the second stand is poor too" }), 0, "0"),
  secondStand: optional(
    percent(seedLimits.survival, { says: "what a second stand yields of the table's figure" }),
    100,
    "100; Nebraska takes 90",
  ),
  unevenLoss: unevenLossArgument,
  costPerBushel: optional(
    quantity(seedLimits.perBushel, { says: "harvest, drying and hauling of a bushel" }),
    0,
    "0: the price is net of them",
  ),
  addedDrying: optional(
    quantity(seedLimits.perBushel, { says: "drying that a bushel of the later crop costs on top" }),
    0,
    "0",
  ),
  payment: optional(quantity(seedLimits.costPerAc, { says: "replant payment or other help" }), 0, "0"),
  keepHybrid: hybrid("hybrid that stands now"),
  replantHybrid: hybrid("hybrid of the second planting"),
  rowWidth: standRowWidth,
};

const chance = optional(
  rate(seedLimits.chance, { says: "chance of a good second stand, 0.8 or 80%" }),
  1,
  "1: a good second stand is sure",
);

const sources = [
  "replant-economics",
  "nebraska-replant-2009",
  "isu-pm1885-2001",
  "isu-ipm0001",
  "nafziger-1994",
  "wisconsin-lauer-2003",
  "illinois-bulletin-2009",
  "pennstate-soybean-2019",
  "pennstate-wheat-stand",
  "ontario-wheat-stand-2012",
] as const;

const cautions = [
  "Ask the crop insurer before a stand is destroyed.",
  "Herbicide already applied may forbid the second crop: its label says, and it says how the first stand may be killed.",
];

type Asked = ArgumentValues<typeof asked & typeof refinements>;

function inputOf(values: Asked, chance: number): ReplantInput {
  return {
    crop: values.crop,
    guide: values.guide,
    rowWidthIn: values.rowWidth,
    keep: {
      plantedOn: values.keepDate,
      standPerAc: values.keepStand,
      uneven: values.unevenLoss,
      hybrid: values.keepHybrid,
    },
    replant: { plantedOn: values.replantDate, standPerAc: values.replantStand, hybrid: values.replantHybrid },
    fullYieldBu: values.yield,
    priceUsdPerBu: values.price,
    costUsdPerAc: values.cost,
    chance,
    failYieldBu: values.failYield,
    secondStandPct: values.secondStand,
    costUsdPerBu: values.costPerBushel,
    addedDryingUsdPerBu: values.addedDrying,
    paymentUsdPerAc: values.payment,
  };
}

export const replantGain = worksheetFunction({
  name: "REPLANTGAIN",
  family: "seed",
  summary: "Dollars per acre gained by replanting over keeping the stand; below 0, keep it.",
  asks: ["should I replant", "does replanting pay", "keep or replant", "corn replant decision"],
  args: { ...asked, chance, ...refinements },
  returns: { shape: "one", unit: "$/ac", says: "gain of replanting" },
  sources,
  example: {
    call: ["corn", "2026-04-28", 24_000, "2026-05-28", 30_000, 180, 4, 50, "Iowa 2001", 1, 0, 90],
    gives: -143.6,
    because: "by hand: (0.90 × 0.90 × 180 − 0.94 × 180) × 4 − 50 = (145.8 − 169.2) × 4 − 50",
  },
  cautions,
  compute: (values) => replantGainOf(inputOf(values, values.chance)),
  value: (result) => result.gainUsdPerAc,
  working: (result, values) => [
    ...standLines(result),
    line("Expected of replanting", result.expectedYieldBu, "bu/ac"),
    line("Net price", result.netPriceUsdPerBu, "$/bu"),
    line("Cost less payment", values.cost - values.payment, "$/ac"),
    line("Replanting gains", result.gainUsdPerAc, "$/ac"),
    line("Breaks even at", chanceOf(result), chanceUnit),
    line("Mind", "leave a margin: replanting should bring clearly more than the stand you have"),
    ...checkLines(citedOf(result)),
  ],
  cites: citedOf,
  everyRow: everyStandRow,
});

export const replantChance = worksheetFunction({
  name: "REPLANTCHANCE",
  family: "seed",
  summary: "Chance of a good second stand at which replanting breaks even, or never when even a sure one loses.",
  asks: ["how sure must the second stand be", "replant break-even"],
  args: { ...asked, ...refinements },
  returns: { shape: "one", unit: chanceUnit, says: "that breaks even; 0 when replanting pays in any case" },
  sources,
  example: {
    call: ["corn", "2026-04-28", 12_000, "2026-05-12", 30_000, 200, 4, 50, "Iowa 2001", 0, 90],
    gives: 0.832282,
    tolerance: 0.00001,
    because:
      "by hand: May 12 is 7/8 from 100 to 99, 99.125 %; 0.9 × 198.25 = 178.425 bu; (0.68 × 200 + 50 / 4) / 178.425 = 148.5 / 178.425 = 83.23 %",
  },
  cautions,
  compute: (values) => replantGainOf(inputOf(values, 1)),
  value: chanceOf,
  working: (result) => [...standLines(result), line("Breaks even at", chanceOf(result), chanceUnit)],
  cites: citedOf,
  everyRow: everyStandRow,
});

function standLines({ keep, replant, keepYieldBu, goodYieldBu }: ReplantGain): WorkingLine[] {
  return [
    line("Table", keep.guideTitle),
    line("The stand you have", keep.yieldPct, "%"),
    line("Kept, it yields", keepYieldBu, "bu/ac"),
    line("A good second stand, by the table", replant.yieldPct, "%"),
    line("It yields", goodYieldBu, "bu/ac"),
  ];
}

function chanceOf({ breakEvenChance }: ReplantGain): number | string {
  return breakEvenChance === null || breakEvenChance > 1 ? "never" : Math.max(0, breakEvenChance);
}

function citedOf({ keep, replant }: ReplantGain) {
  return [...keep.cited, ...replant.cited];
}
