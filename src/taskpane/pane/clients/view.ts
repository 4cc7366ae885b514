import { guides } from "../../../reference/guides";
import type { ClientList } from "../../../workbook/starters/client-list";
import { words } from "../../words";
import { element, type Child } from "../element";
import type { PaneEnvironment } from "../environment";
import { button } from "../parts/button";
import { radioGroup } from "../parts/choices";
import { textField } from "../parts/field";
import { outcomeLine } from "../parts/outcome";
import { selectField } from "../parts/select";
import { section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import {
  addList,
  chooseAs,
  chooseGuide,
  chooseList,
  clientIds,
  lookForList,
  makeBudgets,
  typeDate,
  typeNote,
  typePreparedBy,
} from "./actions";
import { namedReasons, outcome } from "./outcome";
import { listInUse, type ClientsState } from "./state";

const say = words.clients;

/** Budgets for many clients: the list, what stands on every report, and the run. */
export function clientsView(state: PaneState, environment: PaneEnvironment): HTMLElement {
  const { clients } = state;
  const list = listInUse(clients);
  return element(
    "div",
    { class: "view" },
    viewHeading("clients", say.title),
    element("p", { class: "lead" }, say.lead),
    outcomeLine(clients.looking ? say.looking : clients.says),
    section("clients-list", say.listHead, listPart(state, list)),
    list && [reportPart(clients), makePart(state, environment, list)],
    outcome(state),
  );
}

function listPart(state: PaneState, list: ClientList | undefined): Child {
  const { lists = [], looking } = state.clients;
  if (!list) return looking ? undefined : noList(state);
  const { sheet, clients, columns, strayRows } = list;
  const fields = clients.reduce((sum, client) => sum + client.fields.length, 0);
  const notReady = clients.filter(({ problems }) => problems.length > 0);
  return [
    lists.length > 1 &&
      radioGroup({
        id: "clients-sheet",
        legend: say.which,
        choices: lists.map((each) => ({ value: each.sheet, label: each.sheet })),
        chosen: sheet,
        action: chooseList.name,
      }),
    element("p", {}, say.found(sheet, clients.length, fields)),
    element("p", { class: "hint" }, say.columns([...columns.heads.values()])),
    [...columns.leftOut, ...strayRows].map((sentence) => element("p", { class: "hint" }, sentence)),
    notReady.length > 0 && element("p", {}, say.notReady(notReady.length)),
    namedReasons(notReady.map(({ name, problems }) => ({ name, why: problems }))),
    button(lookForList, state, { look: "quiet" }),
  ];
}

function noList(state: PaneState): Child {
  return [
    element("p", {}, say.none),
    element(
      "div",
      { class: "side-by-side" },
      button(addList, state, { value: "empty", says: say.starterEmpty }),
      button(addList, state, { value: "demo", says: say.starterDemo }),
    ),
    element("p", { class: "hint" }, say.exampleSays),
    button(lookForList, state, { look: "quiet" }),
  ];
}

function reportPart({ form, refusals }: ClientsState): HTMLElement {
  const refusalOf = (field: keyof typeof form) => refusals.find((refusal) => refusal.field === field)?.says;
  return section(
    "clients-report",
    say.reportHead,
    selectField({
      id: clientIds.guide,
      label: say.guide,
      hint: say.guideHint,
      unchosen: say.guideUnchosen,
      refusal: refusalOf("guide"),
      choices: Object.keys(guides).map((key) => ({ value: key, label: words.start.guideLabel(key) })),
      chosen: form.guide,
      action: chooseGuide.name,
    }),
    textField({
      id: clientIds.preparedBy,
      label: say.preparedBy,
      hint: say.preparedByHint,
      text: form.preparedBy,
      action: typePreparedBy.name,
    }),
    textField({
      id: clientIds.date,
      label: say.date,
      hint: say.dateHint,
      text: form.date,
      refusal: refusalOf("date"),
      action: typeDate.name,
    }),
    textField({ id: clientIds.note, label: say.note, hint: say.noteHint, text: form.note, action: typeNote.name }),
  );
}

function makePart(state: PaneState, { files }: PaneEnvironment, { clients }: ClientList): HTMLElement {
  const ready = clients.filter(({ problems }) => problems.length === 0).length;
  return element(
    "form",
    { novalidate: true },
    files &&
      radioGroup({
        id: clientIds.as,
        legend: say.asLegend,
        choices: [
          { value: "sheets", label: say.asSheets, hint: say.asSheetsHint },
          { value: "files", label: say.asFiles, hint: say.asFilesHint },
        ],
        chosen: state.clients.form.as,
        action: chooseAs.name,
      }),
    element("p", { class: "hint" }, say.examples),
    button(makeBudgets, state, { look: "main", type: "submit", says: say.make(ready) }),
  );
}
