import { firstAbout, type AboutState } from "./about/state";
import { firstCheck, type CheckState } from "./check/state";
import { firstClients, type ClientsState } from "./clients/state";
import { firstFind, type FindState } from "./find/state";
import { firstOverview, type OverviewState } from "./overview/state";
import { firstPictures, type PicturesState } from "./pictures/state";
import { firstStart, type StartState } from "./start/state";
import { firstTrial, type TrialState } from "./trial/state";
import { firstWhatIf, type WhatIfState } from "./what-if/state";
import { firstWorking, type WorkingState } from "./working/state";
import { firstStrip, type StripState } from "./workbook-strip/state";

/** The parts of the pane that are worked with, in the order of the navigation. */
export const mainViews = ["overview", "start", "find", "working", "what-if", "trial", "check", "clients"] as const;

/** Those that are read. */
export const backgroundViews = ["sources", "about"] as const;

export const views = [...mainViews, ...backgroundViews] as const;

export type View = (typeof views)[number];

/** Everything the pane shows, and everything typed into it. */
export interface PaneState {
  readonly view: View;
  readonly overview: OverviewState;
  readonly clients: ClientsState;
  readonly start: StartState;
  readonly find: FindState;
  readonly working: WorkingState;
  readonly whatIf: WhatIfState;
  readonly trial: TrialState;
  readonly pictures: PicturesState;
  readonly check: CheckState;
  readonly about: AboutState;
  readonly strip: StripState;
  /** The person has just had the form emptied. */
  readonly forgotten?: boolean;
  /** Said at the top when something went wrong that no view could put into words. */
  readonly trouble?: string | undefined;
}

/** The pane as it opens. */
export function firstState(): PaneState {
  return {
    view: "start",
    overview: firstOverview,
    clients: firstClients,
    start: firstStart(),
    find: firstFind,
    working: firstWorking,
    whatIf: firstWhatIf,
    trial: firstTrial(),
    pictures: firstPictures,
    check: firstCheck,
    about: firstAbout,
    strip: firstStrip,
  };
}
