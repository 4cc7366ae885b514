import { limits } from "../../../../core/limits";
import { trialLimits } from "../../../../core/trials/trial-limits";
import { marketYield } from "../../../../functions/harvest/shrink";
import { trialLayout } from "../../../../functions/trials/trial-layout";
import { trialStripYield } from "../../../../functions/trials/trial-strip-yield";
import { bushelWeight } from "../../../../functions/units/convert";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { whenNumbers } from "../../../formula/natives";
import type { Reference } from "../../../formula/reference";
import { formats } from "../../../model/cell";
import { computed, computedWords, pick, typedNumber, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { stripRows } from "./trial-lines-block";
import { trialLine } from "./trial-places";
import type { Trial } from "./trial";

export function stripBlock(trial: Trial): TableBlock {
  return tableBlock(
    trial.strips,
    { title: "The strips, from one side of the field to the other", rows: stripRows },
    { ...layoutColumns(trial), ...enteredColumns(trial), ...yieldColumns(trial) },
  );
}

/** Which side the treatment lies on, drawn anew in every pair. */
function layoutColumns({ index, strips }: Trial) {
  const own = strips.own;
  const at = (line: "practice" | "check" | "treated" | "blocks" | "seed") => trialLine(index, line);
  const layout = call(trialLayout, {
    treatments: formula`${at("check")}:${at("treated")}`,
    blocks: at("blocks"),
    seed: at("seed"),
    design: "pairs",
  });
  // A heading row, then two rows a pair.
  const strip = (side: 0 | 1) => formula`IF(${own("block")}="","",INDEX(${layout},2*${own("block")}+${side},3))`;
  const position = strips.rowNumber;
  const isLaid = formula`AND(${at("practice")}&""<>"",COUNT(${at("blocks")},${at("seed")})=2,${position}<=${at("blocks")})`;
  return {
    block: computedWords(formula`IF(${isLaid},${position},"")`, { width: 31 }),
    left: computedWords(strip(0), {
      width: 14,
      note: "Drawn by chance in every pair, so that neither treatment always has the better side.",
    }),
    right: computedWords(strip(1), { width: 14 }),
  };
}

function enteredColumns({ example }: Trial) {
  const pairs = example?.pairs ?? [];
  const weighed = {
    width: 11,
    format: formats.upToThree,
    allow: within({ ...trialLimits.weight, min: 0, unit: "" }, "Pounds of the strip, or bu/ac, as said above"),
    note: "Blank where a strip was lost. Pounds or bu/ac, as chosen above.",
  };
  const moisture = {
    width: 11,
    format: formats.one,
    allow: within(limits.moisture, "Moisture of the grain, percent of wet weight"),
    note: "Blank: taken as at market moisture.",
  };
  return {
    check: typedNumber(pick(pairs, "check"), weighed),
    checkMoisture: typedNumber(pick(pairs, "checkMoisturePct"), moisture),
    treated: typedNumber(pick(pairs, "treated"), weighed),
    treatedMoisture: typedNumber(pick(pairs, "treatedMoisturePct"), moisture),
  };
}

function yieldColumns(trial: Trial) {
  const own = trial.strips.own;
  return {
    checkYield: computed(yieldOf(trial, own("check"), own("checkMoisture")), { width: 10, format: formats.one }),
    treatedYield: computed(yieldOf(trial, own("treated"), own("treatedMoisture")), { width: 10, format: formats.one }),
    difference: computed(
      whenNumbers([own("checkYield"), own("treatedYield")], formula`${own("treatedYield")}-${own("checkYield")}`),
      {
        width: 12,
        format: formats.signedOne,
        rules: [
          {
            kind: "formula",
            formula: formula`AND(ISNUMBER(${own("difference")}),${own("difference")}<0)`,
            look: "bad",
          },
        ],
      },
    ),
  };
}

/** Bushels at market moisture; without a moisture the grain is taken as having just that. */
function yieldOf({ index }: Trial, weighed: Reference, moisture: Reference): Expression {
  const at = (line: "crop" | "length" | "width" | "entered") => trialLine(index, line);
  const isMeasured = formula`COUNT(${moisture})=1`;
  const strip = (given: { readonly moisture: Term; readonly marketMoisture?: Term }) =>
    call(trialStripYield, { weight: weighed, length: at("length"), width: at("width"), crop: at("crop"), ...given });
  const pounds = formula`IF(${isMeasured},${strip({ moisture })},${strip({ moisture: anyMoisture, marketMoisture: anyMoisture })})`;
  const asPounds = formula`${weighed}*${call(bushelWeight, { crop: at("crop") })}`;
  const dried = call(marketYield, { pounds: asPounds, acres: 1, moisture, crop: at("crop") });
  const bushels = formula`IF(${isMeasured},${dried},${weighed})`;
  return whenNumbers([weighed], formula`IF(${at("entered")}="bu/ac",${bushels},${pounds})`);
}

/** The same for the grain and the market leaves the weight as it is. */
const anyMoisture = 13;
