import type { MemoryRange } from "./memory-range";
import { MemorySheet } from "./memory-sheet";
import { isCleaningUp, Refusal, RequestProcessor, type RequestBody, type ResponseBody } from "./request-processor";

class MemoryName {
  constructor(
    private readonly book: MemoryWorkbook,
    readonly Name: string,
    readonly range: MemoryRange,
    readonly Comment: string,
  ) {}

  readonly Type = "Range";

  get Value(): string {
    return this.range.Address;
  }

  GetRange(): MemoryRange {
    return this.range;
  }

  Delete(): void {
    this.book.names.splice(this.book.names.indexOf(this), 1);
  }
}

/** A spreadsheet in memory that answers the Office library. It stores and checks; it does not calculate. */
export class MemoryWorkbook {
  readonly sheets: MemorySheet[] = [];
  readonly names: MemoryName[] = [];
  readonly requests: RequestBody[] = [];
  /** What formulas show once they are entered: the workbook in memory does not calculate. */
  readonly answers = new Map<string, unknown>();
  /** Addresses that formulas or values were entered into, in order. */
  readonly entered: string[] = [];
  active: MemorySheet;
  selected: { sheet: MemorySheet; address: string };
  /** Fails a request, counted from 0, before one of its actions; Infinity fails none. */
  failAt: { request: number; action: number } = { request: Infinity, action: 0 };
  private ids = 0;

  readonly Application = { SuspendApiCalculationUntilNextSync: (): void => undefined };

  readonly Worksheets = collection(
    () => this.sheets,
    (name?: string) => {
      const free = name ?? `Sheet${this.sheets.length + 1}`;
      if (this.hasSheet(free)) throw new Refusal("ItemAlreadyExists", free);
      const sheet = new MemorySheet(this, free);
      this.sheets.push(sheet);
      return sheet;
    },
    { GetActiveWorksheet: () => this.active },
  );

  readonly Names = collection(
    () => this.names,
    (name: string, range: MemoryRange, comment: string) => {
      if (this.hasName(name) || this.hasTable(name)) throw new Refusal("ItemAlreadyExists", name);
      const added = new MemoryName(this, name, range, comment);
      this.names.push(added);
      return added;
    },
  );

  readonly Tables = collection(
    () => this.sheets.flatMap(({ tables }) => tables),
    () => {
      throw new Refusal("NotImplemented", "tables are added on their sheet");
    },
  );

  private readonly processor = new RequestProcessor(this as unknown as Record<string, unknown>); // walked by member name

  /** A new workbook as Excel opens it: one empty sheet. */
  constructor() {
    this.active = new MemorySheet(this, "Sheet1");
    this.sheets.push(this.active);
    this.selected = { sheet: this.active, address: "A1" };
  }

  readonly answer = (body: RequestBody): ResponseBody => {
    const request = this.requests.push(body) - 1;
    return this.processor.process(body, request === this.failAt.request ? this.failAt.action : Infinity);
  };

  /** Requests that ask for something; those by which the library lets go of ranges are left out. */
  get asked(): RequestBody[] {
    return this.requests.filter((body) => !isCleaningUp(body));
  }

  GetSelectedRange(): MemoryRange {
    const { sheet, address } = this.selected;
    if (address.includes(",")) throw new Refusal("InvalidSelection", address);
    return sheet.GetRange(address);
  }

  GetActiveCell(): MemoryRange {
    return this.selected.sheet.GetRange(this.selected.address.split(/[:,]/)[0]);
  }

  nextId(): string {
    return String(++this.ids);
  }

  hasSheet(name: string): boolean {
    return this.sheets.some((sheet) => same(sheet.Name, name));
  }

  hasTable(name: string): boolean {
    return this.sheets.some(({ tables }) => tables.some((table) => same(table.Name, name)));
  }

  hasName(name: string): boolean {
    return this.names.some((known) => same(known.Name, name));
  }

  sheet(name: string): MemorySheet {
    const sheet = this.sheets.find(({ Name }) => Name === name);
    if (sheet === undefined) throw new Error(`no sheet ${name}`);
    return sheet;
  }

  deleteSheet(sheet: MemorySheet): void {
    if (this.sheets.length === 1) throw new Refusal("InvalidOperation", "a workbook keeps one sheet");
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    const [first] = this.sheets;
    if (first && this.active === sheet) {
      this.active = first;
      this.selected = { sheet: first, address: "A1" };
    }
  }

  /** Everything a person would find in the workbook, for comparing before and after. */
  picture(): string {
    return JSON.stringify({
      sheets: this.sheets.map(({ Name, cells, formats, tables, charts, notes }) => ({
        Name,
        cells: [...cells.byPlace],
        formats: [...formats.byAddress.keys()].filter((address) => address !== "A1"),
        tables: tables.map((table) => [table.Name, table.address]),
        charts: charts.length,
        notes,
      })),
      names: this.names.map(({ Name, range }) => [Name, range.Address]),
      active: this.active.Name,
    });
  }
}

/** A collection with members named as in the protocol. */
function collection<
  T extends { readonly Name: string; readonly Id?: string },
  Add extends (...args: never[]) => unknown,
  More,
>(items: () => readonly T[], Add: Add, more?: More) {
  const find = (key: string) => items().find(({ Name, Id }) => same(Name, key) || Id === key);
  return {
    get Items() {
      return items();
    },
    Add,
    GetItem(key: string): T {
      const item = find(key);
      if (item === undefined) throw new Refusal("ItemNotFound", key);
      return item;
    },
    GetItemOrNullObject: (key: string): T | null => find(key) ?? null,
    ...more,
  };
}

function same(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
