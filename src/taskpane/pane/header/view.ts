import { words } from "../../words";
import { element, type Child } from "../element";
import { mark } from "../mark";
import { button } from "../parts/button";
import { backgroundViews, mainViews, type PaneState, type View } from "../state";
import { dismissTrouble, openView } from "./actions";

const say = words.pane;

/** Name and navigation. The top right corner stays free: spreadsheets put a menu of their own there. */
export function header(state: PaneState): HTMLElement {
  return element(
    "header",
    { class: "pane-header" },
    element("h1", { class: "name" }, mark(), say.name),
    element(
      "nav",
      { "aria-label": say.navigation },
      element(
        "ul",
        { class: "main-nav" },
        mainViews.map((view) => navItem(view, state)),
      ),
      element(
        "ul",
        { class: "side-nav" },
        backgroundViews.map((view) => navItem(view, state)),
      ),
    ),
    trouble(state),
  );
}

function navItem(view: View, state: PaneState): HTMLElement {
  return element(
    "li",
    {},
    button(openView, state, {
      look: "quiet",
      value: view,
      says: words.pane.views[view],
      attributes: { "aria-current": state.view === view ? "page" : undefined },
    }),
  );
}

function trouble(state: PaneState): Child {
  if (state.trouble === undefined) return undefined;
  return element(
    "div",
    { class: "trouble", id: "trouble", role: "alert", tabindex: -1 },
    element("p", {}, state.trouble),
    button(dismissTrouble, state, { look: "quiet", says: say.dismiss }),
  );
}
