import type { FillReceipt } from "../../../hosts/port";
import { readClientList, type ClientList } from "../../../workbook/starters/client-list/client-records";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { isIdle } from "../idle";
import { headingId } from "../parts/text";
import type { PaneState } from "../state";
import { unlessRefused } from "../unless-refused";
import { checkClients } from "./check";
import type { RunReport } from "./make-clients";
import { listInUse, type ClientsForm, type ClientsState } from "./state";

const say = words.clients;
const idle = (state: PaneState): boolean => isIdle(state) && !state.clients.looking;

export const clientIds = {
  guide: "clients-guide",
  preparedBy: "clients-by",
  date: "clients-date",
  note: "clients-note",
  as: "clients-as",
  outcome: "clients-outcome",
  question: "clients-question",
  stop: "clients-stop",
} as const;

const changeClients = changePart("clients");

/** Looks through the workbook for lists of clients. */
export const lookForList: Action = {
  name: "clients.look",
  label: say.lookAgain,
  allowed: idle,
  async perform(desk) {
    changeClients(desk, { looking: true, says: undefined });
    await telling(desk, async () => changeClients(desk, { lists: await listsIn(desk) }));
  },
};

async function listsIn(desk: Desk): Promise<ClientList[]> {
  const { sheets } = await desk.host.readSheets();
  return sheets.flatMap((sheet) => readClientList(sheet) ?? []);
}

/** Adds the sheet that a list can be typed into. */
export const addList: Action = {
  name: "clients.list",
  allowed: idle,
  perform: (desk, value) =>
    telling(desk, async () => {
      const { clientListPlan } = await import("../../../workbook/starters/client-list");
      const plan = clientListPlan({ withDemo: value === "demo" }, await desk.host.taken());
      const receipt = await desk.host.fill(plan, { protect: false });
      const sheet = receipt.sheets[0] ?? "";
      changeClients(desk, { lists: await listsIn(desk), sheet, says: say.starterAdded(sheet) }, headingId("clients"));
    }),
};

export const chooseList = entry("sheet", (sheet) => ({ sheet }));
export const chooseGuide = formEntry("guide", (guide) => ({ guide }));
export const typePreparedBy = formEntry("by", (preparedBy) => ({ preparedBy }));
export const typeDate = formEntry("date", (date) => ({ date }));
export const typeNote = formEntry("note", (note) => ({ note }));
export const chooseAs = formEntry("as", (as) => ({ as: as === "files" ? "files" : "sheets" }));

function entry(name: string, part: (value: string) => Partial<ClientsState>): Action {
  return {
    name: `clients.${name}`,
    perform: (desk, value) => changeClients(desk, part(value)),
  };
}

/** Takes over one field of the form; what was said about it goes away. */
function formEntry(name: string, part: (value: string) => Partial<ClientsForm>): Action {
  return {
    name: `clients.${name}`,
    perform(desk, value) {
      const { form, refusals } = desk.state().clients;
      const change = part(value);
      changeClients(desk, {
        form: { ...form, ...change },
        refusals: refusals.filter(({ field }) => !(field in change)),
      });
    },
  };
}

/** Makes a budget for every client of the list, as it stands now. */
export const makeBudgets: Action = {
  name: "clients.make",
  allowed: idle,
  async perform(desk) {
    changeClients(desk, { says: undefined, outcome: undefined, asking: false });
    await telling(desk, async () => {
      changeClients(desk, { lists: await listsIn(desk) });
      await makeFrom(desk);
    });
  },
};

async function makeFrom(desk: Desk): Promise<void> {
  const { clients } = desk.state();
  const list = listInUse(clients);
  if (!list) return changeClients(desk, { says: say.gone });
  const checked = checkClients(clients.form, list);
  if ("refusals" in checked) {
    const [first] = checked.refusals;
    return changeClients(desk, { refusals: checked.refusals }, first && clientIds[first.field]);
  }
  const ready = list.clients.filter(({ problems }) => problems.length === 0);
  const notReady = list.clients.flatMap(({ name, problems }) => (problems.length > 0 ? [{ name, why: problems }] : []));
  if (ready.length === 0) return changeClients(desk, { says: say.noneReady });
  const report = reportTo(desk);
  report.step(0, ready.length, ready[0]?.name ?? "");
  const { files } = desk.environment;
  const { makeFiles, makeSheets } = await import("./make-clients");
  const made =
    clients.form.as === "files" && files
      ? { ...(await makeFiles(files, ready, checked.choices, report)), receipts: [] }
      : await makeSheets(desk.host, ready, checked.choices, report);
  const receipts = [...desk.state().clients.receipts, ...made.receipts];
  const outcome = { ...made, notMade: [...notReady, ...made.notMade] };
  changeClients(desk, { run: undefined, outcome, receipts }, clientIds.outcome);
}

function reportTo(desk: Desk): RunReport & { readonly zipName: string } {
  const { date } = desk.state().clients.form;
  return {
    step(done, of, name) {
      const isStopping = desk.state().clients.run?.isStopping ?? false;
      changeClients(desk, { run: { done, of, isStopping, doing: say.progress(done, of, name) } });
    },
    isStopped: () => desk.state().clients.run?.isStopping ?? false,
    zipName: say.zipName(date).replace(" .zip", ".zip"),
  };
}

/** Ends a run after the client at hand. What was made stays. */
export const stopRun: Action = {
  name: "clients.stop",
  label: say.stop,
  allowed: ({ clients }) => clients.run !== undefined && !clients.run.isStopping,
  perform(desk) {
    const { run } = desk.state().clients;
    if (run) changeClients(desk, { run: { ...run, isStopping: true } });
  },
};

export const askRemove: Action = {
  name: "clients.ask",
  label: say.remove,
  allowed: (state) => idle(state) && state.clients.receipts.length > 0,
  perform: (desk) => changeClients(desk, { asking: true }, clientIds.question),
};

export const keepMade: Action = {
  name: "clients.keep",
  label: say.keep,
  allowed: idle,
  perform: (desk) => changeClients(desk, { asking: false }, clientIds.outcome),
};

export const removeMade: Action = {
  name: "clients.remove",
  label: say.removeNow,
  allowed: (state) => idle(state) && state.clients.asking,
  async perform(desk) {
    changeClients(desk, { asking: false, says: say.removing });
    await telling(desk, async () => {
      await desk.host.remove(allOf(desk.state().clients.receipts));
      changeClients(desk, { receipts: [], outcome: undefined, says: say.removed }, headingId("clients"));
    });
  },
};

function allOf(receipts: readonly FillReceipt[]): FillReceipt {
  return {
    starter: "client-budget",
    sheets: receipts.flatMap(({ sheets }) => sheets),
    names: receipts.flatMap(({ names }) => names),
  };
}

/** Whatever came of it, the work is over then. */
async function telling(desk: Desk, work: () => Promise<void>): Promise<void> {
  try {
    await unlessRefused(work, (says) => changeClients(desk, { says }));
  } finally {
    changeClients(desk, { run: undefined, looking: false });
  }
}

export const clientsActions: readonly Action[] = [
  lookForList,
  addList,
  chooseList,
  chooseGuide,
  typePreparedBy,
  typeDate,
  typeNote,
  chooseAs,
  makeBudgets,
  stopRun,
  askRemove,
  keepMade,
  removeMade,
];
