import { moneyLimits } from "../../../core/money/money-limits";
import { words } from "../../words";
import { tornado } from "../charts/tornado";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { refusalId, refusalLine, textField } from "../parts/field";
import { section } from "../parts/text";
import { intoWorkbook } from "../pictures/view";
import type { PaneState } from "../state";
import { addLine, lineId, removeLine, setLine, setRange } from "./actions";
import { caseFrom, valuesOf } from "./case";
import { profitOf } from "./profit";
import { quantities, quantityFacts, type Quantity } from "./quantities";
import type { CostLine, WhatIfState } from "./state";
import { rangeOf, readLine, swingsOf, type End } from "./swings";

const say = words.whatIf;

/** How far each figure may go, and what that does to profit. */
export function rangesView(state: PaneState): Child {
  const { whatIf } = state;
  return [
    section(
      "what-if-ranges",
      say.rangesHead,
      element("p", { class: "hint" }, say.rangesHint),
      quantities.filter((quantity) => quantityFacts[quantity].hasRange).map((quantity) => rangeLine(quantity, whatIf)),
    ),
    section(
      "what-if-lines",
      say.linesHead,
      element("p", { class: "hint" }, say.linesHint),
      whatIf.kept.lines.map((line, index) => costLine(line, index, state)),
      button(addLine, state, { attributes: { id: "what-if-add-line" } }),
    ),
    section("what-if-tornado", say.tornadoHead, bars(state)),
  ];
}

function bars(state: PaneState): Child {
  const one = caseFrom(valuesOf(state.whatIf));
  const swings = swingsOf(state.whatIf);
  if (!one || swings.length === 0) return element("p", { class: "hint" }, say.tornadoNone);
  return [tornado(swings, profitOf(one)), intoWorkbook("tornado", words.pictures.names.tornado, state)];
}

function rangeLine(quantity: Quantity, state: WhatIfState): HTMLElement {
  const id = `what-if-${quantity}-range`;
  const { refusal } = rangeOf(state, quantity);
  return element(
    "fieldset",
    { class: refusal ? "range field-refused" : "range", "aria-describedby": refusal ? refusalId(id) : undefined },
    element("legend", {}, `${say.names[quantity]}, ${quantityFacts[quantity].limit.unit}`),
    refusalLine(id, refusal),
    element(
      "div",
      { class: "range-boxes" },
      (["low", "high"] as const).map((end) => rangeBox(quantity, end, state)),
    ),
  );
}

function rangeBox(quantity: Quantity, end: End, { kept }: WhatIfState): HTMLElement {
  return textField({
    id: `what-if-${quantity}-${end}`,
    label: say[end],
    text: kept.ranges[`${quantity}.${end}`] ?? "",
    numeric: true,
    action: setRange.name,
    value: `${quantity}.${end}`,
  });
}

function costLine(line: CostLine, index: number, state: PaneState): HTMLElement {
  const id = lineId(index, "name");
  const { refusal } = readLine(line);
  const name = line.name.trim() || say.lineNumber(index + 1);
  const part = (key: keyof CostLine, label: string) =>
    textField({
      id: lineId(index, key),
      label,
      text: line[key],
      numeric: key !== "name",
      action: setLine.name,
      value: `${index}.${key}`,
    });
  return element(
    "fieldset",
    { class: refusal ? "range field-refused" : "range", "aria-describedby": refusal ? refusalId(id) : undefined },
    element("legend", {}, `${name}, ${moneyLimits.costPerAc.unit}`),
    refusalLine(id, refusal),
    part("name", say.lineName),
    element(
      "div",
      { class: "range-boxes" },
      part("planned", say.linePlanned),
      part("low", say.low),
      part("high", say.high),
    ),
    button(removeLine, state, { look: "quiet", value: String(index), says: say.removeLineOf(name) }),
  );
}
