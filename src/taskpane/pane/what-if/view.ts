import { words } from "../../words";
import { driftChart } from "../charts/drift";
import { ledgerChart } from "../charts/ledger";
import type { LedgerReading } from "../tables/ledgers";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { radioGroup } from "../parts/choices";
import { refusalsAloud } from "../parts/field";
import { refusalIn } from "../parts/read-number";
import { section, viewHeading } from "../parts/text";
import { intoWorkbook } from "../pictures/view";
import type { PaneState } from "../state";
import { printPictures } from "./actions";
import { readQuantity } from "./case";
import { knob } from "./knob";
import { quantities } from "./quantities";
import { rangesView } from "./ranges-view";
import { choosePlace, drawPictures, readSheet } from "./reading";
import { resultView } from "./result-view";
import { saidAt } from "./said";
import { scenariosView } from "./scenarios-view";
import { sheetView } from "./sheet-view";
import type { WhatIfState } from "./state";
import { rangeOf, readLine } from "./swings";

const say = words.whatIf;

/** What if: figures to try, what comes of them, and the way into the sheet. */
export function whatIfView(state: PaneState): HTMLElement {
  const { whatIf } = state;
  return element(
    "div",
    { class: "view" },
    viewHeading("what-if", say.title),
    element("p", { class: "lead" }, say.lead),
    place(whatIf),
    element(
      "div",
      { class: "knobs" },
      quantities.map((quantity) => knob(quantity, state)),
    ),
    refusalsAloud(refusalsOf(whatIf)),
    saidAt("take", whatIf),
    button(readSheet, state, { look: "quiet" }),
    resultView(state),
    sheetView(state),
    scenariosView(state),
    rangesView(state),
    workbookPictures(state),
  );
}

/** What does not fit in the figures, their ranges and the costs one by one. */
function refusalsOf(state: WhatIfState): readonly (string | undefined)[] {
  return [
    ...quantities.map((quantity) => refusalIn(readQuantity(state, quantity))),
    ...quantities.map((quantity) => rangeOf(state, quantity).refusal),
    ...state.kept.lines.map((line) => readLine(line).refusal),
  ];
}

/** Where the figures come from; a choice where several sheets offer themselves. */
function place({ places, crop, kept }: WhatIfState): Child {
  const [first] = places;
  if (!first) return element("p", {}, say.noPlace);
  const chosen = places.find(({ key }) => key === kept.place) ?? first;
  if (places.length === 1) return element("p", {}, say.from(chosen.sheet, crop));
  return radioGroup({
    id: "what-if-place",
    legend: say.place,
    choices: places.map(({ key, sheet }) => ({ value: key, label: sheet })),
    chosen: chosen.key,
    action: choosePlace.name,
  });
}

function workbookPictures(state: PaneState): HTMLElement {
  const { ledgers } = state.whatIf;
  const say = words.charts;
  return section(
    "what-if-charts",
    say.head,
    button(drawPictures, state),
    element("p", { role: "status", class: "hint" }, ledgers?.length === 0 ? say.none : ""),
    ledgers !== undefined &&
      ledgers.length > 0 && [
        element("p", { class: "hint" }, say.alsoThere),
        element(
          "div",
          { id: "what-if-pictures" },
          ledgers.map((ledger) => picturesOf(ledger, state)),
        ),
        button(printPictures, state, { look: "quiet" }),
      ],
  );
}

/** Two pictures a ledger: the balance by field, and where the soil test is heading. */
function picturesOf(ledger: LedgerReading, state: PaneState): Child {
  const { table, trade, drifts } = ledger;
  const { ledger: balanceName, drift: driftName, trades, elements } = words.charts;
  return [
    ledgerChart(ledger),
    intoWorkbook(`ledger-${table}`, balanceName(trades[trade]), state),
    drifts.length > 0 && [driftChart(ledger), intoWorkbook(`drift-${table}`, driftName(elements[trade]), state)],
  ];
}
