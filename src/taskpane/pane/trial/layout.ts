import { FormulaError } from "../../../core/fault";
import { trialLayout } from "../../../core/trials/trial-layout";
import { trialLimits } from "../../../core/trials/trial-limits";
import { squareFootPerAcre } from "../../../core/units/units";
import { describeFault } from "../../../functions/frame/describe-fault";
import { words } from "../../words";
import { numberIn, readNumber, refusalIn, type Read } from "../parts/read-number";
import { sentence } from "../parts/text";
import type { Layout, TrialForm } from "./state";

const say = words.trial;

export type Made = { readonly layout: Layout } | { readonly refusals: Readonly<Record<string, string>> };

export const trialIds = {
  treatments: "trial-treatments",
  blocks: "trial-blocks",
  width: "trial-width",
  length: "trial-length",
  seed: "trial-seed",
} as const;

export function treatmentsOf(form: TrialForm): string[] {
  return form.treatments.split("\n").flatMap((name) => (name.trim() === "" ? [] : [name.trim()]));
}

/** The layout a form asks for, or what in the form does not fit. */
export function layoutFor(form: TrialForm, seed: number): Made {
  const blocks = readNumber(say.blocks, form.blocks, trialLimits.layoutBlocks);
  const refusals = Object.fromEntries(
    (["width", "length"] as const).flatMap((side) => {
      const refusal = refusalIn(readSide(form, side));
      return refusal === undefined ? [] : [[trialIds[side], refusal] as const];
    }),
  );
  const blocksRefusal = blocks === "blank" ? say.missing(say.blocks) : refusalIn(blocks);
  if (blocksRefusal !== undefined) refusals[trialIds.blocks] = blocksRefusal;
  if (Object.keys(refusals).length > 0) return { refusals };
  const treatments = treatmentsOf(form);
  try {
    const { design } = form;
    const strips = trialLayout({ treatments, blocks: numberIn(blocks) ?? 0, seed, design });
    return { layout: { treatments, design, seed, strips } };
  } catch (thrown) {
    if (!(thrown instanceof FormulaError)) throw thrown;
    const { fault } = thrown;
    const named = "argument" in fault ? fault.argument : "treatments";
    const field = named === "blocks" || named === "seed" ? trialIds[named] : trialIds.treatments;
    return { refusals: { [field]: sentence(describeFault(fault)) } };
  }
}

/** Width or length of a strip; a blank one is left open. */
function readSide(form: TrialForm, side: "width" | "length"): Read {
  return readNumber(say[side], form[side], side === "width" ? trialLimits.width : trialLimits.feet);
}

export interface Ground {
  readonly widthFt?: number | undefined;
  readonly lengthFt?: number | undefined;
  readonly acres?: number | undefined;
}

export function groundOf(form: TrialForm, strips: number): Ground {
  const widthFt = numberIn(readSide(form, "width"));
  const lengthFt = numberIn(readSide(form, "length"));
  const known = widthFt !== undefined && lengthFt !== undefined;
  return { widthFt, lengthFt, acres: known ? (strips * widthFt * lengthFt) / squareFootPerAcre : undefined };
}

/** "A" for the first treatment, "AA" after "Z". */
export function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : letterOf(Math.floor(index / 26) - 1) + letter;
}
