import morphdom from "morphdom";
import type { WorkbookHost } from "../../hosts/port";
import type { Desk } from "./action";
import type { PaneEnvironment } from "./environment";
import type { PaneState } from "./state";

interface Surroundings {
  readonly root: HTMLElement;
  readonly host: WorkbookHost;
  readonly environment: PaneEnvironment;
  readonly show: (state: PaneState) => HTMLElement;
  /** Told of every change, after it is shown. */
  readonly changed: (before: PaneState, after: PaneState) => void;
}

/**
 * Holds the state and shows it. The pane is drawn anew on every change and the page is altered only where the two
 * differ, so that focus, caret and scroll stay where the person has them.
 */
export function openDesk(first: PaneState, { root, host, environment, show, changed }: Surroundings): Desk {
  let state = first;
  const shown = show(state);
  root.replaceChildren(shown);
  return {
    host,
    environment,
    state: () => state,
    change(recipe, focus) {
      const before = state;
      state = recipe(before);
      morphdom(shown, show(state));
      if (focus !== undefined) document.getElementById(focus)?.focus();
      changed(before, state);
    },
  };
}
