import { readLoading } from "../about/actions";
import type { Action } from "../action";
import { lookForList } from "../clients/actions";
import { lookItOver } from "../check/actions";
import { headingId } from "../parts/text";
import { views, type View } from "../state";
import { perform } from "../dispatch";
import { readOverview } from "../overview/actions";
import { readSheet } from "../what-if/reading";
import { showWorking } from "../working/actions";

/** What a part begins with by itself. */
const atOpening: Readonly<Partial<Record<View, Action>>> = {
  overview: readOverview,
  working: showWorking,
  "what-if": readSheet,
  check: lookItOver,
  clients: lookForList,
  about: readLoading,
};

/** Opens a part of the pane. Whatever was typed elsewhere stays as it is. */
export const openView: Action = {
  name: "pane.open",
  perform(desk, value) {
    const view = views.find((known) => known === value);
    if (!view) return;
    desk.change(
      (state) => ({ ...state, view, trouble: undefined, find: { ...state.find, shown: undefined } }),
      headingId(view),
    );
    const begun = atOpening[view];
    if (begun) perform(desk, begun, "");
  },
};

export const dismissTrouble: Action = {
  name: "pane.dismiss",
  perform(desk) {
    const { view, find } = desk.state();
    const heading = view === "find" && find.shown !== undefined ? "function" : view;
    desk.change((state) => ({ ...state, trouble: undefined }), headingId(heading));
  },
};

export const headerActions: readonly Action[] = [openView, dismissTrouble];
