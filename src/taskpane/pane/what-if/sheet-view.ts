import { words } from "../../words";
import { element, type Child } from "../element";
import { amountText } from "../number-text";
import { button } from "../parts/button";
import { question } from "../parts/question";
import { section } from "../parts/text";
import type { PaneState } from "../state";
import { quantityFacts } from "./quantities";
import { saidAt } from "./said";
import { askPut, backToSheet, leaveSheet, putBack, putNow, putsOf, type Put } from "./writing";

const say = words.whatIf;

/** From the pane into the sheet, asked first, and the ways back. */
export function sheetView(state: PaneState): HTMLElement {
  const { whatIf } = state;
  return section(
    "what-if-sheet",
    say.sheetHead,
    whatIf.asking
      ? writing(state)
      : element(
          "div",
          { class: "side-by-side" },
          button(askPut, state, { attributes: { id: "what-if-put" } }),
          button(backToSheet, state),
          whatIf.former && button(putBack, state),
        ),
    saidAt("sheet", whatIf),
  );
}

function writing(state: PaneState): HTMLElement {
  const puts = putsOf(state.whatIf);
  const going = puts.filter(({ entry }) => entry);
  return question({
    id: "what-if-question",
    asks: say.putQuestion(going.length),
    details: element(
      "ul",
      {},
      puts.map((put) => element("li", {}, lineOf(put))),
    ),
    yes: button(putNow, state, { says: say.putNow(going.length) }),
    no: button(leaveSheet, state),
  });
}

function lineOf({ quantity, entry, shownAddress, now }: Put): Child {
  const name = say.names[quantity];
  const { unit } = quantityFacts[quantity].limit;
  if (entry) {
    const was = entry.value === null ? say.blank : amountText(entry.value, unit);
    return say.putLine(name, entry.address, was, amountText(now, unit));
  }
  return shownAddress === undefined ? say.unbound(name) : say.stays(name, shownAddress);
}
