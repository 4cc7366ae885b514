import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { question } from "../parts/question";
import type { PaneState } from "../state";
import { askRemove, clientIds, keepMade, removeMade, stopRun } from "./actions";
import type { ClientsOutcome, ClientsRun } from "./state";

const say = words.clients;
const mostNamed = 12;

/** How far the run is, what came of it, and the way back. */
export function outcome(state: PaneState): Child {
  const { run, outcome: done, receipts } = state.clients;
  return [
    element("div", { role: "status" }, run && progress(run)),
    run && button(stopRun, state, { attributes: { id: clientIds.stop } }),
    done && summary(done),
    receipts.length > 0 && !run && wayBack(state),
  ];
}

function progress({ done, of, doing, isStopping }: ClientsRun): HTMLElement {
  return element(
    "div",
    { class: "progress" },
    element("progress", { max: of, value: done, "aria-label": say.making }),
    element("p", {}, isStopping ? say.stopping : doing),
  );
}

function summary({ made, file, notMade, notBegun }: ClientsOutcome): HTMLElement {
  const madeSays = file === undefined ? say.madeSheets(made) : say.madeFiles(made, file);
  return element(
    "section",
    { class: "done", id: clientIds.outcome, tabindex: -1, "aria-labelledby": "clients-done-head" },
    element("h3", { id: "clients-done-head" }, say.doneHead),
    element("p", {}, made === 0 ? say.madeNone : madeSays),
    notBegun > 0 && element("p", {}, say.stopped(notBegun)),
    notMade.length > 0 && element("p", {}, say.notMade(notMade.length)),
    namedReasons(notMade),
  );
}

/** A sentence each, the first dozen of them at once and the others on demand. */
export function namedReasons(entries: ClientsOutcome["notMade"]): Child {
  if (entries.length === 0) return undefined;
  const lines = (part: ClientsOutcome["notMade"]) =>
    element(
      "ul",
      {},
      part.map(({ name, why }) => element("li", {}, say.why(name, why))),
    );
  const rest = entries.slice(mostNamed);
  return [
    lines(entries.slice(0, mostNamed)),
    rest.length > 0 && element("details", {}, element("summary", {}, say.andMore(rest.length)), lines(rest)),
  ];
}

function wayBack(state: PaneState): Child {
  const { asking, receipts } = state.clients;
  if (!asking) return button(askRemove, state);
  const count = receipts.reduce((sum, { sheets }) => sum + sheets.length, 0);
  return question({
    id: clientIds.question,
    asks: say.question(count),
    yes: button(removeMade, state),
    no: button(keepMade, state),
  });
}
