import type { ClientList, ListChoices } from "../../../workbook/starters/client-list";
import { words } from "../../words";
import { dateOf } from "../parts/read-date";
import type { ClientsForm, ClientsState } from "./state";

const say = words.clients;

type CheckedForm = { readonly choices: ListChoices } | { readonly refusals: ClientsState["refusals"] };

/** What stands on every report, or what in the form does not fit. */
export function checkClients(form: ClientsForm, list: ClientList): CheckedForm {
  const preparedOn = dateOf(form.date);
  const refusals = [
    ...(hasTests(list) && form.guide === "" ? [{ field: "guide", says: say.guideMissing } as const] : []),
    ...(preparedOn === undefined ? [{ field: "date", says: say.dateRefused } as const] : []),
  ];
  if (refusals.length > 0 || preparedOn === undefined) return { refusals };
  return {
    choices: {
      guide: form.guide,
      preparedBy: form.preparedBy.trim(),
      preparedOn,
      note: form.note.trim(),
      asGroup: form.as === "sheets",
    },
  };
}

function hasTests({ columns }: ClientList): boolean {
  return (["ph", "bufferPh", "phosphorus", "potassium"] as const).some((column) => columns.at.has(column));
}
