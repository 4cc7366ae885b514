import { words } from "../../words";
import { element, type Child } from "../element";
import { amountText } from "../number-text";
import { button } from "../parts/button";
import { refusalId, refusalLine } from "../parts/field";
import { refusalIn } from "../parts/read-number";
import type { PaneState } from "../state";
import { tryValue } from "./actions";
import { readQuantity, textOf, valuesOf } from "./case";
import { quantityFacts, sliderScale, type Quantity } from "./quantities";
import { takeCell } from "./reading";
import type { WhatIfState } from "./state";

const say = words.whatIf;

/** One figure to try: a number box, a slider beside it, the cell behind it. */
export function knob(quantity: Quantity, state: PaneState): HTMLElement {
  const { whatIf } = state;
  const id = knobId(quantity);
  const name = say.names[quantity];
  const { limit, hasSlider } = quantityFacts[quantity];
  const refusal = refusalIn(readQuantity(whatIf, quantity));
  return element(
    "div",
    { class: refusal ? "knob field-refused" : "knob", role: "group", "aria-labelledby": `${id}-label` },
    element("label", { for: id, id: `${id}-label` }, name),
    refusalLine(id, refusal),
    element(
      "div",
      { class: "knob-line" },
      element("input", {
        id,
        type: "text",
        class: "number",
        value: textOf(whatIf, quantity),
        autocomplete: "off",
        inputmode: "decimal",
        "aria-describedby": [`${id}-unit`, `${id}-cell`, refusal && refusalId(id)].filter(Boolean).join(" "),
        "aria-invalid": refusal ? "true" : undefined,
        "data-action": tryValue.name,
        "data-value": quantity,
      }),
      element("span", { class: "unit", id: `${id}-unit` }, limit.unit),
      hasSlider && slider(quantity, whatIf),
    ),
    element(
      "p",
      { class: "hint knob-cell" },
      element("span", { id: `${id}-cell` }, cellOf(quantity, whatIf)),
      " ",
      takeButton(quantity, state),
    ),
  );
}

function knobId(quantity: Quantity): string {
  return `what-if-${quantity}`;
}

/** The range comes before the value: a value is cut to the range that stands at that moment. */
function slider(quantity: Quantity, state: WhatIfState): Child {
  const value = valuesOf(state)[quantity];
  if (value === undefined) return undefined;
  const { limit } = quantityFacts[quantity];
  const { min, max, step } = sliderScale(state.bound[quantity]?.value ?? value, value, quantityFacts[quantity]);
  return element("input", {
    id: `${knobId(quantity)}-slider`,
    type: "range",
    min,
    max,
    step,
    value,
    "aria-label": say.slider(say.names[quantity]),
    "aria-valuetext": amountText(value, limit.unit),
    "data-action": tryValue.name,
    "data-value": quantity,
  });
}

function cellOf(quantity: Quantity, { bound }: WhatIfState): string {
  const cell = bound[quantity];
  if (!cell) return say.notBound;
  if (cell.value === null) return say.sheetBlank(cell.address);
  return say.sheetSays(amountText(cell.value, quantityFacts[quantity].limit.unit), cell.address);
}

function takeButton(quantity: Quantity, state: PaneState): HTMLElement {
  return button(takeCell, state, {
    look: "quiet",
    value: quantity,
    says: [takeCell.label, element("span", { class: "unseen" }, say.takeFor(say.names[quantity]))],
  });
}
