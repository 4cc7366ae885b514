import { isCellError } from "../../src/functions/frame/cell";
import { areaAddress, parseAddress, sheetAddress } from "../../src/hosts/address";
import type { CalculatedWorkbook } from "../../src/hosts/calculated-workbook";
import { HostError, type HostRange, type HostValue, type WorkbookHost } from "../../src/hosts/port";
import type { Area, WorkbookPlan } from "../../src/workbook/plan";
import { FakeHost } from "./fake-host";

/** A calculated plan that can be read like an open workbook: addresses, names and table columns. */
export class PlanHost extends FakeHost implements WorkbookHost {
  constructor(
    private readonly plan: WorkbookPlan,
    private readonly values: CalculatedWorkbook,
  ) {
    super({ cells: {} });
  }

  override async taken() {
    const tables = this.plan.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
    return { sheets: this.plan.sheets.map(({ name }) => name), names: this.plan.names.map(({ name }) => name), tables };
  }

  override async readSelection(): Promise<HostRange> {
    return this.read(this.selected);
  }

  override async read(reference: string): Promise<HostRange> {
    const place = parseAddress(reference) ?? this.named(reference) ?? this.column(reference);
    if (place?.sheet === undefined) throw new HostError(`There is nothing named ${reference}.`, "NotThere");
    return this.at(place.sheet, place.area);
  }

  private named(reference: string) {
    return this.plan.names.find(({ name }) => name.toLowerCase() === reference.toLowerCase());
  }

  private column(reference: string): { sheet: string; area: Area } | undefined {
    const [, table, escaped = ""] = /^(\w+)\[(.+)\]$/.exec(reference) ?? [];
    const header = escaped.replace(/'(.)/g, "$1");
    for (const sheet of this.plan.sheets) {
      const found = sheet.tables.find(({ name }) => name === table);
      if (!found) continue;
      const { top, bottom, left, right } = found.area;
      const cell = sheet.cells.find(
        ({ row, column, content }) => row === top && column >= left && column <= right && content === header,
      );
      if (!cell) return undefined;
      const last = found.totals ? bottom - 1 : bottom;
      return { sheet: sheet.name, area: { top: top + 1, bottom: last, left: cell.column, right: cell.column } };
    }
    return undefined;
  }

  private at(sheet: string, area: Area): HostRange {
    const rows = between(area.top, area.bottom);
    const columns = between(area.left, area.right);
    const first = this.values.valueAt(sheet, area.top, area.left);
    return {
      address: sheetAddress(sheet, area),
      formulas: rows.map((row) => columns.map((column) => this.formulaAt(sheet, row, column))),
      values: rows.map((row) => columns.map((column) => shown(this.values.valueAt(sheet, row, column)))),
      ...(isCellError(first) && first.message !== undefined && { message: first.message }),
    };
  }

  private formulaAt(sheet: string, row: number, column: number): string | number | boolean {
    const cells = this.plan.sheets.find(({ name }) => name === sheet)?.cells ?? [];
    const content = cells.find((cell) => cell.row === row && cell.column === column)?.content;
    return typeof content === "object" ? content.formula : (content ?? "");
  }
}

function between(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

function shown(value: unknown): HostValue {
  if (isCellError(value)) return value.code;
  return typeof value === "number" || typeof value === "string" || typeof value === "boolean" ? value : null;
}

/** Every cell of a plan whose formula calls one of our functions, as addresses. */
export function ownCells(plan: WorkbookPlan): readonly string[] {
  return plan.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, content }) =>
      typeof content === "object" && content.formula.includes("LOAM.")
        ? [`'${sheet.name}'!${areaAddress({ top: row, left: column, bottom: row, right: column })}`]
        : [],
    ),
  );
}
