import type { FillReceipt } from "../../../hosts/port";
import type { ClientList } from "../../../workbook/starters/client-list";

export interface ClientsState {
  /** Lists found in the workbook; missing until it was looked through. */
  readonly lists?: readonly ClientList[] | undefined;
  readonly looking: boolean;
  /** Sheet of the list that is used. */
  readonly sheet: string;
  readonly form: ClientsForm;
  readonly refusals: readonly { readonly field: keyof ClientsForm; readonly says: string }[];
  readonly run?: ClientsRun | undefined;
  readonly outcome?: ClientsOutcome | undefined;
  /** What runs have added while the pane was open. */
  readonly receipts: readonly FillReceipt[];
  readonly asking: boolean;
  readonly says?: string | undefined;
}

/** What stands on every report, as it is typed. */
export interface ClientsForm {
  readonly guide: string;
  readonly preparedBy: string;
  /** "2027-01-15" or blank. */
  readonly date: string;
  readonly note: string;
  readonly as: "sheets" | "files";
}

export interface ClientsRun {
  readonly done: number;
  readonly of: number;
  readonly doing: string;
  readonly isStopping: boolean;
}

export interface ClientsOutcome {
  readonly made: number;
  /** Name of the zip, where files were made. */
  readonly file?: string | undefined;
  readonly notMade: readonly { readonly name: string; readonly why: readonly string[] }[];
  /** Clients not begun because the person stopped. */
  readonly notBegun: number;
}

export const firstClients: ClientsState = {
  looking: false,
  sheet: "",
  form: { guide: "", preparedBy: "", date: "", note: "", as: "sheets" },
  refusals: [],
  receipts: [],
  asking: false,
};

/** The list that is used: the one chosen, or the only one. */
export function listInUse({ lists = [], sheet }: ClientsState): ClientList | undefined {
  return lists.find((list) => list.sheet === sheet) ?? lists[0];
}
