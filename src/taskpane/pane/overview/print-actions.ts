import { words } from "../../words";
import type { Action, Desk } from "../action";
import { element } from "../element";
import { printAlone } from "../parts/print";
import { dateOf } from "../parts/read-date";
import { printPage } from "./print-page";
import type { PrintForm } from "./state";

const say = words.overview.print;

export const printIds = { preparedBy: "print-by", date: "print-date", note: "print-note" } as const;

function changePrint(desk: Desk, part: Partial<PrintForm>, focus?: string): void {
  desk.change(
    (state) => ({ ...state, overview: { ...state.overview, print: { ...state.overview.print, ...part } } }),
    focus,
  );
}

function entry(name: string, part: (value: string) => Partial<PrintForm>): Action {
  return {
    name: `overview.print.${name}`,
    perform: (desk, value) => changePrint(desk, part(value)),
  };
}

export const typePrintedBy = entry("by", (preparedBy) => ({ preparedBy }));
export const typePrintDate = entry("date", (date) => ({ date, refusal: undefined }));
export const typePrintNote = entry("note", (note) => ({ note }));

/** Prints the summary sheet as a page with a head of its own. */
export const printSummary: Action = {
  name: "overview.print",
  label: say.button,
  perform(desk) {
    const { figures, print } = desk.state().overview;
    const date = longDate(print.date);
    if (date === undefined) return changePrint(desk, { refusal: say.dateRefused }, printIds.date);
    const sheet = figures?.summarySheet;
    const printed = sheet === undefined ? undefined : desk.environment.printedSheet?.(sheet);
    if (!printed) {
      return desk.change((state) => ({ ...state, overview: { ...state.overview, says: say.nothing } }));
    }
    const head = { preparedBy: print.preparedBy.trim(), date, note: print.note.trim() };
    printAlone(element("div", {}, printPage(printed, head)));
  },
};

/** "January 15, 2027"; today for blank, undefined for what is no date. */
function longDate(text: string): string | undefined {
  if (dateOf(text) === undefined) return undefined;
  const [year, month, day] = text.trim().split("-").map(Number);
  const at = text.trim() === "" ? new Date() : new Date(year ?? 0, (month ?? 1) - 1, day);
  return at.toLocaleDateString("en-US", { dateStyle: "long" });
}

export const printActions: readonly Action[] = [typePrintedBy, typePrintDate, typePrintNote, printSummary];
