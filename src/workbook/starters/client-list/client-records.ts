import { FormulaError } from "../../../core/fault";
import { within, type Limit } from "../../../core/limit";
import { limits } from "../../../core/limits";
import { describeFault } from "../../../functions/frame/describe-fault";
import { parseNumber } from "../../../functions/frame/parse-number";
import { cropWords } from "../../../functions/words";
import { crops } from "../../../reference/crops";
import { sampledIn } from "../../findings/sampled-when";
import type { SheetReading, ShownValue } from "../../findings/reading/workbook-reading";
import { choiceLimits } from "../choices";
import { findClientColumns, type ClientColumn, type ClientColumns } from "./client-columns";

/** A field as the list has it; null: not in the list, to be filled in later. */
export interface ListedField {
  /** Row of the sheet, from 1, as a person counts. */
  readonly row: number;
  readonly field: string;
  readonly crop: string;
  readonly acres: number | null;
  readonly yieldBuPerAc: number | null;
  readonly costUsdPerAc: number | null;
  readonly priceUsdPerBu: number | null;
  /** The day of the soil sample as the sheet counts days, or only its year. */
  readonly sampledOn: number | null;
  readonly soilPh: number | null;
  readonly bufferPh: number | null;
  readonly phosphorusPpm: number | null;
  readonly potassiumPpm: number | null;
  readonly cecMeq: number | null;
  readonly organicMatterPct: number | null;
}

export interface ClientRecord {
  readonly name: string;
  readonly note: string;
  readonly fields: readonly ListedField[];
  /** What keeps this client from being made, a sentence each. */
  readonly problems: readonly string[];
}

export interface ClientList {
  readonly sheet: string;
  readonly columns: ClientColumns;
  readonly clients: readonly ClientRecord[];
  /** Rows that belong to no client, a sentence each. */
  readonly strayRows: readonly string[];
}

/** Reads a sheet as a list of clients, fields, crops and soil tests; nothing where its header says otherwise. */
export function readClientList({ name, top, values }: SheetReading): ClientList | undefined {
  const columns = findClientColumns(values);
  if (!columns) return undefined;
  const strayRows: string[] = [];
  const rows = new Map<string, { name: string; cells: RowCells[] }>();
  values.slice(columns.row + 1).forEach((cells, index) => {
    const row = new RowCells(top + columns.row + 2 + index, cells, columns);
    const [client, field] = [row.text("client"), row.text("field")];
    if (client === "" && field === "") return;
    if (client === "") return void strayRows.push(`Row ${row.number} has the field ${field} and no client.`);
    const found = rows.get(client.toLowerCase()) ?? { name: client, cells: [] };
    rows.set(client.toLowerCase(), { ...found, cells: [...found.cells, row] });
  });
  const clients = [...rows.values()].map((entry) => clientOf(entry.name, entry.cells));
  return { sheet: name, columns, clients, strayRows };
}

/** One row of the list, with what was found wrong in it. */
class RowCells {
  readonly problems: string[] = [];

  constructor(
    readonly number: number,
    private readonly cells: readonly ShownValue[],
    private readonly columns: ClientColumns,
  ) {}

  value(column: ClientColumn): ShownValue {
    const index = this.columns.at.get(column);
    return index === undefined ? null : (this.cells[index] ?? null);
  }

  text(column: ClientColumn): string {
    const value = this.value(column);
    return value === null ? "" : String(value).trim();
  }

  /** The number in a column, null where it is blank or does not fit; the second is noted. */
  amount(column: ClientColumn, limit: Limit): number | null {
    const text = this.text(column);
    if (text === "") return null;
    const head = this.columns.heads.get(column) ?? column;
    const value = parseNumber(text)?.value;
    try {
      if (value === undefined)
        throw new FormulaError({ kind: "notANumber", argument: head, received: text, unit: limit.unit });
      const meant = column === "bufferPh" && /index/i.test(head) ? value / 10 : value;
      within(head, meant, limit);
      return meant;
    } catch (thrown) {
      if (!(thrown instanceof FormulaError)) throw thrown;
      this.refuse(describeFault(thrown.fault));
      return null;
    }
  }

  refuse(sentence: string): void {
    this.problems.push(`Row ${this.number}: ${sentence}`);
  }
}

function clientOf(name: string, rows: readonly RowCells[]): ClientRecord {
  const fields = rows.map(fieldOf);
  const note = rows.map((row) => row.text("note")).find((text) => text !== "") ?? "";
  const problems = [
    ...nameProblem(name),
    ...rows.flatMap((row) => row.problems),
    ...doubleFields(fields),
    ...doublePrices(fields),
    ...tooMany(fields.length),
  ];
  return { name, note, fields, problems };
}

function fieldOf(row: RowCells): ListedField {
  const field = row.text("field");
  if (field === "") row.refuse("the name of the field is missing.");
  return {
    row: row.number,
    field,
    crop: cropOf(row),
    acres: row.amount("acres", limits.acres),
    yieldBuPerAc: row.amount("yield", limits.yieldAny),
    costUsdPerAc: row.amount("cost", limits.price),
    priceUsdPerBu: row.amount("price", { ...choiceLimits.priceUsdPerBu, unit: "$/bu" }),
    sampledOn: sampledOn(row),
    soilPh: row.amount("ph", limits.soilPh),
    bufferPh: row.amount("bufferPh", limits.bufferPh),
    phosphorusPpm: row.amount("phosphorus", limits.soilTestP),
    potassiumPpm: row.amount("potassium", limits.soilTestK),
    cecMeq: row.amount("cec", limits.cec),
    organicMatterPct: row.amount("organicMatter", limits.share),
  };
}

function sampledOn(row: RowCells): number | null {
  const shown = row.value("sampled");
  if (shown === null || String(shown).trim() === "") return null;
  const when = sampledIn(shown) ?? sampledIn(Number(shown));
  if (when !== undefined) return "year" in when ? when.year : when.serial;
  row.refuse(`the date of the sample is given as a day, such as 2025-10-14, or as a year; got "${String(shown)}".`);
  return null;
}

function cropOf(row: RowCells): string {
  const text = row.text("crop");
  if (text === "") {
    row.refuse("the crop is missing.");
    return "";
  }
  const key = cropWords.find(text);
  if (key === undefined) {
    const [nearest] = cropWords.nearest(text);
    row.refuse(`the crop "${text}" is not known here. Nearest: ${nearest}.`);
    return text;
  }
  const { label, yieldUnit } = crops[key];
  if (yieldUnit !== "bu") row.refuse(`${label} is counted by the ${yieldUnit}; a client budget counts in bushels.`);
  return label;
}

function nameProblem(name: string): string[] {
  const most = choiceLimits.farmNameLength;
  return name.length > most ? [`The name has ${name.length} letters; the sheets have room for ${most}.`] : [];
}

function doubleFields(fields: readonly ListedField[]): string[] {
  return fields.flatMap(({ field, row }, index) => {
    const first = fields.findIndex((other) => other.field.toLowerCase() === field.toLowerCase());
    return field !== "" && first < index
      ? [`Row ${row}: the field ${field} stands in row ${fields[first]?.row} already.`]
      : [];
  });
}

/** A budget has one price for a crop. */
function doublePrices(fields: readonly ListedField[]): string[] {
  return fields.flatMap(({ crop, priceUsdPerBu, row }) => {
    const first = fields.find((other) => other.crop === crop && other.priceUsdPerBu !== null);
    if (priceUsdPerBu === null || !first || first.priceUsdPerBu === priceUsdPerBu) return [];
    return [
      `Row ${row}: ${crop} at $${priceUsdPerBu}, and at $${first.priceUsdPerBu} in row ${first.row}. Give one price.`,
    ];
  });
}

function tooMany(count: number): string[] {
  const { max } = choiceLimits.fields;
  return count > max ? [`${count} fields are more than a budget has room for, ${max}.`] : [];
}
