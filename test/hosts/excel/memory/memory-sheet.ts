import { areaAddress } from "../../../../src/hosts/address";
import type { Area } from "../../../../src/workbook/plan";
import { Bag } from "./bag";
import { MemoryCells } from "./memory-cells";
import { MemoryRange, areasOf, normalAddress } from "./memory-range";
import { MemoryTable } from "./memory-table";
import type { MemoryWorkbook } from "./memory-workbook";
import { Refusal } from "./request-processor";

/** A bag for each address. */
class Bags {
  readonly byAddress = new Map<string, Bag>();

  for(address: string): Bag {
    const known = this.byAddress.get(address) ?? new Bag();
    this.byAddress.set(address, known);
    return known;
  }
}

/** A sheet with members named as in the protocol; what is written can be looked at under the other names. */
export class MemorySheet {
  readonly Id: string;
  Visibility = "Visible";
  TabColor = "";
  Gridlines = true;
  readonly cells = new MemoryCells();
  /** What formulas show; the sheet in memory does not calculate. */
  readonly shown = new Map<string, unknown>();
  /** Formulas entered over several cells at once: none of their cells can be written alone. */
  readonly arrays: Area[] = [];
  readonly links = new Map<string, unknown>();
  readonly formats = new Bags();
  readonly borders = new Bags();
  readonly validations = new Bags();
  readonly conditionalFormats: Bag[] = [];
  readonly tables: MemoryTable[] = [];
  readonly charts: Bag[] = [];
  readonly notes: { address: string; text: string; as: "note" | "comment" }[] = [];
  frozen: string | undefined;
  protectedWith: unknown;
  readonly PageLayout = new Bag({
    SetPrintTitleRows: (rows: string) => (this.PageLayout["titleRows"] = rows),
    SetPrintArea: (area: string) => (this.PageLayout["area"] = area),
  });
  readonly FreezePanes = {
    FreezeAt: (address: string) => (this.frozen = address),
    FreezeRows: (count: number) => (this.frozen = `1:${count}`),
    FreezeColumns: (count: number) => (this.frozen = `${count} columns`),
  };
  readonly Protection = { Protect: (options: unknown) => void (this.protectedWith = options) };
  readonly Notes = {
    Add: (address: string, text: string) => this.attach(address, text, "note"),
  };
  readonly Comments = {
    Add: (cell: MemoryRange, text: string) => this.attach(cell.Address, text, "comment"),
  };
  readonly Tables = {
    Add: (address: string, hasHeaders: boolean) => {
      const table = new MemoryTable(this, address, hasHeaders);
      this.tables.push(table);
      return table;
    },
  };
  readonly Charts = {
    Add: (type: string, source: MemoryRange, by: string) => this.addChart(type, source, by),
  };

  constructor(
    readonly book: MemoryWorkbook,
    readonly Name: string,
  ) {
    if (Name.length > 31 || /[:\\/?*[\]]/.test(Name)) throw new Refusal("InvalidArgument", `sheet name ${Name}`);
    this.Id = `{${book.nextId()}}`;
  }

  GetRange(address?: string): MemoryRange {
    const areas = areasOf(address);
    return new MemoryRange(this, areas, normalAddress(areas, address));
  }

  /** The smallest rectangle around what is written; null where there is nothing. */
  GetUsedRangeOrNullObject(): MemoryRange | null {
    const places = [...this.cells.byPlace].flatMap(([place, { content }]) =>
      content === "" ? [] : [place.split(",").map(Number)],
    );
    if (places.length === 0) return null;
    const [rows, columns] = [places.map(([row = 0]) => row), places.map(([, column = 0]) => column)];
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    return this.GetRange(areaAddress({ top, left, bottom: Math.max(...rows), right: Math.max(...columns) }));
  }

  GetRanges(address: string): MemoryRange {
    return this.GetRange(address);
  }

  /** Enters what a person might have typed; the cell then shows what the workbook says of such a formula. */
  type(row: number, column: number, typed: unknown): void {
    this.cells.type(row, column, typed, this.book);
    const answer = this.book.answers.get(String(typed));
    if (answer === undefined) this.shown.delete(`${row},${column}`);
    else this.shown.set(`${row},${column}`, answer);
  }

  refusePartOfArray({ top, left, bottom, right }: Area): void {
    const isPart = (array: Area) =>
      array.top <= bottom && array.bottom >= top && array.left <= right && array.right >= left;
    const isWhole = (array: Area) =>
      array.top >= top && array.bottom <= bottom && array.left >= left && array.right <= right;
    if (this.arrays.some((array) => isPart(array) && !isWhole(array))) {
      throw new Refusal("InvalidOperation", "part of an array");
    }
  }

  Activate(): void {
    this.book.active = this;
  }

  Delete(): void {
    this.book.deleteSheet(this);
  }

  select(address: string): void {
    this.book.selected = { sheet: this, address };
  }

  private attach(address: string, text: string, as: "note" | "comment"): Bag {
    this.notes.push({ address, text, as });
    return new Bag();
  }

  private addChart(Type: string, source: MemoryRange, By: string): Bag {
    const series = [new Bag({ values: source.Address })];
    series.forEach(lendSetters);
    const collection = {
      GetItemAt: (index: number) => series[index] ?? null,
      Add: (name: string) => {
        const added = new Bag({ seriesName: name });
        lendSetters(added);
        series.push(added);
        return added;
      },
    };
    const chart: Bag = new Bag({
      Type,
      By,
      all: series,
      Series: collection,
      SetPosition: (from: string, to: string) => void (chart["position"] = `${from}:${to}`),
    });
    this.charts.push(chart);
    return chart;
  }
}

function lendSetters(series: Bag): void {
  series["SetValues"] = (range: MemoryRange) => void (series["values"] = range.Address);
  series["SetXAxisValues"] = (range: MemoryRange) => void (series["categories"] = range.Address);
}
