import { areaAddress, parseAddress } from "../../../../src/hosts/address";
import type { Area } from "../../../../src/workbook/plan";
import { Bag } from "./bag";
import type { MemorySheet } from "./memory-sheet";
import { Refusal } from "./request-processor";

const lastRow = 1_048_575;
const lastColumn = 16_383;

/** A range, or several of them, as the protocol names its members. */
export class MemoryRange {
  Select = (): void => this.sheet.select(this.address);

  constructor(
    readonly sheet: MemorySheet,
    private readonly areas: readonly Area[],
    private readonly address: string,
  ) {}

  get Worksheet(): MemorySheet {
    return this.sheet;
  }

  get Format(): Bag {
    const settings = this.sheet.formats.for(this.address);
    settings["Borders"] = { GetItem: (edge: string) => this.edge(edge) };
    return settings;
  }

  get DataValidation(): Bag {
    return this.sheet.validations.for(this.address);
  }

  readonly ConditionalFormats = {
    Add: (Type: string): Bag => {
      const rule = new Bag({ Type, On: this.address });
      this.sheet.conditionalFormats.push(rule);
      return rule;
    },
  };

  get Address(): string {
    const { Name } = this.sheet;
    return `${/^\w+$/.test(Name) ? Name : `'${Name}'`}!${this.address}`;
  }

  get RowIndex(): number {
    return this.area.top;
  }

  get ColumnIndex(): number {
    return this.area.left;
  }

  get RowCount(): number {
    return this.area.bottom - this.area.top + 1;
  }

  get ColumnCount(): number {
    return this.area.right - this.area.left + 1;
  }

  get CellCount(): number {
    return this.areas.reduce((sum, { top, left, bottom, right }) => sum + (bottom - top + 1) * (right - left + 1), 0);
  }

  get Formulas(): unknown[][] {
    return this.read((content) => content);
  }

  set Formulas(block: unknown[][]) {
    this.sheet.refusePartOfArray(this.area);
    this.sheet.book.entered.push(this.Address);
    this.write(block, (row, column, typed) => this.sheet.type(row, column, typed));
  }

  get Values(): unknown[][] {
    return this.read((content, row, column) => this.sheet.shown.get(`${row},${column}`) ?? content);
  }

  get NumberFormat(): unknown[][] {
    return this.read((_content, row, column) => this.sheet.cells.at(row, column)?.numberFormat ?? "General");
  }

  set NumberFormat(block: unknown[][]) {
    this.write(block, (row, column, format) => (this.sheet.cells.touch(row, column).numberFormat = String(format)));
  }

  get Hyperlink(): unknown {
    return this.sheet.links.get(this.address) ?? null;
  }

  set Hyperlink(link: unknown) {
    this.sheet.links.set(this.address, link);
  }

  /** The library cuts large blocks by these three. */
  _ValidateArraySize(rows: number, columns: number): void {
    const { top, left, bottom, right } = this.area;
    if (rows !== bottom - top + 1 || columns !== right - left + 1) throw new Refusal("InvalidArgument", this.address);
  }

  GetRow(index: number): MemoryRange {
    const row = this.area.top + index;
    return this.within({ ...this.area, top: row, bottom: row });
  }

  GetBoundingRect(other: MemoryRange): MemoryRange {
    return this.within({ ...this.area, bottom: other.area.bottom });
  }

  private within(area: Area): MemoryRange {
    return new MemoryRange(this.sheet, [area], areaAddress(area));
  }

  /** Excel refuses to draw lines inside where there is no inside. */
  private edge(edge: string): Bag {
    const tall = this.areas.every(({ top, bottom }) => bottom > top);
    const broad = this.areas.every(({ left, right }) => right > left);
    if ((edge === "InsideHorizontal" && !tall) || (edge === "InsideVertical" && !broad)) {
      throw new Refusal("InvalidArgument", `${this.address} has no ${edge}`);
    }
    return this.sheet.borders.for(`${this.address} ${edge}`);
  }

  private get area(): Area {
    const [area] = this.areas;
    if (area === undefined || this.areas.length > 1)
      throw new Refusal("InvalidArgument", `one block, not ${this.address}`);
    return area;
  }

  private read<T>(value: (content: unknown, row: number, column: number) => T): T[][] {
    const { top, left, bottom, right } = this.area;
    return steps(top, bottom).map((row) =>
      steps(left, right).map((column) => value(this.sheet.cells.at(row, column)?.content ?? "", row, column)),
    );
  }

  /** A block has to fit the range; null leaves a cell alone. */
  private write(block: unknown[][], put: (row: number, column: number, value: unknown) => void): void {
    const { top, left, bottom, right } = this.area;
    const fits = block.length === bottom - top + 1 && block.every((row) => row.length === right - left + 1);
    if (!fits) throw new Refusal("InvalidArgument", `the block does not fit ${this.address}`);
    block.forEach((row, down) =>
      row.forEach((value, across) => {
        if (value !== null) put(top + down, left + across, value);
      }),
    );
  }
}

/** Reads one address or a list of them: cells, blocks, whole columns, whole rows; nothing means the whole sheet. */
export function areasOf(address: string | undefined): Area[] {
  if (address === undefined) return [{ top: 0, left: 0, bottom: lastRow, right: lastColumn }];
  return address.split(",").map((one) => {
    const columns = /^([A-Z]+):([A-Z]+)$/.exec(one);
    const rows = /^(\d+):(\d+)$/.exec(one);
    if (columns) return { ...cellsOf(`${columns[1]}1:${columns[2]}1`), bottom: lastRow };
    if (rows) return { ...cellsOf(`A${rows[1]}:A${rows[2]}`), right: lastColumn };
    return cellsOf(one);
  });
}

function cellsOf(address: string): Area {
  const area = parseAddress(address)?.area;
  if (area === undefined) throw new Refusal("InvalidArgument", `no range ${address}`);
  return area;
}

export function normalAddress(areas: readonly Area[], address: string | undefined): string {
  return address === undefined || /^[A-Z]+:|^\d+:/.test(address) ? (address ?? "") : areas.map(areaAddress).join(",");
}

function steps(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, step) => from + step);
}
