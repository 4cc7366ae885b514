import type { WorkbookHost } from "../../hosts/port";
import { aboutActions } from "./about/actions";
import { aboutView } from "./about/view";
import type { Action } from "./action";
import { checkActions } from "./check/actions";
import { checkView } from "./check/view";
import { openDesk } from "./desk";
import { dispatchEvents, perform } from "./dispatch";
import { element } from "./element";
import type { PaneEnvironment } from "./environment";
import { findActions } from "./find/actions";
import { recentFrom } from "./find/recent";
import { findView } from "./find/view";
import { headerActions } from "./header/actions";
import { header } from "./header/view";
import { memoryOf } from "./memory";
import { overviewActions, readingSoon, showExampleFirst } from "./overview/actions";
import { overviewView } from "./overview/view";
import { sourcesView } from "./sources/view";
import { startActions } from "./start/actions";
import { formFrom } from "./start/form";
import { startView } from "./start/view";
import { firstState, type PaneState } from "./state";
import { showWorking, workingActions } from "./working/actions";
import { workingView } from "./working/view";
import { stripActions } from "./workbook-strip/actions";
import { workbookStrip } from "./workbook-strip/view";

export type { KeptWorkbooks, PaneEnvironment, PreferenceStorage } from "./environment";

const actions: readonly Action[] = [
  ...headerActions,
  ...stripActions,
  ...overviewActions,
  ...startActions,
  ...findActions,
  ...workingActions,
  ...checkActions,
  ...aboutActions,
];

/** Shows the task pane inside root and lets it work on the host's workbook. */
export function mountPane(root: HTMLElement, host: WorkbookHost, environment: PaneEnvironment): void {
  if (environment.kind === "excel") document.body.classList.add("pane-page");
  const memory = memoryOf(environment);
  const recentMemory = memoryOf(environment, "recent");
  const first = firstState();
  const desk = openDesk(
    {
      ...first,
      view: environment.firstVisit ? "overview" : first.view,
      start: { ...first.start, form: formFrom(memory.recall()) },
      find: { ...first.find, recent: recentFrom(recentMemory.recall()) },
    },
    {
      root,
      host,
      environment,
      show: (state) => pane(state, environment),
      changed(before, after) {
        if (before.view !== after.view) environment.viewOpened?.(after.view);
        if (before.start.form !== after.start.form) memory.keep(after.start.form);
        if (before.find.recent !== after.find.recent) recentMemory.keep(after.find.recent);
      },
    },
  );
  dispatchEvents(root, desk, actions);
  void environment.firstVisit?.then(() => perform(desk, showExampleFirst, ""));
  const readPlanSoon = readingSoon(desk);
  // Where a host cannot tell of changes, the button in the view reads the cell.
  host
    .onSelectionChange(() => {
      const { view } = desk.state();
      if (view === "working") perform(desk, showWorking, "");
      // Reading a whole plan from Excel at every step of the cursor would be slow.
      if (view === "overview" && host.kind === "browser") readPlanSoon();
    })
    .catch(() => undefined);
}

/** The whole pane for a state. */
function pane(state: PaneState, environment: PaneEnvironment): HTMLElement {
  return element(
    "div",
    { class: "notebook" },
    header(state),
    workbookStrip(state, environment),
    // Beside a grid the page has a main part of its own.
    element(environment.kind === "excel" ? "main" : "div", {}, view(state, environment)),
  );
}

function view(state: PaneState, environment: PaneEnvironment): HTMLElement {
  switch (state.view) {
    case "overview":
      return overviewView(state, environment);
    case "start":
      return startView(state);
    case "find":
      return findView(state);
    case "working":
      return workingView(state);
    case "check":
      return checkView(state);
    case "sources":
      return sourcesView(state);
    case "about":
      return aboutView(state, environment);
  }
}
