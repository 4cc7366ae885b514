import { words } from "../../words";
import { grainWords } from "../../../functions/words";
import { element, type Child } from "../element";
import { numberText } from "../number-text";
import { broadTable, columnHead } from "../parts/broad-table";
import { button } from "../parts/button";
import { radioGroup } from "../parts/choices";
import { numberIn, refusalIn, type Read } from "../parts/read-number";
import { selectField } from "../parts/select";
import { section } from "../parts/text";
import type { PaneState } from "../state";
import { chooseCrop, chooseEntry } from "./actions";
import { putPasted, takeSelected, typePaste, writeStrip } from "./strip-actions";
import { saidAt } from "./questions";
import type { Layout, StripText } from "./state";
import { readYields } from "./yields";

const say = words.trial;

/** Yields strip by strip, typed or pasted; weights become yields at market moisture. */
export function yieldsView(layout: Layout, state: PaneState): HTMLElement {
  const { form } = state.trial.kept;
  return section(
    "trial-yields-head",
    say.yieldsHead,
    radioGroup({
      id: "trial-entry",
      legend: say.enterLegend,
      choices: [
        { value: "yields", label: say.enterYields },
        { value: "weights", label: say.enterWeights },
      ],
      chosen: form.entry,
      action: chooseEntry.name,
    }),
    form.entry === "weights" && cropChoice(form.crop),
    stripTable(layout, state),
    unread(state),
    pasteBox(state),
  );
}

function cropChoice(chosen: string): HTMLElement {
  return selectField({
    id: "trial-crop",
    label: say.crop,
    hint: say.cropHint,
    unchosen: say.cropUnchosen,
    choices: Object.values<{ label: string }>(grainWords.words).map(({ label }) => ({ value: label, label })),
    chosen,
    action: chooseCrop.name,
  });
}

function stripTable({ strips }: Layout, state: PaneState): HTMLElement {
  const { kept } = state.trial;
  const weighed = kept.form.entry === "weights";
  const yields = readYields(kept);
  const heads = [say.strip, say.treatment, ...(weighed ? [say.weight, say.moisture, say.becomes] : [say.yield])];
  return broadTable({
    label: say.yieldsHead,
    look: "strip-list",
    head: heads.map(columnHead),
    rows: strips.map(({ strip, treatment }, index) =>
      element(
        "tr",
        {},
        element("th", { scope: "row" }, String(strip)),
        element("td", { class: "words" }, treatment),
        weighed
          ? [
              box(index, "weight", say.weightOf(strip, treatment), state),
              box(index, "moisture", say.moistureOf(strip, treatment), state),
              element("td", { class: "number" }, shown(yields[index])),
            ]
          : box(index, "yield", say.yieldOf(strip, treatment), state),
      ),
    ),
  });
}

function box(index: number, part: keyof StripText, label: string, { trial }: PaneState): HTMLElement {
  const text = trial.kept.strips[index]?.[part] ?? "";
  const refused = refusalIn(readYields(trial.kept)[index] ?? "blank") !== undefined;
  return element(
    "td",
    {},
    element("input", {
      id: `trial-${part}-${index}`,
      type: "text",
      class: "number",
      value: text,
      autocomplete: "off",
      inputmode: "decimal",
      "aria-label": label,
      "aria-invalid": refused ? "true" : undefined,
      "aria-describedby": refused ? "trial-unread" : undefined,
      "data-action": writeStrip.name,
      "data-value": `${index}.${part}`,
    }),
  );
}

function shown(read: Read = "blank"): string {
  const value = numberIn(read);
  return value === undefined ? "" : numberText(value);
}

/** The strips that cannot be read, with the reason of each; the same reason once. */
function unread(state: PaneState): Child {
  const reasons = readYields(state.trial.kept).flatMap((read) => refusalIn(read) ?? []);
  const told = [...new Set(reasons)].slice(0, 4);
  return element(
    "p",
    { id: "trial-unread", role: "status", class: "outcome refusal" },
    reasons.length > 0 ? [say.notRead(reasons.length), ...told].join(" ") : "",
  );
}

function pasteBox(state: PaneState): HTMLElement {
  const { kept, pasted } = state.trial;
  return element(
    "div",
    { class: "field" },
    element("label", { for: "trial-paste" }, say.paste),
    element("p", { class: "hint", id: "trial-paste-hint" }, say.pasteHint[kept.form.entry]),
    // morphdom keeps the text of an area in step with its first child.
    element(
      "textarea",
      { id: "trial-paste", rows: 4, "aria-describedby": "trial-paste-hint", "data-action": typePaste.name },
      pasted,
    ),
    element("div", { class: "side-by-side" }, button(putPasted, state), button(takeSelected, state)),
    saidAt("paste", state),
  );
}
