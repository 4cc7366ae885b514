import type { HostValue, TakenNames, WorkbookHost } from "../../../hosts/port";
import { sheetAddress } from "../../../hosts/address";
import { farmSheets } from "../../../workbook/starters/farm-plan/farm-sheets";
import { limePlan, potashLedger } from "../../../workbook/starters/farm-plan/headers";
import { isNumbered, readTable } from "../tables/read-table";
import { unlessRefused } from "../unless-refused";

/** What the overview needs of a farm plan, as its cells show it now. */
export interface FarmFigures {
  readonly farm: string;
  readonly acres: number;
  /** Whether a page of the summary can be printed from here. */
  readonly summarySheet: string | undefined;
  readonly potash: readonly PotashRow[];
  readonly lime: readonly LimeRow[];
  readonly budgets: readonly CropBudget[];
}

export interface PotashRow {
  readonly field: string;
  readonly isBeforeSoybean: boolean;
  readonly perYearLbPerAc: number;
  readonly leftLbPerAc: number | undefined;
  readonly takesLbPerAc: number | undefined;
  readonly at: string;
}

export interface LimeRow {
  readonly field: string;
  readonly rateTonPerAc: number;
  readonly tons: number;
  readonly costUsd: number;
  readonly at: string;
}

export interface CropBudget {
  readonly crop: string;
  readonly priceUsdPerBu: number;
  readonly coversUsdPerBu: number;
  readonly at: string;
}

/** Reads the farm plan of a workbook; nothing where there is none. */
export async function readFarm(host: WorkbookHost): Promise<FarmFigures | undefined> {
  const taken = await host.taken();
  const ledger = numbered(potashLedger.table, taken.tables);
  if (ledger === undefined) return undefined;
  const potash = await quietly(() => potashRows(host, ledger), { rows: [], acres: 0 });
  return {
    farm: await quietly(() => farmName(host, taken), ""),
    acres: potash.acres,
    summarySheet: numbered(farmSheets.summary.name, taken.sheets),
    potash: potash.rows,
    lime: await quietly(() => limeRows(host, taken), []),
    budgets: await quietly(() => cropBudgets(host, taken), []),
  };
}

/** A part that was renamed or taken away leaves the others readable. */
function quietly<Part>(read: () => Promise<Part>, otherwise: Part): Promise<Part> {
  return unlessRefused(read, () => otherwise);
}

/** The name of a table, sheet or cell of ours in this workbook. */
function numbered(wanted: string, taken: readonly string[]): string | undefined {
  return taken.find((name) => isNumbered(wanted, name));
}

async function farmName(host: WorkbookHost, { names }: TakenNames): Promise<string> {
  const name = numbered("farm_name", names);
  return name === undefined ? "" : text((await host.read(name)).values[0]?.[0]);
}

async function potashRows(host: WorkbookHost, name: string): Promise<{ rows: PotashRow[]; acres: number }> {
  const wanted = ["field", "acres", "nextCrop", "perYear", "left", "nextTakes"] as const;
  const table = await readTable(host, name, potashLedger, wanted);
  const rows = (table?.rows ?? []).flatMap((row, index): PotashRow[] => {
    const perYearLbPerAc = number(row.perYear);
    if (!table || perYearLbPerAc === undefined) return [];
    return [
      {
        field: text(row.field),
        isBeforeSoybean: text(row.nextCrop).toLowerCase() === "soybean",
        perYearLbPerAc,
        leftLbPerAc: number(row.left),
        takesLbPerAc: number(row.nextTakes),
        at: table.at(index, "perYear"),
      },
    ];
  });
  return { rows, acres: sum((table?.rows ?? []).map(({ acres }) => number(acres) ?? 0)) };
}

async function limeRows(host: WorkbookHost, { tables }: TakenNames): Promise<LimeRow[]> {
  const name = numbered(limePlan.table, tables);
  const table = name && (await readTable(host, name, limePlan, ["field", "rate", "tons", "cost"]));
  if (!table) return [];
  return table.rows.flatMap((row, index): LimeRow[] => {
    const rateTonPerAc = number(row.rate);
    if (rateTonPerAc === undefined) return [];
    const [tons, costUsd] = [number(row.tons) ?? 0, number(row.cost) ?? 0];
    return [{ field: text(row.field), rateTonPerAc, tons, costUsd, at: table.at(index, "rate") }];
  });
}

/** The budget's lines are found by what stands in front of them: rows may have been put in between. */
const budgetLines = { head: "An acre of", price: "Price", covers: "Price that covers all costs" } as const;
const budgetArea = { top: 0, left: 0, bottom: 79, right: 9 };

async function cropBudgets(host: WorkbookHost, { sheets }: TakenNames): Promise<CropBudget[]> {
  const sheet = numbered(farmSheets.budgets.name, sheets);
  if (sheet === undefined) return [];
  const { values } = await host.read(sheetAddress(sheet, budgetArea));
  const line = (label: string) => values.findIndex(([first]) => text(first) === label);
  const [head, price, covers] = [line(budgetLines.head), line(budgetLines.price), line(budgetLines.covers)];
  return (values[head] ?? []).flatMap((crop, column): CropBudget[] => {
    const priceUsdPerBu = number(values[price]?.[column]);
    const coversUsdPerBu = number(values[covers]?.[column]);
    if (priceUsdPerBu === undefined || coversUsdPerBu === undefined) return [];
    const at = sheetAddress(sheet, { top: covers, left: column, bottom: covers, right: column });
    return [{ crop: text(crop), priceUsdPerBu, coversUsdPerBu, at }];
  });
}

function text(value: HostValue | undefined): string {
  return typeof value === "string" ? value : "";
}

function number(value: HostValue | undefined): number | undefined {
  return typeof value === "number" ? value : undefined;
}

export function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}
