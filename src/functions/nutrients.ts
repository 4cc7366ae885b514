import { checkBulletin, type Cited } from "../reference/table";
import { crops } from "../reference/crops";
import { dryResidue, nutrients, parts, removalRows, removalSets } from "../reference/nutrients";
import type { SourceKey } from "../reference/sources";
import { limits } from "../core/limits";
import { removal as removalOf, type Removal, type RemovedPiece } from "../core/nutrients/removal";
import { removalTable as removalTableOf } from "../core/nutrients/removal-table";
import { rotationBalance as rotationBalanceOf } from "../core/nutrients/rotation-balance";
import { testDrift as testDriftOf } from "../core/nutrients/test-drift";
import {
  choice,
  line,
  list,
  listWithGaps,
  optional,
  percent,
  quantity,
  worksheetFunction,
  type WorkingLine,
  type WorksheetFunction,
} from "./frame";
import { limitingNutrient } from "./soil/limiting-nutrient";
import { cropWords, nutrientWords, partWords, removalSetWords } from "./words";
import { testsVary } from "./cautions";

/** Every publication with a removal number, once. */
const removalSources: readonly SourceKey[] = [
  ...new Set([...removalRows, ...dryResidue.rows].map(({ source }) => source)),
];

const planning = "A planning figure: published sets differ and a field's own grain analysis is better.";

const cropArgument = choice(cropWords, { says: "crop that was harvested" });
const yieldArgument = quantity(limits.yieldAny, {
  says: "yield of the harvested part: bu, ton, cwt or bale per acre, as the crop is sold",
});
const partArgument = optional(
  choice(partWords, { says: "part taken off the field, such as grain, straw, silage or grain+straw" }),
  null,
  "the part the crop is grown for",
);
const setArgument = optional(
  choice(removalSetWords, { says: "published set of removal numbers" }),
  null,
  "the usual set for that crop",
);

export const removal = worksheetFunction({
  name: "REMOVAL",
  family: "nutrients",
  summary: "Pounds of a nutrient that a harvest carries off an acre.",
  asks: [
    "how much potash does corn take off",
    "nutrient removal",
    "what does the harvest carry off",
    "phosphate in a bushel of soybeans",
  ],
  args: {
    crop: cropArgument,
    yield: yieldArgument,
    nutrient: choice(nutrientWords, { says: "nutrient; phosphorus and potassium are counted as P2O5 and K2O" }),
    part: partArgument,
    set: setArgument,
    moisture: optional(
      percent(limits.forageMoisture, { says: "moisture of the yield as weighed" }),
      null,
      "the moisture the published number stands on",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of the nutrient removed per acre" },
  sources: removalSources,
  cautions: [planning],
  example: { call: ["corn", 200, "K2O"], gives: 40, because: "by hand: 200 bu × 0.20 lb/bu" },
  compute: ({ crop, yield: yieldPerAc, nutrient, part, set, moisture }) =>
    removalOf({ crop, yieldPerAc, nutrient, part, set, moisturePct: moisture }),
  value: (result) => result.removedLbPerAc,
  working: (result) => [...result.pieces.flatMap((piece) => pieceLines(piece, result)), ...spreadLines(result)],
  cites: (result) => [
    ...result.pieces.map(({ number }) => number.cited),
    ...(result.residueRow ? [result.residueRow] : []),
  ],
});

export const removalTable = worksheetFunction({
  name: "REMOVALTABLE",
  family: "nutrients",
  summary: "Every published nutrient that a harvest carries off an acre, with the spread of published sets.",
  asks: ["removal of every nutrient", "what do straw and grain take off", "compare removal figures"],
  args: { crop: cropArgument, yield: yieldArgument, part: partArgument, set: setArgument },
  returns: { shape: "table", unit: "lb/ac", says: "a row per nutrient: lb/ac, lowest and highest published, set" },
  sources: removalSources,
  cautions: [planning],
  example: {
    call: ["buckwheat", 40],
    gives: [
      ["Nutrient", "lb/ac", "Lowest published", "Highest published", "Set"],
      ["N", 33.2, 33.2, 33.2, "north-central 2008"],
      ["P2O5", 10, 10, 10, "north-central 2008"],
      ["K2O", 8.8, 8.8, 8.8, "north-central 2008"],
    ],
    because: "by hand: 40 bu × 0.83, 0.25 and 0.22 lb/bu",
  },
  compute: ({ crop, yield: yieldPerAc, part, set }) =>
    removalTableOf({ crop, yieldPerAc, part, set, moisturePct: null }),
  value: (lines) => [
    ["Nutrient", "lb/ac", "Lowest published", "Highest published", "Set"],
    ...lines.map(({ nutrient, removal: { removedLbPerAc, lowLbPerAc, highLbPerAc, pieces } }) => [
      nutrients[nutrient].label,
      removedLbPerAc,
      lowLbPerAc,
      highLbPerAc,
      [...new Set(pieces.map(setLabel))].join(", "),
    ]),
  ],
  working: (lines) =>
    lines.flatMap(({ removal: result }) => result.pieces.flatMap((piece) => pieceLines(piece, result))),
  cites: (lines) => lines.flatMap(({ removal: result }) => result.pieces.map(({ number }) => number.cited)),
});

export const rotationBalance = worksheetFunction({
  name: "ROTATIONBALANCE",
  family: "nutrients",
  summary: "Pounds of a nutrient applied less removed over the years of a rotation.",
  asks: [
    "am I feeding the rotation enough or mining the ground",
    "applied less removed",
    "is potash running down",
    "nutrient balance over years",
  ],
  args: {
    crops: listWithGaps(choice(cropWords, { says: "crop" }), { says: "crop of each year" }),
    yields: listWithGaps(quantity(limits.yieldAny, { says: "yield" }), {
      says: "yield of each year, in the same order as the crops",
    }),
    nutrient: choice(nutrientWords, { says: "nutrient; phosphorus and potassium are counted as P2O5 and K2O" }),
    applied: list(quantity(limits.ratePounds, { says: "pounds applied" }), {
      says: "pounds per acre of the nutrient put on over the rotation, fertilizer and manure",
    }),
    parts: optional(
      listWithGaps(choice(partWords, { says: "part" }), { says: "part taken off each year" }),
      null,
      "the part each crop is grown for",
    ),
    set: setArgument,
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds applied less removed over the rotation" },
  sources: removalSources,
  cautions: [
    planning,
    "Phosphate and potash left over stay in the soil; nitrogen and sulfur do not, so read their balance as applied less removed and no more.",
  ],
  example: {
    call: [[["corn"], ["soybean"]], [[180], [60]], "K2O", 60],
    gives: -45,
    because: "by hand: 60 − (180 × 0.20 + 60 × 1.15) = 60 − 105",
  },
  compute: ({ crops: cropList, yields, nutrient, applied, parts: partList, set }) =>
    rotationBalanceOf({ crops: cropList, yields, parts: partList, nutrient, appliedLbPerAc: applied, set }),
  value: (result) => result.balanceLbPerAc,
  working: (result) => [
    line("Applied", result.appliedLbPerAc, "lb/ac"),
    ...result.harvests.map(({ crop, removal: { removedLbPerAc } }, year) =>
      line(`Removed in year ${year + 1} by ${crops[crop].label}`, removedLbPerAc, "lb/ac"),
    ),
    line("Removed over the rotation", result.removedLbPerAc, "lb/ac"),
    line("Balance a year", result.balanceLbPerAcYear, "lb/ac"),
  ],
  cites: (result) => result.harvests.flatMap(({ removal: { pieces } }) => pieces.map(({ number }) => number.cited)),
});

export const testDrift = worksheetFunction({
  name: "TESTDRIFT",
  family: "nutrients",
  summary: "Soil test to expect after a nutrient balance has worked on it.",
  asks: [
    "where will my soil test go",
    "how fast does soil test potassium fall",
    "pounds to raise a test one ppm",
    "soil test after some years",
  ],
  args: {
    soilTest: quantity(limits.soilTestK, { says: "soil-test P or K now" }),
    balance: quantity(limits.balance, { says: "pounds applied less removed, P2O5 or K2O" }),
    nutrient: choice(nutrientWords, { says: "P2O5 or K2O" }),
    lbPerPpm: optional(
      quantity(limits.lbPerPpm, { says: "pounds of P2O5 or K2O that move this soil's test by 1 ppm" }),
      null,
      "P2O5 20; K2O 4 × (1 + 0.05 × CEC), or 8 without a CEC",
    ),
    cec: optional(quantity(limits.cec, { says: "cation exchange capacity, for K2O" }), null, "not used"),
  },
  returns: { shape: "one", unit: "ppm", says: "soil test expected" },
  sources: ["osu-build-2012", "uiuc-handbook-8", "umn-randall"],
  cautions: ["Soils buffer differently: the same pounds move one test more than another.", testsVary],
  example: { call: [100, -60, "K2O", null, 10], gives: 90, because: "by hand: 100 − 60 / (4 × (1 + 0.05 × 10))" },
  compute: ({ soilTest, balance, nutrient, lbPerPpm, cec }) =>
    testDriftOf({ soilTestPpm: soilTest, balanceLbPerAc: balance, nutrient, lbPerPpm, cecMeq: cec }),
  value: (result) => result.expectedPpm,
  working: (result) => [
    line(
      result.system === "typed" ? "Pounds per ppm, typed" : `Pounds per ppm, ${result.system}`,
      result.lbPerPpm,
      "lb/ppm",
    ),
    line("Change of the test", result.changePpm, "ppm"),
    line("Test if the soil moves slowly", result.slowPpm, "ppm"),
    line("Test if the soil moves fast", result.fastPpm, "ppm"),
    ...(result.isAtFloor ? [line("Held at the floor a test does not fall below", result.floorPpm, "ppm")] : []),
  ],
  cites: (result) => result.cited,
});

/** Everything this family puts on the sheet. */
export const nutrientFunctions: readonly WorksheetFunction[] = [
  removal,
  removalTable,
  rotationBalance,
  testDrift,
  limitingNutrient,
];

function pieceLines({ part, yieldPerAc, number, removedLbPerAc }: RemovedPiece, result: Removal): WorkingLine[] {
  const label = parts[part].label;
  const fromGrain = result.residueTonPerAc !== undefined && part !== "grain";
  return [
    ...(fromGrain
      ? [line(`Dry ${label} left by that grain, all of it taken off`, result.residueTonPerAc ?? 0, "ton/ac")]
      : []),
    line(`Yield of ${label}, ${basisOf(number.moisturePct)}`, yieldPerAc, `${number.unit}/ac`),
    line(
      `${nutrients[number.nutrient].label} in ${label}, ${setLabel({ number })}`,
      number.lbPerUnit,
      `lb/${number.unit}`,
    ),
    line(`Removed with ${label}`, removedLbPerAc, "lb/ac"),
    ...noteLines(number.cited),
  ];
}

function spreadLines({ lowLbPerAc, highLbPerAc, pieces }: Removal): WorkingLine[] {
  const sets = Math.max(...pieces.map(({ number }) => number.publishedSets));
  if (sets < 2) return [line("Published sets", "only this one", "")];
  return [
    line(`Lowest of ${sets} published sets`, lowLbPerAc, "lb/ac"),
    line(`Highest of ${sets} published sets`, highLbPerAc, "lb/ac"),
  ];
}

function noteLines({ mark, note }: Cited): WorkingLine[] {
  return [...(note ? [line("Note", note)] : []), ...(mark === "M" ? [line("Check", checkBulletin)] : [])];
}

function basisOf(moisturePct: number | null): string {
  if (moisturePct === null) return "as baled or hauled";
  return moisturePct === 0 ? "dry matter" : `at ${moisturePct} % moisture`;
}

function setLabel({ number }: Pick<RemovedPiece, "number">): string {
  return removalSets[number.row.set].label;
}
