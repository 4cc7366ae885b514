import { stageOrder } from "../../core/protection/crop-stage";
import { pestLimits } from "../../core/protection/pest-limits";
import {
  pestThreshold as pestThresholdOf,
  type AskedStage,
  type PestThreshold,
  type ThresholdFound,
} from "../../core/protection/pest-threshold";
import { pestThresholds, type ThresholdRow } from "../../reference/protection/pest-thresholds";
import { countings, pests, pestStages } from "../../reference/protection/pests";
import { choice, line, optional, quantity, worksheetFunction, type CellOut, type OneArgument } from "../frame";
import { cropWords } from "../words";
import { countingWords, pestStageWords, pestWords } from "./protection-words";
import { labelLaw, scoutFirst } from "../cautions";
import { checkLine, noteInWords } from "../check-lines";

const printedStage = choice(pestStageWords, {
  says: "stage as printed, or a stage code of corn or soybean such as V3 or R2",
});

const stage: OneArgument<AskedStage> = {
  ...printedStage,
  read: (cell, argument) =>
    stageOrder(String(cell)) === undefined
      ? { printed: printedStage.read(cell, argument) }
      : { code: String(cell).trim().toUpperCase() },
};

const heads = ["Crop", "Stage or condition", "What", "From", "To", "Counted", "Printed for", "Note"] as const;
const countHeads = ["Your count", "% of the first number", "Reading"] as const;

export const pestThreshold = worksheetFunction({
  name: "PESTTHRESHOLD",
  family: "protection",
  summary: "Published thresholds for a pest with their stage, region and conditions, and your count against them.",
  asks: ["when to spray aphids", "how many beetles are too many", "defoliation threshold", "insect thresholds"],
  args: {
    pest: choice(pestWords, { says: "pest" }),
    crop: optional(choice(cropWords, { says: "crop" }), null, "every crop it is printed for"),
    stage: optional(stage, null, "every stage; one printed in words stays in when a stage code is given"),
    count: optional(quantity(pestLimits.count, { says: "your field average" }), null, "the thresholds alone"),
    per: optional(
      choice(countingWords, { says: "how it was counted, such as per foot of row" }),
      null,
      "asked for when the rows are counted in different ways",
    ),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row for each published threshold with its conditions; with a count: its share and how it reads",
  },
  sources: [...new Set(pestThresholds.rows.map(({ source }) => source))],
  cautions: [
    labelLaw,
    scoutFirst,
    "Thresholds are regional and turn on price, variety and weather: ask your state's Extension which holds today. Leaf loss is easily overestimated: average leaflets from top, middle and bottom at four places or more.",
  ],
  example: {
    call: ["stink bugs", "corn", "V5", 10],
    gives: [
      [...heads, ...countHeads],
      [
        "corn",
        "V1-V6",
        "threshold",
        13,
        13,
        "per 100 plants",
        "North Carolina",
        "6 or fewer: leave. Between: sample more.",
        10,
        76.923,
        "sample more",
      ],
    ],
    because: "by reading: 6 or fewer leave, 13 treat; 10 / 13 = 76.9 %",
  },
  compute: pestThresholdOf,
  value: ({ found, count }) => [
    count === null ? [...heads] : [...heads, ...countHeads],
    ...found.map((one): CellOut[] => [...conditionCells(one.row), ...countCells(one, count)]),
  ],
  working: ({ found, count }) => [
    line("Thresholds found", found.length),
    ...found.map(({ row, against }) => line(labelOf(row), against ? against.reading : rangeOf(row))),
    ...(count === null ? [] : [line("Your count", count, countings[found[0]?.row.per ?? "perPlant"].label)]),
    ...checkLine(found.map(({ row }) => row)),
  ],
  cites: ({ found }) => found.map(({ row }) => row),
  everyRow: () => [...pestThresholds.rows],
});

function conditionCells(row: ThresholdRow): CellOut[] {
  return [
    row.cropSays,
    pestStages[row.stage].label,
    row.isInjuryLevel ? "injury level" : "threshold",
    row.low,
    row.high,
    countings[row.per].label,
    row.region,
    noteOf(row),
  ];
}

function countCells({ against }: ThresholdFound, count: PestThreshold["count"]): CellOut[] {
  return against === null || count === null ? [] : [count, against.sharePct, against.reading];
}

function noteOf(row: ThresholdRow): string {
  const between = row.leaveAt === undefined ? "" : `${row.leaveAt} or fewer: leave. Between: sample more. `;
  return `${between}${noteInWords(row)}`.trim();
}

function labelOf(row: ThresholdRow): string {
  return `${pests[row.pest].label}, ${row.cropSays}, ${pestStages[row.stage].label}, ${row.region}`;
}

function rangeOf({ low, high, per }: ThresholdRow): string {
  return `${low === high ? low : `${low} to ${high}`} ${countings[per].label}`;
}
