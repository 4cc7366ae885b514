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
    if (view === "working") perform(desk, showWorking, "");
    if (view === "what-if") perform(desk, readSheet, "");
    if (view === "check") perform(desk, lookItOver, "");
    if (view === "about") perform(desk, readLoading, "");
    if (view === "overview") perform(desk, readOverview, "");
    if (view === "clients") perform(desk, lookForList, "");
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

/** The parts that are worked with, and those that are read. */
export const mainViews: readonly View[] = [
  "overview",
  "start",
  "find",
  "working",
  "what-if",
  "trial",
  "check",
  "clients",
];
export const backgroundViews: readonly View[] = ["sources", "about"];

export const headerActions: readonly Action[] = [openView, dismissTrouble];
