import { earLoss as earLossOf } from "../../core/harvest/ear-loss";
import { harvestLimits } from "../../core/harvest/harvest-limits";
import { harvestLoss as harvestLossOf, type HarvestLoss } from "../../core/harvest/harvest-loss";
import { lossByPlace as lossByPlaceOf } from "../../core/harvest/loss-by-place";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { checkLines } from "../check-lines";
import { lossCropWords } from "./harvest-words";
import { machinery } from "../cautions";

const crop = choice(lossCropWords, { says: "crop, or its seed size where that changes the count" });
const seedsPerPound = optional(
  quantity(harvestLimits.seedsPerPound, { says: "seeds in a pound of the crop at hand, better than the average" }),
  null,
  "the printed number of seeds on a square foot that are a bushel an acre",
);
const noneStanding = optional(
  quantity(harvestLimits.seedsOnGround, {
    says: "seeds on a square foot under the standing crop, lost before harvest",
  }),
  0,
  "0: all that lies there is taken for harvest loss",
);

export const harvestLoss = worksheetFunction({
  name: "HARVESTLOSS",
  family: "harvest",
  summary: "Bushels an acre that a harvest leaves on the ground, from seeds counted behind the combine.",
  asks: ["how much am I losing behind the combine", "beans on the ground per square foot", "harvest loss in bushels"],
  args: {
    crop,
    seedsPerSqFt: quantity(harvestLimits.seedsOnGround, {
      says: "seeds on a square foot behind the combine, the mean over its whole width",
    }),
    standing: noneStanding,
    seedsPerPound,
    yield: optional(
      quantity(harvestLimits.yield, { says: "bushels harvested, for the loss in percent" }),
      null,
      "no percent",
    ),
    price: optional(
      quantity(harvestLimits.price, { says: "price of the grain, for the loss in dollars" }),
      null,
      "no dollars",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "bushels lost by the harvest itself" },
  sources: ["ndsu-harvest-losses-2002", "msu-soybean-loss-2012", "hofman-grain-losses", "seeds-per-area"],
  cautions: [machinery],
  example: {
    call: ["soybean", 10.25, 1.75],
    gives: 2.125,
    because: "by hand: (10.25 − 1.75) / 4 = 8.5 / 4, where 4 beans on a square foot are a bushel an acre",
  },
  compute: (values) =>
    harvestLossOf({
      crop: values.crop,
      seedsPerSqFt: values.seedsPerSqFt,
      standingPerSqFt: values.standing,
      seedsPerLb: values.seedsPerPound,
      yieldBuPerAc: values.yield,
      priceUsdPerBu: values.price,
    }),
  value: (result) => result.lossBuPerAc,
  working: (result) => [
    line(`A bushel an acre (${result.count.from})`, result.count.seedsPerSqFt, "seeds/sq ft"),
    line("Lost before harvest", result.beforeHarvestBuPerAc, "bu/ac"),
    line("Lost by the harvest", result.lossBuPerAc, "bu/ac"),
    ...shareLines(result),
    ...(result.valueUsdPerAc === null ? [] : [line("Worth", result.valueUsdPerAc, "$/ac")]),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function shareLines({ lossPct, target }: HarvestLoss): WorkingLine[] {
  const lines = lossPct === null ? [] : [line("Of the crop that stood", lossPct, "%")];
  if (!target) return lines;
  const range = target.lowPct === target.highPct ? `${target.lowPct}` : `${target.lowPct} to ${target.highPct}`;
  return [...lines, line("Good work keeps to", range, "%")];
}

const seedsOn = (where: string) => quantity(harvestLimits.seedsOnGround, { says: `seeds on a square foot ${where}` });

export const lossByPlace = worksheetFunction({
  name: "LOSSBYPLACE",
  family: "harvest",
  summary: "Where a harvest loses grain: before it, at the header or in the machine.",
  asks: ["where does my combine lose grain", "header loss or separator loss", "shatter loss at the header"],
  args: {
    crop,
    standing: seedsOn("under the standing crop"),
    header: seedsOn("behind the cutterbar where the machine has not yet dropped residue"),
    behind: seedsOn("behind the machine, where it drops its residue"),
    seedsPerPound,
    headerWidth: optional(
      quantity(harvestLimits.machineWidth, { says: "width of the header" }),
      null,
      "residue spread over the whole width",
    ),
    residueWidth: optional(
      quantity(harvestLimits.machineWidth, { says: "width over which the residue falls" }),
      null,
      "residue spread over the whole width",
    ),
  },
  returns: { shape: "table", unit: "bu/ac", says: "a row for each place with its bushels and share, and the total" },
  sources: ["hofman-grain-losses", "ndsu-harvest-losses-2002", "seeds-per-area"],
  cautions: [machinery],
  example: {
    call: ["soybean", 2, 8, 12],
    gives: [
      ["Lost", "bu/ac", "% of the loss"],
      ["before harvest", 0.5, 16.6667],
      ["at the header", 1.5, 50],
      ["in the machine", 1, 33.3333],
      ["total", 3, 100],
    ],
    because: "by hand: 2 / 4, (8 − 2) / 4, (12 − 8) / 4, and each over 3",
  },
  compute: ({ crop: lossCrop, standing, header, behind, seedsPerPound: seedsPerLb, headerWidth, residueWidth }) =>
    lossByPlaceOf({
      crop: lossCrop,
      standingPerSqFt: standing,
      headerPerSqFt: header,
      behindPerSqFt: behind,
      seedsPerLb,
      headerWidthFt: headerWidth,
      residueWidthFt: residueWidth,
    }),
  value: (result) => {
    const share = (bushels: number) => (result.totalBuPerAc === 0 ? 0 : (100 * bushels) / result.totalBuPerAc);
    const row = (name: string, bushels: number) => [name, bushels, share(bushels)];
    return [
      ["Lost", "bu/ac", "% of the loss"],
      row("before harvest", result.beforeHarvestBuPerAc),
      row("at the header", result.headerBuPerAc),
      row("in the machine", result.machineBuPerAc),
      row("total", result.totalBuPerAc),
    ];
  },
  working: (result) => [
    line(`A bushel an acre (${result.count.from})`, result.count.seedsPerSqFt, "seeds/sq ft"),
    line("Residue falls narrower than the header", result.narrowing, "times"),
    line("Before harvest", result.beforeHarvestBuPerAc, "bu/ac"),
    line("At the header", result.headerBuPerAc, "bu/ac"),
    line("In the machine", result.machineBuPerAc, "bu/ac"),
    ...checkLines(result.count.cited),
  ],
  cites: (result) => result.count.cited,
});

export const earLoss = worksheetFunction({
  name: "EARLOSS",
  family: "harvest",
  summary: "Bushels an acre of corn lost as whole ears.",
  asks: ["ears left on the ground", "dropped ears of corn", "how far to walk for ear loss"],
  args: {
    ears: quantity(harvestLimits.ears, { says: "ears of about three quarters of a pound found on the ground" }),
    rows: quantity(harvestLimits.harvestRows, { says: "rows looked over side by side, usually those of the header" }),
    rowWidth: quantity(harvestLimits.rowWidth, { says: "distance from row to row" }),
    feet: optional(
      quantity(harvestLimits.walked, { says: "feet walked along the rows" }),
      null,
      "the length that makes 1/100 acre, which the working tells",
    ),
  },
  returns: { shape: "one", unit: "bu/ac", says: "bushels lost as ears; small ears count for less" },
  sources: ["missouri-g1290"],
  cautions: [machinery],
  example: {
    call: [4, 6, 30, 58.08],
    gives: 2,
    because: "by hand: 58.08 ft of six 30-inch rows is 2/100 acre, so 4 ears are 2 on each hundredth",
  },
  compute: ({ ears, rows, rowWidth, feet }) => earLossOf({ ears, rows, rowWidthIn: rowWidth, walkedFt: feet }),
  value: (result) => result.lossBuPerAc,
  working: (result) => [
    line("Length that makes 1/100 acre", result.hundredthFt, "ft"),
    line("Walked", result.walkedFt, "ft"),
    line("An ear weighs about", result.earLb, "lb"),
    line("Lost as ears", result.lossBuPerAc, "bu/ac"),
  ],
  cites: (result) => result.cited,
});
