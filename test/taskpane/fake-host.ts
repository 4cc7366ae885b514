import {
  HostError,
  type FillOptions,
  type FillReceipt,
  type HostFacts,
  type HostRange,
  type HostValue,
  type MayReplace,
  type TakenNames,
  type WorkbookHost,
  type WrittenBlock,
} from "../../src/hosts/port";
import { allFunctions } from "../../src/functions";
import { cellKey, type SheetReading, type WorkbookReading } from "../../src/workbook/findings";
import type { WorkbookPlan } from "../../src/workbook/plan";

/** One cell of the fake workbook; a formula without a value shows as blank. */
export interface FakeCell {
  readonly formula?: string;
  readonly value?: HostValue;
  readonly message?: string;
}

interface Contents {
  readonly cells: Readonly<Record<string, FakeCell>>;
  /** Areas by defined name or Table[Column], such as "Fields!C2:C4". */
  readonly areas?: Readonly<Record<string, string>>;
  readonly sheets?: readonly string[];
  readonly kind?: WorkbookHost["kind"];
}

/** A workbook in memory that does what the port says, and fails on demand. */
export class FakeHost implements WorkbookHost {
  readonly kind: WorkbookHost["kind"];
  sheets: string[];
  selected = "Sheet1!A1";
  readonly fills: { plan: WorkbookPlan; options: FillOptions }[] = [];
  readonly inserted: string[] = [];
  /** What was brought in sight, in order. */
  readonly shown: string[] = [];
  readonly written: { blocks: readonly WrittenBlock[]; mayReplace: MayReplace }[] = [];
  /** The next request of this kind is refused with this sentence. */
  refusal:
    | {
        readonly of: "fill" | "remove" | "insertFormula" | "read" | "taken" | "write" | "show" | "readSheets";
        readonly says: string;
      }
    | undefined;
  /** Holds a fill back until it is let go, so that its progress can be seen. */
  hold: Promise<void> | undefined;
  private listener: () => void = () => undefined;
  private readonly cells: Record<string, FakeCell>;

  constructor(private readonly contents: Contents = { cells: {} }) {
    this.cells = { ...contents.cells };
    this.kind = contents.kind ?? "excel";
    this.sheets = [...(contents.sheets ?? ["Sheet1"])];
  }

  async taken(): Promise<TakenNames> {
    this.refuseIfAsked("taken");
    const tables = Object.keys(this.contents.areas ?? {}).flatMap((area) => /^(\w+)\[/.exec(area)?.[1] ?? []);
    const names = Object.keys(this.contents.areas ?? {}).filter((area) => !area.includes("["));
    return { sheets: this.sheets, names, tables: [...new Set(tables)] };
  }

  async fill(plan: WorkbookPlan, options: FillOptions): Promise<FillReceipt> {
    options.onProgress?.({ share: 0.4, doing: `Writing ${plan.sheets[0]?.name ?? ""}` });
    await this.hold;
    this.refuseIfAsked("fill");
    this.fills.push({ plan, options });
    const sheets = plan.sheets.map(({ name }) => name);
    this.sheets.push(...sheets);
    return { starter: plan.starter, sheets, names: plan.names.map(({ name }) => name) };
  }

  async remove(receipt: FillReceipt): Promise<void> {
    this.refuseIfAsked("remove");
    this.sheets = this.sheets.filter((name) => !receipt.sheets.includes(name));
  }

  async readSelection(): Promise<HostRange> {
    return this.rangeOf(this.selected);
  }

  async read(reference: string): Promise<HostRange> {
    this.refuseIfAsked("read");
    const area = this.contents.areas?.[reference] ?? reference;
    if (!area.includes("!")) throw new HostError(`There is nothing named ${reference}.`, "NotThere");
    return this.rangeOf(area);
  }

  async insertFormula(formula: string): Promise<void> {
    this.refuseIfAsked("insertFormula");
    this.inserted.push(formula);
  }

  async write(blocks: readonly WrittenBlock[], mayReplace: MayReplace): Promise<void> {
    this.refuseIfAsked("write");
    this.written.push({ blocks, mayReplace });
    for (const { address, rows } of blocks) {
      const [sheet = "", first = ""] = address.split("!");
      const corner = first.split(":")[0] ?? "";
      rows.forEach((row, down) =>
        row.forEach((cell, across) => {
          const place = `${sheet.replace(/^'(.*)'$/, "$1")}!${String.fromCharCode(columnOf(corner) + across)}${rowOf(corner) + down}`;
          this.cells[place] = typeof cell === "object" && cell !== null ? { formula: cell.formula } : { value: cell };
        }),
      );
    }
  }

  async show(reference: string): Promise<void> {
    this.refuseIfAsked("show");
    this.shown.push(reference);
  }

  async readSheets(): Promise<WorkbookReading> {
    this.refuseIfAsked("readSheets");
    const filled = Object.keys(this.cells).map((place) => place.slice(0, place.lastIndexOf("!")));
    const names = [...new Set([...this.sheets, ...filled])];
    return { sheets: names.map((name) => this.sheetReading(name)), names: [], cutShort: [] };
  }

  async facts(): Promise<HostFacts> {
    return { program: "A spreadsheet in memory", functions: allFunctions.map(({ name }) => name), missing: [] };
  }

  async onSelectionChange(listener: () => void): Promise<void> {
    this.listener = listener;
  }

  /** The person clicks another cell. */
  select(address: string): void {
    this.selected = address;
    this.listener();
  }

  private refuseIfAsked(of: string): void {
    if (this.refusal?.of === of) throw new HostError(this.refusal.says, "Refused");
  }

  private sheetReading(name: string): SheetReading {
    const places = Object.keys(this.cells).filter((place) => place.startsWith(`${name}!`));
    const corners = places.map((place) => place.slice(name.length + 1));
    const bottom = Math.max(1, ...corners.map(rowOf));
    const right = String.fromCharCode(Math.max(65, ...corners.map(columnOf)));
    const { formulas, values } = this.rangeOf(`${name}!A1:${right}${bottom}`);
    const messages = new Map<string, string>();
    for (const corner of corners) {
      const message = this.cells[`${name}!${corner}`]?.message;
      if (message !== undefined) messages.set(cellKey(rowOf(corner) - 1, columnOf(corner) - 65), message);
    }
    return { name, top: 0, left: 0, formulas, values, tables: [], messages };
  }

  private rangeOf(address: string): HostRange {
    const [quoted = "", corners = ""] = address.split("!");
    const sheet = quoted.replace(/^'(.*)'$/, "$1");
    const [from = "", to = from] = corners.split(":");
    const rows: FakeCell[][] = [];
    for (let row = rowOf(from); row <= rowOf(to); row++) {
      const cells: FakeCell[] = [];
      for (let column = columnOf(from); column <= columnOf(to); column++) {
        cells.push(this.cells[`${sheet}!${String.fromCharCode(column)}${row}`] ?? {});
      }
      rows.push(cells);
    }
    const message = rows[0]?.[0]?.message;
    return {
      address,
      formulas: rows.map((row) => row.map(({ formula, value }) => formula ?? value ?? "")),
      values: rows.map((row) => row.map(({ value }) => value ?? null)),
      ...(message !== undefined && { message }),
    };
  }
}

/** Columns A to Z are plenty here. */
function columnOf(corner: string): number {
  return corner.charCodeAt(0);
}

function rowOf(corner: string): number {
  return Number(corner.slice(1));
}
