import { chartSvg } from "../../../hosts/chart-svg";
import { toNumber } from "../../../hosts/chart/chart-data";
import { marker } from "../../../hosts/chart/marks";
import { linearScale } from "../../../hosts/chart/scale";
import { fitted } from "../../../hosts/chart/svg-text";
import type { HostValue, WorkbookHost } from "../../../hosts/port";
import type { ChartPlan, ChartRange } from "../../../workbook/plan";
import { words } from "../../words";
import { element } from "../element";
import { numberText } from "../number-text";
import { readQuietly } from "../what-if/places";
import { bottomAxis, broad, inks, letters, lineAt, pictureFigure } from "./picture";

const say = words.charts;

/** What the ledgers of a farm plan hold, row by row. */
export interface WorkbookPictures {
  readonly ledgers: readonly LedgerReading[];
}

interface LedgerReading {
  readonly trade: "Potash" | "Phosphate";
  readonly fields: readonly HostValue[];
  readonly perYear: readonly HostValue[];
  readonly now: readonly HostValue[];
  readonly byPlan: readonly HostValue[];
  readonly nothingOn: readonly HostValue[];
}

const trades = { PotashLedger: "Potash", PhosphateLedger: "Phosphate" } as const;
const headers = {
  fields: "Field",
  perYear: "A year lb/ac",
  now: "Test now ppm",
  byPlan: "Test after by plan ppm",
  nothingOn: "Test after nothing on ppm",
} as const;

/** Reads the ledgers that are in the workbook; the plain names first, then those of a second plan. */
export async function readPictures(host: WorkbookHost): Promise<WorkbookPictures> {
  const { tables } = await host.taken();
  const known = tables.flatMap((table) => {
    const [, name] = /^(PotashLedger|PhosphateLedger)(?:_\d+)?$/.exec(table) ?? [];
    return name === "PotashLedger" || name === "PhosphateLedger" ? [{ table, trade: trades[name] }] : [];
  });
  const ledgers = await Promise.all(
    known.map(async ({ table, trade }) => {
      const column = async (header: string) =>
        (await readQuietly(host, `${table}[${header}]`))?.values.map(([cell]) => cell ?? null) ?? [];
      const [fields = [], perYear = [], now = [], byPlan = [], nothingOn = []] = await Promise.all(
        Object.values(headers).map(column),
      );
      return { trade, fields, perYear, now, byPlan, nothingOn };
    }),
  );
  return { ledgers: ledgers.filter(({ perYear }) => perYear.some((value) => toNumber(value) !== undefined)) };
}

/** Two pictures a ledger: the balance by field, and where the soil test is heading. */
export function pictureOfLedger(ledger: LedgerReading): readonly HTMLElement[] {
  return [drawn(ledgerChart(ledger)), driftPicture(ledger)];
}

interface Drawing {
  readonly chart: ChartPlan;
  readonly columns: readonly (readonly HostValue[])[];
  readonly height: number;
}

/** The chart names its ranges by number; the values come from what was read. */
function drawn({ chart, columns, height }: Drawing): HTMLElement {
  const figure = element("figure", { class: "picture" });
  figure.innerHTML = chartSvg(chart, ({ area }) => columns[area.left] ?? [], { width: 340, height });
  return figure;
}

function column(index: number): ChartRange {
  return { sheet: "", area: { top: 0, left: index, bottom: 0, right: index } };
}

function ledgerChart({ trade, fields, perYear }: LedgerReading): Drawing {
  const rows = namedRows(fields, [perYear]);
  const told = rows.map(({ name, numbers: [amount] }) => say.perYear(name, shown(amount)));
  return {
    chart: {
      kind: "bar",
      title: say.ledger(trade),
      alt: say.ledgerAlt(trade, `${told.join("; ")}.`),
      categories: column(0),
      series: [{ name: trade, values: column(1), color: "#5a4636" }],
      at: { top: 0, left: 0, bottom: 0, right: 0 },
    },
    columns: [rows.map(({ name }) => name), rows.map(({ numbers }) => numbers[0] ?? null)],
    height: 70 + rows.length * 22,
  };
}

const driftRow = 24;
const driftKeyAt = [0, 52, 140];
const driftColors = ["var(--clay)", inks.good, inks.bad];

/** One line a field: shapes tell the three apart without colour. */
function driftPicture({ trade, fields, now, byPlan, nothingOn }: LedgerReading): HTMLElement {
  const rows = namedRows(fields, [now, byPlan, nothingOn]);
  const values = linearScale(
    rows.flatMap(({ numbers }) => numbers.filter((value) => value !== undefined)),
    110,
    broad - 14,
    false,
  );
  const top = 26;
  const bottom = top + rows.length * driftRow;
  const signs = [say.now, say.byPlan, say.nothingOn].map((name, index) => {
    const x = 4 + (driftKeyAt[index] ?? 0);
    return marker(index, x + 5, 10, driftColors[index] ?? inks.text) + letters(name, x + 14, 14);
  });
  const points = rows.map(({ name, numbers }, row) => {
    const y = top + row * driftRow + driftRow / 2;
    const found = numbers.filter((value) => value !== undefined);
    const line = lineAt(values.at(Math.min(...found)), y, values.at(Math.max(...found)), y, { color: inks.edge });
    const shapes = numbers.map((value, index) =>
      value === undefined ? "" : marker(index, values.at(value), y, driftColors[index] ?? inks.text),
    );
    return letters(fitted(name, 96, 11), 4, y + 4) + line + shapes.join("");
  });
  const told = rows.map(({ name, numbers: [first, second, third] }) =>
    say.driftOf(name, shown(first), shown(second), shown(third)),
  );
  return pictureFigure({
    id: `drift-${trade.toLowerCase()}`,
    title: say.drift(trade === "Potash" ? "Potassium" : "Phosphorus"),
    alt: say.driftAlt(`${told.join("; ")}.`),
    height: bottom + 36,
    key: say.drift(trade === "Potash" ? "Potassium" : "Phosphorus"),
    body: [...signs, bottomAxis(values, top, bottom, say.ppm), ...points].join(""),
  });
}

interface NamedRow {
  readonly name: string;
  readonly numbers: readonly (number | undefined)[];
}

/** Rows with a field and at least one number. */
function namedRows(fields: readonly HostValue[], columns: readonly (readonly HostValue[])[]): NamedRow[] {
  return fields
    .map((field, row) => ({ name: String(field ?? ""), numbers: columns.map((values) => toNumber(values[row])) }))
    .filter(({ name, numbers }) => name !== "" && numbers.some((value) => value !== undefined));
}

function shown(value: number | undefined): string {
  return value === undefined ? "–" : numberText(Math.round(value * 10) / 10);
}
