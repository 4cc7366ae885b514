import { aboutView } from "./about/view";
import { checkView } from "./check/view";
import { clientsView } from "./clients/view";
import { element } from "./element";
import type { PaneEnvironment } from "./environment";
import { findView } from "./find/view";
import { header } from "./header/view";
import { overviewView } from "./overview/view";
import { sourcesView } from "./sources/view";
import { startView } from "./start/view";
import type { PaneState } from "./state";
import { trialView } from "./trial/view";
import { whatIfView } from "./what-if/view";
import { workbookStrip } from "./workbook-strip/view";
import { workingView } from "./working/view";

/** The whole pane for a state. */
export function paneView(state: PaneState, environment: PaneEnvironment): HTMLElement {
  return element(
    "div",
    { class: "notebook" },
    header(state),
    workbookStrip(state, environment),
    // Beside a grid the page has a main part of its own.
    element(environment.kind === "excel" ? "main" : "div", {}, openView(state, environment)),
  );
}

/** The part that is open. */
function openView(state: PaneState, environment: PaneEnvironment): HTMLElement {
  switch (state.view) {
    case "overview":
      return overviewView(state, environment);
    case "clients":
      return clientsView(state, environment);
    case "start":
      return startView(state);
    case "find":
      return findView(state);
    case "working":
      return workingView(state);
    case "what-if":
      return whatIfView(state);
    case "trial":
      return trialView(state);
    case "check":
      return checkView(state);
    case "sources":
      return sourcesView(state);
    case "about":
      return aboutView(state, environment);
  }
}
