import type { WorkbookHost } from "../../hosts/port";
import { aboutActions } from "./about/actions";
import { aboutView } from "./about/view";
import type { Action } from "./action";
import { checkActions } from "./check/actions";
import { checkView } from "./check/view";
import { clientsActions } from "./clients/actions";
import { clientsView } from "./clients/view";
import { openDesk } from "./desk";
import { dispatchEvents, perform } from "./dispatch";
import { element } from "./element";
import type { PaneEnvironment } from "./environment";
import { findActions } from "./find/actions";
import { recentFrom } from "./find/recent";
import { findView } from "./find/view";
import { headerActions, openView } from "./header/actions";
import { header } from "./header/view";
import { memoryOf } from "./memory";
import { overviewActions, readingSoon, showExampleFirst } from "./overview/actions";
import { overviewView } from "./overview/view";
import { picturesActions } from "./pictures/actions";
import { sourcesView } from "./sources/view";
import { startActions } from "./start/actions";
import { formFrom } from "./start/form";
import { startView } from "./start/view";
import { firstState, type PaneState, type View } from "./state";
import { trialActions } from "./trial/actions";
import { trialFrom } from "./trial/memory";
import { trialView } from "./trial/view";
import { whatIfActions } from "./what-if/actions";
import { remembering } from "./what-if/memory";
import { readSheet } from "./what-if/reading";
import { whatIfView } from "./what-if/view";
import { showWorking, workingActions } from "./working/actions";
import { workingView } from "./working/view";
import { stripActions } from "./workbook-strip/actions";
import { workbookStrip } from "./workbook-strip/view";

export type { ClientFiles, KeptWorkbooks, PaneEnvironment, PreferenceStorage } from "./environment";

const actions: readonly Action[] = [
  ...headerActions,
  ...stripActions,
  ...overviewActions,
  ...clientsActions,
  ...startActions,
  ...findActions,
  ...workingActions,
  ...whatIfActions,
  ...trialActions,
  ...picturesActions,
  ...checkActions,
  ...aboutActions,
];

/** What the page around the pane may ask of it. */
export interface Pane {
  open(view: View): void;
}

/** Shows the task pane inside root and lets it work on the host's workbook. */
export function mountPane(root: HTMLElement, host: WorkbookHost, environment: PaneEnvironment): Pane {
  if (environment.kind === "excel") document.body.classList.add("pane-page");
  const memory = memoryOf(environment);
  const recentMemory = memoryOf(environment, "recent");
  const whatIfMemory = memoryOf(environment, "whatIf");
  const trialMemory = memoryOf(environment, "trial");
  const first = firstState();
  const desk = openDesk(
    {
      ...first,
      view: environment.firstVisit ? "overview" : first.view,
      start: { ...first.start, form: formFrom(memory.recall()) },
      find: { ...first.find, recent: recentFrom(recentMemory.recall()) },
      trial: trialFrom(trialMemory.recall()),
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
        const { kept, workbook } = after.whatIf;
        if ((before.whatIf.kept !== kept || before.whatIf.workbook !== workbook) && workbook !== undefined) {
          whatIfMemory.keep(remembering(whatIfMemory.recall(), workbook, kept));
        }
        if (before.trial.kept !== after.trial.kept) trialMemory.keep(after.trial.kept);
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
      if (view === "what-if" && host.kind === "browser") perform(desk, readSheet, "");
      if (view === "overview" && host.kind === "browser") readPlanSoon();
    })
    .catch(() => undefined);
  return { open: (part) => perform(desk, openView, part) };
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
