import { sources, type Source } from "../../../reference/sources";
import { checkBulletin, type Cited } from "../../../reference/table";
import { words } from "../../words";
import { numberText, withUnit } from "../number-text";
import { sentence } from "../parts/text";
import type { ArgumentLine, CallReport } from "./call-report";
import { isReadable, type CellReport } from "./report";

const say = words.working;

/** The working as plain text, for a letter: the answer, what went in, the steps, the sources and what to mind. */
export function reportText(report: CellReport): string {
  const [first, ...more] = report.calls;
  const unit = first?.isWhatShows && more.length === 0 ? first.fn.returns.unit : "";
  const shown = report.shows === null ? say.blank : withUnit(report.shows, unit);
  const head = [`${say.shows(report.address)} ${shown}`, report.message && sentence(report.message)];
  const part = report.formulaAt === undefined ? [] : [say.partOf(report.formulaAt)];
  const leftAside = report.leftAside?.length ? [say.leftAside([...new Set(report.leftAside)])] : [];
  const formula = isReadable(report) ? [`${say.formula}: ${report.formula}`] : [];
  return [...head, ...part, ...formula, ...leftAside, ...report.calls.flatMap(callLines)]
    .filter((line) => line !== undefined)
    .join("\n");
}

function callLines({ fn, went, outcome, answer, isWhatShows, isWhole, remarks }: CallReport): readonly string[] {
  const own =
    answer === undefined || isWhatShows
      ? []
      : [(isWhole ? say.nowGives : say.ownAnswer)(withUnit(answer, fn.returns.unit))];
  const input = went.length === 0 ? [] : ["", say.went, ...went.map(inputLine)];
  return ["", `${fn.name}: ${fn.summary}`, ...own, ...remarks, ...input, ...outcomeLines(outcome)];
}

function inputLine({ name, value, unit, from }: ArgumentLine): string {
  return `  ${name}: ${withUnit(value, unit)} (${from})`;
}

function outcomeLines(outcome: CallReport["outcome"]): readonly string[] {
  if ("because" in outcome) return ["", sentence(outcome.because)];
  const { working, cites, cautions } = outcome;
  const steps = working.map(({ label, value, unit }) =>
    typeof value === "number" ? `  ${label}: ${numberText(value)}${unit && ` ${unit}`}` : `  ${label}: ${value}`,
  );
  return [
    ...["", say.steps, ...steps],
    ...(cites.length === 0 ? [] : ["", say.cites, ...[...new Set(cites.map(citationLine))]]),
    ...(cautions.length === 0 ? [] : ["", ...cautions]),
  ];
}

function citationLine({ source, locator, note, mark }: Cited): string {
  const { publisher, title, year }: Source = sources[source];
  const where = [locator && `${locator}.`, note, mark === "M" && checkBulletin].filter(Boolean).join(" ");
  return `  ${publisher}, ${title}${year ? `, ${year}` : ""}.${where && ` ${where}`}`;
}
