import { countInWords } from "../count-in-words";
import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { zForConfidence } from "../statistics/normal";
import { sum } from "../statistics/sums";
import { coverLimits } from "./cover-limits";

export interface CoverCountInput {
  /** Marks over residue, a count for each line. */
  readonly hits: readonly number[];
  /** Marks looked at on each line; one number stands for every line. */
  readonly points: readonly number[];
  readonly confidencePct: number;
}

export interface CoverCount {
  readonly coverPct: number;
  readonly lowPct: number;
  readonly highPct: number;
  readonly lines: number;
  readonly marks: number;
  readonly hits: number;
  readonly lowestLinePct: number;
  readonly highestLinePct: number;
  /** No mark, or every mark, was hit: the range is the exact binomial one, since the usual one would be nothing wide. */
  readonly isAtEnd: boolean;
}

/**
 * Residue cover by the line-transect method, with its binomial range.
 *
 *   p = hits / marks;  p ± z √(p (1 - p) / marks)
 *
 * @source line-transect
 */
export function coverCount({ hits, points, confidencePct }: CoverCountInput): CoverCount {
  within("confidence", confidencePct, coverLimits.confidence);
  const lines = hits.map((hit, line) => lineOf(hit, marksOf(points, line, hits.length)));
  const marks = sum(lines.map((line) => line.marks));
  const hit = sum(lines.map((line) => line.hits));

  const share = hit / marks;
  const isAtEnd = hit === 0 || hit === marks;
  const reach = isAtEnd ? exactReach(marks, confidencePct) : usualReach(share, marks, confidencePct);
  return {
    coverPct: 100 * share,
    lowPct: 100 * Math.max(0, share - reach),
    highPct: 100 * Math.min(1, share + reach),
    lines: lines.length,
    marks,
    hits: hit,
    lowestLinePct: lines.reduce((least, line) => Math.min(least, (100 * line.hits) / line.marks), 100),
    highestLinePct: lines.reduce((most, line) => Math.max(most, (100 * line.hits) / line.marks), 0),
    isAtEnd,
  };
}

function marksOf(points: readonly number[], line: number, lines: number): number {
  if (points.length !== 1 && points.length !== lines) {
    refuse({
      kind: "sizesDiffer",
      first: { argument: "hits", size: countInWords(lines, "line") },
      second: { argument: "points", size: countInWords(points.length, "line") },
    });
  }
  return points[points.length === 1 ? 0 : line] ?? Number.NaN;
}

function lineOf(hits: number, marks: number): { hits: number; marks: number } {
  within("hits", hits, coverLimits.hits);
  within("points", marks, coverLimits.points);
  if (hits > marks) {
    refuseArgument("hits", `${hits} marks hit are more than the ${marks} marks on the line.`);
  }
  return { hits, marks };
}

function usualReach(share: number, marks: number, confidencePct: number): number {
  return zForConfidence(confidencePct) * Math.sqrt((share * (1 - share)) / marks);
}

/** How far the share may lie from 0 or 1 when nothing else was seen: 1 - tail^(1/marks), half the doubt in the tail. */
function exactReach(marks: number, confidencePct: number): number {
  return 1 - ((1 - confidencePct / 100) / 2) ** (1 / marks);
}
