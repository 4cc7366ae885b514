import { formula, type Expression, type Term } from "../../../formula/expression";
import type { ChartsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { SeriesLook } from "../../../plan";
import { chartColors } from "../../chart-colors";
import { stripRows } from "./trial-lines-block";
import { trialLine } from "./trial-places";
import type { Trial } from "./trial";

interface LevelLine {
  readonly line: "gain" | "from" | "to" | "pays";
  readonly name: string;
  readonly look: SeriesLook;
  readonly color: string;
}

/** Drawn level across the pairs. */
const levelLines: readonly LevelLine[] = [
  { line: "gain", name: "mean gain", look: "solid", color: chartColors.income },
  { line: "from", name: "likely from", look: "dashed", color: chartColors.income },
  { line: "to", name: "likely to", look: "dashed", color: chartColors.income },
  { line: "pays", name: "gain that pays", look: "dotted", color: chartColors.all },
];

/** The difference of each pair; across them the mean gain, its range, and the gain that pays. */
export function trialChart({ drawn }: Trial): ChartsBlock {
  return {
    kind: "charts",
    rows: 14,
    charts: [
      {
        kind: "line",
        title: "Treated less check, pair by pair, and the range of the mean gain",
        alt: "A point for each pair of strips: bushels per acre by which the treated strip passed the check; below zero it fell short. Level lines: the mean gain, from where to where it likely lies, and the gain that pays.",
        categories: drawn.all("block"),
        series: [
          { name: "a pair", values: drawn.all("difference"), color: chartColors.soil, look: "points" },
          ...levelLines.map(({ line, ...rest }) => ({ ...rest, values: drawn.all(line) })),
        ],
        xTitle: "Block",
        yTitle: "bu/ac",
        yFormat: "0.0",
        columns: { first: 0, last: 9 },
      },
    ],
  };
}

/** What the chart is drawn from. */
export function drawnBlock({ index, drawn, strips }: Trial): TableBlock {
  const own = drawn.own;
  const ofPair = (column: "block" | "difference") => formula`INDEX(${strips.all(column)},${drawn.rowNumber})`;
  const column = (key: LevelLine["line"] | "difference", value: Term, width: number) =>
    computed(orLeftOut(value, own("block")), {
      width,
      format: formats.signedOne,
      rules: [{ kind: "formula", formula: formula`ISNA(${own(key)})`, look: "unseen" }],
    });
  const level = (key: LevelLine["line"], width: number) => column(key, trialLine(index, key), width);
  return tableBlock(
    drawn,
    { title: "What the chart is drawn from", rows: stripRows },
    {
      block: computedWords(ofPair("block"), { width: 31 }),
      difference: column("difference", ofPair("difference"), 14),
      gain: level("gain", 14),
      from: level("from", 11),
      to: level("to", 11),
      pays: level("pays", 11),
    },
  );
}

/** Spreadsheets draw an empty text as 0, and leave this error out. */
function orLeftOut(value: Term, block: Term): Expression {
  return formula`IF(COUNT(${value},${block})=2,${value},NA())`;
}
