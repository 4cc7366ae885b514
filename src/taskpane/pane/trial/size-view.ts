import { trialLimits } from "../../../core/trials/trial-limits";
import { isCellError } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import { trialSize } from "../../../functions/trials/trial-size";
import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { textField } from "../parts/field";
import { numberIn, readNumber, refusalIn } from "../parts/read-number";
import { section, sentence } from "../parts/text";
import type { PaneState } from "../state";
import { fillIn, useBlocks } from "./actions";
import { treatmentsOf } from "./layout";
import type { TrialForm } from "./state";

const say = words.trial;

/** How many blocks it takes to see a gain. */
export function sizeView(state: PaneState): HTMLElement {
  const { form } = state.trial.kept;
  const field = (key: "gainToSee" | "stripSd" | "power", unit: string, hint?: string) =>
    textField({
      id: `trial-${key}`,
      label: say[key],
      text: form[key],
      unit,
      numeric: true,
      refusal: refusalIn(readSize(form, key)),
      action: fillIn.name,
      value: key,
      ...(hint !== undefined && { hint }),
    });
  return section(
    "trial-size-head",
    say.sizeHead,
    element("p", { class: "hint" }, say.sizeHint),
    field("gainToSee", "bu/ac"),
    field("stripSd", "bu/ac", say.stripSdHint),
    field("power", "%"),
    textField({
      id: "trial-confidence-size",
      label: say.confidence,
      text: form.confidence,
      unit: "%",
      numeric: true,
      refusal: refusalIn(readNumber(say.confidence, form.confidence, trialLimits.confidence)),
      action: fillIn.name,
      value: "confidence",
    }),
    element("div", { role: "status" }, answer(form, state)),
  );
}

function readSize(form: TrialForm, key: "gainToSee" | "stripSd" | "power") {
  return readNumber(say[key], form[key], trialLimits[key]);
}

function answer(form: TrialForm, state: PaneState): Child {
  const gain = numberIn(readSize(form, "gainToSee"));
  const spread = numberIn(readSize(form, "stripSd"));
  if (gain === undefined || spread === undefined) return undefined;
  const confidence = numberIn(readNumber(say.confidence, form.confidence, trialLimits.confidence)) ?? null;
  const power = numberIn(readSize(form, "power")) ?? null;
  const treatments = Math.max(2, treatmentsOf(form).length);
  const [[blocks] = []] = runFunction(trialSize, [gain, spread, confidence, power, treatments]);
  if (isCellError(blocks)) return element("p", { class: "refusal" }, sentence(blocks.message ?? blocks.code));
  const count = String(blocks);
  return [
    element("p", {}, say.sizeAnswer(count, String(power ?? 80))),
    form.blocks !== count && button(useBlocks, state, { look: "quiet", value: count, says: say.useBlocks(count) }),
  ];
}
