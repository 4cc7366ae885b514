import { limits } from "../../core/limits";
import { removal as removalOf, type Removal, type RemovedPiece } from "../../core/nutrients/removal";
import { removalTable as removalTableOf } from "../../core/nutrients/removal-table";
import { nutrients, parts, removalSets } from "../../reference/nutrients";
import { checkLines } from "../check-lines";
import { choice, line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { cropWords, nutrientWords, partWords } from "../words";
import { planning, removalSet, removalSources } from "./removal-arguments";

const cropArgument = choice(cropWords, { says: "crop that was harvested" });
const yieldArgument = quantity(limits.yieldAny, {
  says: "yield of the harvested part: bu, ton, cwt or bale per acre, as the crop is sold",
});
const partArgument = optional(
  choice(partWords, { says: "part taken off the field, such as grain, straw, silage or grain+straw" }),
  null,
  "the part the crop is grown for",
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
    set: removalSet,
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
  args: { crop: cropArgument, yield: yieldArgument, part: partArgument, set: removalSet },
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
    ...checkLines([number.cited]),
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

function basisOf(moisturePct: number | null): string {
  if (moisturePct === null) return "as baled or hauled";
  return moisturePct === 0 ? "dry matter" : `at ${moisturePct} % moisture`;
}

function setLabel({ number }: Pick<RemovedPiece, "number">): string {
  return removalSets[number.row.set].label;
}
