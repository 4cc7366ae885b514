import type { WorkbookHost } from "../../hosts/port";
import { aboutActions } from "./about/actions";
import type { Action, Desk } from "./action";
import { checkActions } from "./check/actions";
import { clientsActions } from "./clients/actions";
import { openDesk } from "./desk";
import { dispatchEvents, perform } from "./dispatch";
import type { PaneEnvironment } from "./environment";
import { findActions } from "./find/actions";
import { headerActions, openView } from "./header/actions";
import { overviewActions, readingSoon, showExampleFirst } from "./overview/actions";
import { picturesActions } from "./pictures/actions";
import { startActions } from "./start/actions";
import { rememberedState, keepChanges } from "./remembered-state";
import type { View } from "./state";
import { trialActions } from "./trial/actions";
import { whatIfActions } from "./what-if/actions";
import { readSheet } from "./what-if/reading";
import { paneView } from "./view";
import { showWorking, workingActions } from "./working/actions";
import { stripActions } from "./workbook-strip/actions";

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
  const desk = openDesk(rememberedState(environment), {
    root,
    host,
    environment,
    show: (state) => paneView(state, environment),
    changed(before, after) {
      if (before.view !== after.view) environment.viewOpened?.(after.view);
      keepChanges(before, after, environment);
    },
  });
  dispatchEvents(root, desk, actions);
  void environment.firstVisit?.then(() => perform(desk, showExampleFirst, ""));
  followSelection(desk);
  return { open: (view) => perform(desk, openView, view) };
}

/** The open part reads anew when another cell is selected. Where a host tells of no changes, its button does that. */
function followSelection(desk: Desk): void {
  const readPlanSoon = readingSoon(desk);
  const follow = (): void => {
    const { view } = desk.state();
    if (view === "working") perform(desk, showWorking, "");
    // Reading a whole plan from Excel at every step of the cursor would be slow.
    if (desk.host.kind !== "browser") return;
    if (view === "what-if") perform(desk, readSheet, "");
    if (view === "overview") readPlanSoon();
  };
  desk.host.onSelectionChange(follow).catch(() => undefined);
}
