import { accepted } from "../../../../functions/frame/accepted";
import type { Argument } from "../../../../functions/frame/arguments";
import { isCellError, type CellIn } from "../../../../functions/frame/cell";
import { words } from "../../../words";
import { element, type Attributes, type Child } from "../../element";
import { withUnit } from "../../number-text";
import { button } from "../../parts/button";
import { hintId, refusalId, refusalLine, unitId } from "../../parts/field";
import { sentence } from "../../parts/text";
import type { PaneState } from "../../state";
import { takesList, type Entry, type GivenArgument, type Picked } from "./entry";
import { fieldId, pickId } from "./field-id";
import { leaveArgument, pickArgument, typeArgument, typeInstead } from "./form-actions";

const say = words.find;

/** A list of more words than this is typed into, with what fits coming up below; a shorter one is chosen from. */
const mostOptions = 40;

/** Longer word lists are cut in the line of words; a message tells what comes near a word that does not fit. */
const mostWords = 12;

/** Beside a range of numbers as many words are named; of more it is said how many there are. */
const mostQuoted = 3;

export interface ArgumentBox {
  readonly name: string;
  readonly argument: Argument;
  readonly entry: Entry | undefined;
  readonly given: GivenArgument | undefined;
}

/** One argument: what it is, a box with its unit or the cells it is taken from, and the button that takes them. */
export function argumentField({ name, argument, entry, given }: ArgumentBox, state: PaneState): HTMLElement {
  const id = fieldId(name);
  const said = entry?.refused ?? (entry?.visited ? given?.refusal : undefined);
  const refusal = said && sentence(named(name, said));
  const { picked } = entry ?? {};
  return element(
    "div",
    { class: refusal ? "field argument field-refused" : "field argument" },
    picked
      ? element("p", { class: "field-name", id: nameId(id) }, nameInWords(name))
      : element("label", { for: id, id: nameId(id) }, nameInWords(name)),
    element("p", { class: "hint", id: hintId(id) }, hintOf(argument)),
    refusalLine(id, refusal),
    picked ? pickedLine(name, picked, argument, state) : box(name, argument, entry, refusal),
    button(pickArgument, state, {
      look: "quiet",
      value: name,
      says: picked ? say.pickAgain : say.pick,
      attributes: { id: pickId(name), "aria-describedby": `${nameId(id)}${picked ? ` ${pickedId(id)}` : ""}` },
    }),
  );
}

/** A refusal begins with the name as formulas have it; the form calls the box otherwise. */
function named(name: string, refusal: string): string {
  const [, rest] = refusal.split(new RegExp(`^${name}\\b`));
  return rest === undefined ? refusal : nameInWords(name) + rest;
}

function nameId(id: string): string {
  return `${id}-name`;
}

function pickedId(id: string): string {
  return `${id}-picked`;
}

/** yieldGoal as "Yield goal", targetPH as "Target pH". */
export function nameInWords(name: string): string {
  if (name === "pH") return name;
  if (/^c[ce][ce]$/.test(name)) return name.toUpperCase();
  const apart = name
    .replace(/([a-z])([A-Z])$/, "$1 $2")
    .replace(/PH$/, " pH")
    .replace(/([a-z])([A-Z])(?=[a-z])/g, (_whole, end: string, start: string) => `${end} ${start.toLowerCase()}`);
  return apart.charAt(0).toUpperCase() + apart.slice(1);
}

function hintOf(argument: Argument): string {
  const lines = [sentence(argument.says), acceptsLine(argument)];
  if (argument.shape === "optional") lines.push(say.whenBlank(argument.whenBlankSays));
  return lines.filter(Boolean).join(" ");
}

function acceptsLine(argument: Argument): string {
  const isList = takesList(argument);
  if (argument.vocabulary && !isList) return optionsOf(argument).length > mostOptions ? say.typeAWord : "";
  const text = acceptedText(argument);
  return isList ? say.acceptsList(text, argument.atLeast ?? 1) : say.accepts(text);
}

function acceptedText(argument: Argument): string {
  const known = optionsOf(argument);
  if (argument.vocabulary)
    return known.length > mostWords
      ? say.andMore(known.slice(0, mostWords), known.length - mostWords)
      : known.join(", ");
  return argument.orWords ? say.orWords(accepted(argument), known, mostQuoted) : accepted(argument);
}

function optionsOf({ vocabulary, orWords }: Argument): readonly string[] {
  const list = vocabulary ?? orWords;
  return list ? Object.values(list.words).map(({ label }) => label) : [];
}

function box(name: string, argument: Argument, entry: Entry | undefined, refusal: string | undefined): HTMLElement {
  const id = fieldId(name);
  const options = takesList(argument) ? [] : optionsOf(argument);
  const isSelect = argument.vocabulary !== undefined && options.length > 0 && options.length <= mostOptions;
  const attributes = {
    id,
    "aria-describedby": [hintId(id), argument.unit && unitId(id), refusal && refusalId(id)].filter(Boolean).join(" "),
    "aria-invalid": refusal ? "true" : undefined,
    "data-action": typeArgument.name,
    "data-leave": leaveArgument.name,
    "data-value": name,
  };
  if (isSelect) return selectBox(argument, options, entry, attributes);
  return element(
    "div",
    { class: "field-line" },
    element("input", {
      ...attributes,
      type: "text",
      class: argument.limit && !takesList(argument) && options.length === 0 ? "number" : "words",
      value: entry?.text ?? "",
      autocomplete: "off",
      inputmode: argument.limit && !takesList(argument) && !argument.orWords ? "decimal" : undefined,
      list: options.length > 0 ? `${id}-words` : undefined,
    }),
    argument.unit ? element("span", { class: "unit", id: unitId(id) }, argument.unit) : undefined,
    options.length > 0 &&
      element(
        "datalist",
        { id: `${id}-words` },
        options.map((option) => element("option", { value: option })),
      ),
  );
}

/** A word typed or filled in under another of its spellings still finds its place in the list. */
function selectBox(
  { vocabulary, shape }: Argument,
  options: readonly string[],
  entry: Entry | undefined,
  attributes: Attributes,
): HTMLElement {
  const key = entry?.text ? vocabulary?.find(entry.text) : undefined;
  const chosen = key === undefined ? "" : vocabulary?.words[key]?.label;
  return element(
    "select",
    attributes,
    element("option", { value: "", selected: chosen === "" }, shape === "optional" ? say.leftOut : say.choose),
    options.map((option) => element("option", { value: option, selected: option === chosen }, option)),
  );
}

/** Where the value comes from and what stands there. */
function pickedLine(name: string, { reference, values }: Picked, argument: Argument, state: PaneState): Child {
  return [
    element(
      "p",
      { class: "picked", id: pickedId(fieldId(name)) },
      element("code", {}, reference),
      " ",
      shownThere(values, argument.unit),
    ),
    button(typeInstead, state, {
      look: "quiet",
      value: name,
      attributes: { "aria-describedby": nameId(fieldId(name)) },
    }),
  ];
}

function shownThere(values: readonly (readonly CellIn[])[], unit: string): string {
  const cells = values.flat();
  if (cells.length === 1) return say.shows(cellText(cells[0] ?? null, unit));
  const first = cells.slice(0, 3).map((cell) => cellText(cell, ""));
  return say.showsSeveral(cells.length, first, cells.length > first.length);
}

function cellText(cell: CellIn, unit: string): string {
  if (cell === null || cell === "") return say.blankCell;
  return isCellError(cell) ? cell.code : withUnit(cell, unit);
}
