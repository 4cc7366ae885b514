import { words } from "../../words";
import { stripMap } from "../charts/strip-map";
import { element } from "../element";
import { numberText } from "../number-text";
import { broadTable, columnHead } from "../parts/broad-table";
import { button } from "../parts/button";
import { caution } from "../parts/text";
import type { PaneState } from "../state";
import { trialLayout } from "../../../functions/trials/trial-layout";
import { printMap } from "./actions";
import { groundOf, letterOf } from "./layout";
import type { KeptTrial, Layout } from "./state";

const say = words.trial;

/** The layout as a picture and as a list of strips with their edges, to print and take to the field. */
export function mapView(layout: Layout, state: PaneState): HTMLElement {
  const { kept } = state.trial;
  return element(
    "section",
    { "aria-labelledby": "trial-map-head" },
    element(
      "div",
      { id: "trial-map" },
      element("h3", { id: "trial-map-head", tabindex: -1 }, say.mapTitle(kept.form.name.trim())),
      element("p", {}, sizeLine(kept, layout), " ", say.sheet.drawnBy(layout.seed)),
      stripMap({
        title: say.mapTitle(kept.form.name.trim()),
        alt: say.mapAlt(layout.strips.map(({ strip, treatment }) => say.mapStrip(strip, treatment)).join(", ")),
        key: say.mapKey,
        strips: layout.strips,
        signOf: (treatment) => {
          const index = layout.treatments.indexOf(treatment);
          return { letter: letterOf(index), index };
        },
        blockWord: say.block[layout.design],
      }),
      legend(layout),
      stripList(kept, layout),
      (trialLayout.cautions ?? []).map(caution),
    ),
    button(printMap, state),
  );
}

function sizeLine({ form }: KeptTrial, { strips }: Layout): string {
  const { widthFt, acres } = groundOf(form, strips.length);
  if (widthFt === undefined || acres === undefined) return "";
  return say.size(strips.length, numberText(strips.length * widthFt), numberText(acres));
}

function legend({ treatments }: Layout): HTMLElement {
  return element(
    "ul",
    { class: "plain-list strip-legend", "aria-label": say.legend },
    treatments.map((name, index) => element("li", {}, element("strong", {}, letterOf(index)), ` ${name}`)),
  );
}

function stripList({ form }: KeptTrial, { strips, treatments, design }: Layout): HTMLElement {
  const { widthFt } = groundOf(form, strips.length);
  const edges = (index: number) =>
    widthFt === undefined ? [] : [numberText(index * widthFt), numberText((index + 1) * widthFt)];
  const heads = [say.strip, say.block[design], say.treatment, ...(widthFt === undefined ? [] : [say.from, say.to])];
  return broadTable({
    label: say.strips,
    look: "strip-list",
    caption: say.strips,
    head: heads.map(columnHead),
    rows: strips.map(({ strip, block, treatment }, index) =>
      element(
        "tr",
        {},
        element("th", { scope: "row" }, String(strip)),
        element("td", {}, String(block)),
        element("td", { class: "words" }, `${letterOf(treatments.indexOf(treatment))} ${treatment}`),
        edges(index).map((edge) => element("td", {}, edge)),
      ),
    ),
  });
}
