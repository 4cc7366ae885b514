import { HostError, type FillReceipt, type TakenNames, type WorkbookHost } from "../../../hosts/port";
import type { WorkbookPlan } from "../../../workbook/plan";
import { clientPlan, type ClientRecord, type ListChoices } from "../../../workbook/starters/client-list";
import { nothingTaken } from "../../../workbook/taken-names";
import { words } from "../../words";
import type { ClientFiles } from "../environment";
import type { ClientsOutcome } from "./state";

const say = words.clients;

/** How a run tells where it is, and learns that it is to stop. */
export interface RunReport {
  readonly step: (done: number, of: number, doing: string) => void;
  readonly isStopped: () => boolean;
}

type NotMade = ClientsOutcome["notMade"][number];

/** Clients a fill takes at once: each fill of the grid opens the whole workbook anew. */
const together = { excel: 5, browser: 10 } as const;

/** Adds each client's sheets to the workbook; a client that cannot be made holds up no other. */
export async function makeSheets(
  host: WorkbookHost,
  clients: readonly ClientRecord[],
  choices: ListChoices,
  report: RunReport,
): Promise<ClientsOutcome & { readonly receipts: readonly FillReceipt[] }> {
  const notMade: NotMade[] = [];
  const receipts: FillReceipt[] = [];
  let [made, begun] = [0, 0];
  let taken = await host.taken();
  while (begun < clients.length && !report.isStopped()) {
    const group = clients.slice(begun, begun + together[host.kind]);
    report.step(begun, clients.length, group[0]?.name ?? "");
    await breath();
    const planned = planGroup(group, choices, taken, notMade);
    begun += group.length;
    if (planned.length === 0) continue;
    try {
      receipts.push(await host.fill(joined(planned.map(({ plan }) => plan)), { protect: false }));
      made += planned.length;
      taken = withPlans(
        taken,
        planned.map(({ plan }) => plan),
      );
    } catch (thrown) {
      const why = [sentenceOf(thrown)];
      notMade.push(...planned.map(({ name }) => ({ name, why })));
    }
  }
  return { made, notMade, notBegun: clients.length - begun, receipts };
}

function planGroup(
  group: readonly ClientRecord[],
  choices: ListChoices,
  taken: TakenNames,
  notMade: NotMade[],
): { name: string; plan: WorkbookPlan }[] {
  const planned: { name: string; plan: WorkbookPlan }[] = [];
  for (const client of group) {
    try {
      const before = withPlans(
        taken,
        planned.map(({ plan }) => plan),
      );
      planned.push({ name: client.name, plan: clientPlan(client, choices, before) });
    } catch (thrown) {
      notMade.push({ name: client.name, why: [sentenceOf(thrown)] });
    }
  }
  return planned;
}

/** Makes a file of each client and hands them over in one. */
export async function makeFiles(
  files: ClientFiles,
  clients: readonly ClientRecord[],
  choices: ListChoices,
  report: RunReport & { readonly zipName: string },
): Promise<ClientsOutcome> {
  const notMade: NotMade[] = [];
  const made: File[] = [];
  let begun = 0;
  for (const client of clients) {
    if (report.isStopped()) break;
    report.step(begun, clients.length, client.name);
    begun += 1;
    await breath();
    try {
      made.push(await files.make(clientPlan(client, choices, nothingTaken)));
    } catch (thrown) {
      notMade.push({ name: client.name, why: [sentenceOf(thrown)] });
    }
  }
  if (made.length === 0) return { made: 0, notMade, notBegun: clients.length - begun };
  report.step(begun, clients.length, say.packing);
  const file = await files.handOver(made, report.zipName);
  return { made: made.length, file, notMade, notBegun: clients.length - begun };
}

function joined(plans: readonly WorkbookPlan[]): WorkbookPlan {
  return {
    starter: "client-budget",
    title: plans.length === 1 ? (plans[0]?.title ?? "") : say.severalTitle,
    sheets: plans.flatMap(({ sheets }) => sheets),
    names: plans.flatMap(({ names }) => names),
  };
}

function withPlans(taken: TakenNames, plans: readonly WorkbookPlan[]): TakenNames {
  const sheets = plans.flatMap((plan) => plan.sheets);
  return {
    sheets: [...taken.sheets, ...sheets.map(({ name }) => name)],
    names: [...taken.names, ...plans.flatMap(({ names }) => names.map(({ name }) => name))],
    tables: [...taken.tables, ...sheets.flatMap(({ tables }) => tables.map(({ name }) => name))],
  };
}

function sentenceOf(thrown: unknown): string {
  if (thrown instanceof HostError) return thrown.message;
  return say.unforeseen(thrown instanceof Error ? thrown.message : String(thrown));
}

/** Lets the page draw, and a click on Stop come through. */
function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
