import { guides, type Guide } from "../../../reference/guides";
import { sources } from "../../../reference/sources";
import { allFarmParts, farmParts, starters } from "../../../workbook/starters";
import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { radioGroup, tickBox } from "../parts/choices";
import { hintId, refusalsAloud, textField } from "../parts/field";
import { selectField } from "../parts/select";
import { viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import {
  chooseFigures,
  chooseGuide,
  chooseProtect,
  chooseStarter,
  countFields,
  fill,
  goToField,
  leaveField,
  nameFarm,
  tickPart,
} from "./actions";
import { asksForFields, asksOf } from "./check";
import { cropLines } from "./crop-lines";
import { fieldIds } from "./field-ids";
import { partsOf, sheetsOf } from "./form";
import { outcome } from "./outcome";
import { refusalOf, type StartState } from "./state";

const say = words.start;

/** Start a workbook: choose, see what will come, fill. */
export function startView(state: PaneState): HTMLElement {
  const { start } = state;
  return element(
    "div",
    { class: "view" },
    viewHeading("start", say.title),
    element("p", { class: "lead" }, say.lead),
    refusalsAloud(start.refusals.map(({ says }) => says)),
    start.summary && summary(start),
    element(
      "form",
      { novalidate: true },
      starterChoice(start),
      choicesOf(start),
      protection(start),
      preview(start),
      button(fill, state, { look: "main", type: "submit", attributes: { id: fieldIds.fill } }),
    ),
    outcome(state),
  );
}

/** What the chosen starter wants to know. */
function choicesOf(start: StartState): Child {
  const asks = asksOf(start.form);
  return [
    asks("guide") && guideChoice(start),
    asks("withDemo") && figures(start),
    asks("farmName") && farmName(start),
    asksForFields(start.form) && fieldCount(start),
    asks("crops") && cropLines(start),
    asks("parts") && partsChoice(start),
  ];
}

function farmName(start: StartState): HTMLElement {
  return textField({
    id: fieldIds.farmName,
    label: say.farmName,
    hint: say.farmNameHint,
    text: start.form.farmName,
    refusal: refusalOf(start, fieldIds.farmName),
    action: nameFarm.name,
    leave: leaveField.name,
  });
}

function fieldCount(start: StartState): HTMLElement {
  return textField({
    id: fieldIds.fields,
    label: say.fields,
    text: start.form.fields,
    numeric: true,
    refusal: refusalOf(start, fieldIds.fields),
    action: countFields.name,
    leave: leaveField.name,
  });
}

/** The sheets that can be left out, ticked until a person unticks them. */
function partsChoice({ form }: StartState): HTMLElement {
  const chosen = partsOf(form);
  return element(
    "fieldset",
    { class: "choices", "aria-describedby": hintId(fieldIds.parts) },
    element("legend", {}, say.partsLegend),
    element("p", { class: "hint", id: hintId(fieldIds.parts) }, say.partsHint),
    allFarmParts.map((part) =>
      tickBox({
        id: fieldIds.part(part),
        label: farmParts[part].label,
        hint: farmParts[part].says,
        ticked: chosen.includes(part),
        action: tickPart.name,
        dataValue: part,
      }),
    ),
  );
}

function protection({ form }: StartState): HTMLElement {
  return tickBox({
    id: fieldIds.protect,
    label: say.protect,
    hint: say.protectHint,
    ticked: form.protect,
    action: chooseProtect.name,
  });
}

function summary({ refusals }: StartState): HTMLElement {
  return element(
    "div",
    { class: "summary", id: fieldIds.summary, tabindex: -1, role: "group", "aria-labelledby": "start-summary-head" },
    element("h3", { id: "start-summary-head" }, say.summaryHead(refusals.length)),
    element(
      "ul",
      {},
      refusals.map(({ field, says }) =>
        element(
          "li",
          {},
          element("a", { href: `#${field}`, "data-action": goToField.name, "data-value": field }, says),
        ),
      ),
    ),
  );
}

function starterChoice({ form }: StartState): HTMLElement {
  return radioGroup({
    id: fieldIds.starter,
    legend: say.starterLegend,
    choices: starters.map(({ key, title, forWhom, summary }) => ({
      value: key,
      label: title,
      hint: say.starterHint(forWhom, summary),
    })),
    chosen: form.starter,
    action: chooseStarter.name,
  });
}

function guideChoice(start: StartState): HTMLElement {
  return selectField({
    id: fieldIds.guide,
    label: say.guideLegend,
    hint: say.guideHint,
    unchosen: say.guideUnchosen,
    refusal: refusalOf(start, fieldIds.guide),
    choices: Object.entries<Guide>(guides).map(([key, guide]) => ({
      value: key,
      label: say.guideLabel(key),
      hint: publicationOf(guide),
    })),
    chosen: start.form.guide,
    action: chooseGuide.name,
  });
}

/** Which publication a guide stands for. */
function publicationOf({ title, year, sources: keys }: Guide): string {
  const [first] = keys;
  return first === undefined ? `${title}, ${year}.` : `${sources[first].publisher}, ${sources[first].title}, ${year}.`;
}

function figures({ form }: StartState): HTMLElement {
  return radioGroup({
    id: fieldIds.figures,
    legend: say.figuresLegend,
    choices: [
      { value: "demo", label: say.demo, hint: say.demoHint },
      { value: "empty", label: say.empty, hint: say.emptyHint },
    ],
    chosen: form.figures,
    action: chooseFigures.name,
  });
}

function preview({ form }: StartState): HTMLElement {
  return element(
    "section",
    { class: "preview", "aria-labelledby": "start-preview" },
    element("h3", { id: "start-preview" }, say.preview),
    element(
      "ul",
      { class: "plain-list" },
      sheetsOf(form).map(({ name, purpose }) => element("li", {}, element("strong", {}, name), ` ${purpose}`)),
    ),
  );
}
