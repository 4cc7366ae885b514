import { areaAddress } from "../../../../src/hosts/address";
import type { Area } from "../../../../src/workbook/plan";
import { areasOf, type MemoryRange } from "./memory-range";
import type { MemorySheet } from "./memory-sheet";
import { Refusal } from "./request-processor";

/** A table with members named as in the protocol. */
export class MemoryTable {
  readonly Id: string;
  Style = "TableStyleMedium2";
  ShowBandedRows = true;
  private name: string;
  private totals = false;
  private area: Area;

  constructor(
    private readonly sheet: MemorySheet,
    address: string,
    hasHeaders: boolean,
  ) {
    const [area] = areasOf(address);
    if (area === undefined || !hasHeaders) throw new Refusal("InvalidArgument", address);
    this.area = area;
    for (let column = area.left; column <= area.right; column++) {
      const head = sheet.cells.touch(area.top, column);
      if (typeof head.content !== "string" || head.content === "") head.content = `Column${column - area.left + 1}`;
    }
    this.Id = sheet.book.nextId();
    this.name = `Table${this.Id}`;
  }

  get Name(): string {
    return this.name;
  }

  set Name(name: string) {
    if (this.sheet.book.hasTable(name) || this.sheet.book.hasName(name)) throw new Refusal("ItemAlreadyExists", name);
    this.name = name;
  }

  get ShowTotals(): boolean {
    return this.totals;
  }

  /** As Excel does it: what stands below moves down, the new row gets a word and a sum. */
  set ShowTotals(show: boolean) {
    if (!show || this.totals) throw new Refusal("NotImplemented", "only adding a totals row");
    this.totals = true;
    this.sheet.cells.pushDown(this.area);
    this.area = { ...this.area, bottom: this.area.bottom + 1 };
    this.sheet.cells.touch(this.area.bottom, this.area.left).content = "Total";
    this.sheet.cells.touch(this.area.bottom, this.area.right).content = "=SUBTOTAL(109,[Last])";
  }

  GetRange(): MemoryRange {
    return this.sheet.GetRange(this.address);
  }

  readonly Columns = { GetItem: (head: string) => ({ GetDataBodyRange: () => this.columnBelow(head) }) };

  private columnBelow(head: string): MemoryRange {
    const { top, left, right, bottom } = this.area;
    for (let column = left; column <= right; column++) {
      if (this.sheet.cells.at(top, column)?.content !== head) continue;
      const body = { top: top + 1, left: column, bottom: this.totals ? bottom - 1 : bottom, right: column };
      return this.sheet.GetRange(areaAddress(body));
    }
    throw new Refusal("ItemNotFound", head);
  }

  get address(): string {
    return areaAddress(this.area);
  }
}
