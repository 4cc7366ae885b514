import { capitalized } from "../../../core/capitalized";
import { crops } from "../../../reference/crops";
import type { StarterCrop } from "../../../workbook/scenario/crop-examples";
import { starterCrops } from "../../../workbook/starters";
import { words } from "../../words";
import { element } from "../element";
import { tickBox } from "../parts/choices";
import { refusalLine, textField } from "../parts/field";
import { leaveField, priceCrop, tickCrop, yieldCrop } from "./actions";
import { fieldIds } from "./field-ids";
import { refusalOf, type StartState } from "./state";

const say = words.start;

/** The crops that are grown, each with its price and yield. */
export function cropLines(start: StartState): HTMLElement {
  const refusal = refusalOf(start, fieldIds.crops);
  return element(
    "fieldset",
    { class: refusal ? "choices field-refused" : "choices" },
    element("legend", { id: fieldIds.crops, tabindex: -1 }, say.cropsLegend),
    element("p", { class: "hint" }, say.cropsHint),
    refusalLine(fieldIds.crops, refusal),
    starterCrops.map((crop) => cropLine(crop, start)),
  );
}

function cropLine(crop: StarterCrop, start: StartState): HTMLElement {
  const { label, yieldUnit } = crops[crop];
  const { grown, price, yieldGoal } = start.form.crops[crop];
  const number = { numeric: true, leave: leaveField.name, value: crop } as const;
  return element(
    "div",
    { class: "crop" },
    tickBox({
      id: fieldIds.grown(crop),
      label: capitalized(label),
      ticked: grown,
      action: tickCrop.name,
      dataValue: crop,
    }),
    grown &&
      element(
        "div",
        { class: "pair" },
        textField({
          ...number,
          id: fieldIds.price(crop),
          label: [say.price, element("span", { class: "unseen" }, say.of(label))],
          text: price,
          unit: `$/${yieldUnit}`,
          refusal: refusalOf(start, fieldIds.price(crop)),
          action: priceCrop.name,
        }),
        textField({
          ...number,
          id: fieldIds.yieldGoal(crop),
          label: [say.yield, element("span", { class: "unseen" }, say.of(label))],
          text: yieldGoal,
          unit: `${yieldUnit}/ac`,
          refusal: refusalOf(start, fieldIds.yieldGoal(crop)),
          action: yieldCrop.name,
        }),
      ),
  );
}
