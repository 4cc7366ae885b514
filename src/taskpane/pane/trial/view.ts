import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { radioGroup } from "../parts/choices";
import { refusalId, refusalLine, textField, type TextField } from "../parts/field";
import { section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { askEmpty, chooseDesign, emptyNow, fillIn, makeLayout, replaceLayout } from "./actions";
import { trialIds } from "./layout";
import { mapView } from "./map-view";
import { trialQuestion } from "./questions";
import { insertView, resultView } from "./result-view";
import { sizeView } from "./size-view";
import type { TrialState } from "./state";
import { yieldsView } from "./yields-view";

const say = words.trial;

/** Strip trials: lay out, write down, see what came of it. */
export function trialView(state: PaneState): HTMLElement {
  const { layout } = state.trial.kept;
  return element(
    "div",
    { class: "view" },
    viewHeading("trial", say.title),
    element("p", { class: "lead" }, say.lead),
    formView(state),
    sizeView(state),
    layout && [mapView(layout, state), yieldsView(layout, state), resultView(layout, state), insertView(state)],
    emptying(state),
  );
}

function formView(state: PaneState): HTMLElement {
  const { trial } = state;
  const { form, layout } = trial.kept;
  return section(
    "trial-form-head",
    say.layoutHead,
    element(
      "form",
      { novalidate: true },
      textField({
        id: "trial-name",
        label: say.name,
        hint: say.nameHint,
        text: form.name,
        action: fillIn.name,
        value: "name",
      }),
      treatmentBox(trial),
      radioGroup({
        id: "trial-design",
        legend: say.design,
        choices: (["blocks", "pairs", "splitPlanter"] as const).map((value) => ({ value, ...say.designs[value] })),
        chosen: form.design,
        action: chooseDesign.name,
      }),
      numberField("blocks", { label: say.blocks }, trial),
      numberField("width", { label: say.width, unit: "ft" }, trial),
      numberField("length", { label: say.length, unit: "ft" }, trial),
      numberField("seed", { label: say.seed, hint: say.seedHint }, trial),
      trial.asking === "replace"
        ? trialQuestion(
            { asks: say.replaceQuestion, yes: replaceLayout, no: say.keepLayout, back: "trial-make" },
            state,
          )
        : button(makeLayout, state, {
            look: "main",
            type: "submit",
            says: layout ? say.makeAgain : say.make,
            attributes: { id: "trial-make" },
          }),
    ),
  );
}

function treatmentBox({ kept, refusals }: TrialState): HTMLElement {
  const id = trialIds.treatments;
  const refusal = refusals[id];
  return element(
    "div",
    { class: refusal ? "field field-refused" : "field" },
    element("label", { for: id }, say.treatments),
    element("p", { class: "hint", id: `${id}-hint` }, say.treatmentsHint),
    refusalLine(id, refusal),
    element(
      "textarea",
      {
        id,
        rows: 4,
        "aria-describedby": refusal ? `${id}-hint ${refusalId(id)}` : `${id}-hint`,
        "aria-invalid": refusal ? "true" : undefined,
        "data-action": fillIn.name,
        "data-value": "treatments",
      },
      kept.form.treatments,
    ),
  );
}

function numberField(
  key: "blocks" | "width" | "length" | "seed",
  field: Pick<TextField, "label" | "unit" | "hint">,
  { kept, refusals }: TrialState,
): HTMLElement {
  return textField({
    ...field,
    id: trialIds[key],
    text: kept.form[key],
    numeric: true,
    refusal: refusals[trialIds[key]],
    action: fillIn.name,
    value: key,
  });
}

function emptying(state: PaneState): Child {
  if (state.trial.asking === "empty") {
    return trialQuestion(
      { asks: say.startOverQuestion, yes: emptyNow, no: say.startOverNot, back: "trial-empty" },
      state,
    );
  }
  return button(askEmpty, state, { look: "quiet", attributes: { id: "trial-empty" } });
}
