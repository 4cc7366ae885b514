import type { WorkbookHost } from "../../hosts/port";
import type { PaneEnvironment } from "./environment";
import type { PaneState } from "./state";

/** What an action works on: the state, the host and what the page around the pane offers. */
export interface Desk {
  readonly host: WorkbookHost;
  readonly environment: PaneEnvironment;
  state(): PaneState;
  /** Puts a new state in place and shows it; then moves the focus to the element of that id, if given. */
  change(recipe: (state: PaneState) => PaneState, focus?: string): void;
}

/** Everything a person can do in the pane is one of these records. */
export interface Action {
  /** Unique, "view.verb"; markup names it in data-action. */
  readonly name: string;
  /** What the button says; controls that carry a label of their own need none. */
  readonly label?: string;
  /** Missing where nothing forbids it. */
  allowed?(state: PaneState): boolean;
  /**
   * @param value what the control holds: typed text, the chosen value, or its data-value
   * @param file the file chosen, where the control takes one
   */
  perform(desk: Desk, value: string, file?: File): void | Promise<void>;
}
