import { formula, type Expression, type Term } from "../../../formula/expression";
import { orBlank, whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { stripTables, trialResults } from "./practice-headers";
import { term } from "./practice-terms-block";
import { trialLine, type TrialLine } from "../trial/trial-places";

const own = trialResults.own;

/** What the trial sheets found, brought together; two trials of one practice are weighed by how sure each is. */
export function trialResultsBlock(): TableBlock {
  return tableBlock(
    trialResults,
    { title: "What the trials said", rows: stripTables.length },
    { ...whichColumns(), ...gainColumns(), ...weightColumns() },
  );
}

/** The line of the trial sheet that belongs to this row. */
function ofTrial(line: TrialLine): Expression {
  return stripTables.reduceRight<Expression>(
    (otherwise, _, index) => formula`IF(${trialResults.rowNumber}=${index + 1},${trialLine(index, line)},${otherwise})`,
    formula`""`,
  );
}

const number = (line: TrialLine, width: number, format: string, note?: string) =>
  computed(orBlank(ofTrial(line)), { width, format, ...(note !== undefined && { note }) });

function whichColumns() {
  const words = (line: TrialLine): Expression => formula`${ofTrial(line)}&""`;
  return {
    practice: computedWords(words("practice"), { width: 31 }),
    field: computedWords(words("field"), { width: 13 }),
    trial: computedWords(whenNamed(own("practice"), formula`"Trial "&${trialResults.rowNumber}`), { width: 10 }),
  };
}

function gainColumns() {
  return {
    pairs: number("pairs", 11, formats.whole),
    gain: number("gain", 10, formats.signedOne),
    spread: number("se", 10, formats.two, "Standard error: how far the mean gain of so few strips may be off."),
    from: number(
      "from",
      10,
      formats.signedOne,
      "The range of the confidence set on the trial sheet, 90 unless changed.",
    ),
    to: number("to", 10, formats.signedOne),
    luck: number("luck", 10, "0.0000_)", "Chance of a gain this far from 0 if the practice did nothing."),
    pays: number("chance", 10, formats.chance, "By this trial alone, without what was held before it."),
  };
}

function weightColumns() {
  const variance = formula`${own("spread")}^2+${term("seasonSd")}^2`;
  const sure = (value: Term) => whenNumbers([own("gain"), own("spread"), term("seasonSd")], value);
  return {
    weight: computed(sure(formula`1/(${variance})`), {
      width: 10,
      format: formats.two,
      note: "1 over the square of the standard error and of how far seasons differ.",
    }),
    weighted: computed(sure(formula`${own("gain")}/(${variance})`), { width: 11, format: formats.two }),
  };
}
