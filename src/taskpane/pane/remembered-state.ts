import type { PaneEnvironment } from "./environment";
import { recentFrom } from "./find/recent";
import { memoryOf } from "./memory";
import { formFrom } from "./start/form";
import { firstState, type PaneState } from "./state";
import { trialFrom } from "./trial/memory";
import { remembering } from "./what-if/memory";

/** The pane as it opens, with what it remembers. What was tried comes back later, with the workbook it was tried in. */
export function rememberedState(environment: PaneEnvironment): PaneState {
  const first = firstState();
  return {
    ...first,
    view: environment.firstVisit ? "overview" : first.view,
    start: { ...first.start, form: formFrom(memoryOf(environment, "form").recall()) },
    find: { ...first.find, recent: recentFrom(memoryOf(environment, "recent").recall()) },
    trial: trialFrom(memoryOf(environment, "trial").recall()),
  };
}

/** Keeps what a change made different of what is remembered. */
export function keepChanges(before: PaneState, after: PaneState, environment: PaneEnvironment): void {
  const { start, find, trial, whatIf } = after;
  if (before.start.form !== start.form) memoryOf(environment, "form").keep(start.form);
  if (before.find.recent !== find.recent) memoryOf(environment, "recent").keep(find.recent);
  if (before.trial.kept !== trial.kept) memoryOf(environment, "trial").keep(trial.kept);
  const { kept, workbook } = whatIf;
  if (workbook !== undefined && (before.whatIf.kept !== kept || before.whatIf.workbook !== workbook)) {
    const memory = memoryOf(environment, "whatIf");
    memory.keep(remembering(memory.recall(), workbook, kept));
  }
}
