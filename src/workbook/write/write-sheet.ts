import { isExpression, isProse } from "../formula/expression";
import type { Allow } from "../model/cell";
import type { ModelRule } from "../model/rule";
import type { DraftCell } from "../layout/fragment";
import type { DraftSheet } from "../layout/layout";
import { wordsOf } from "../names/words-of";
import type { FinalNames } from "../names/choose-names";
import type { Area, CellPlan, ChartPlan, RulePlan, SheetPlan, ValidationPlan } from "../plan";
import type { ChartModel } from "../model/block";
import type { Resolver } from "./resolver";

/** What writing a sheet needs besides the sheet. */
export interface Ink {
  readonly names: FinalNames;
  readonly resolver: Resolver;
  /** For the foot of printed pages. */
  readonly workbookTitle: string;
}

/** A laid-out sheet in its final form: every reference is an address or a name. */
export function writeSheet({ model, content }: DraftSheet, ink: Ink): SheetPlan {
  const name = nameOf(model.key, ink.names.sheets);
  const table = model.freeze && content.tables.find(({ table }) => table === model.freeze?.table);
  const { orientation, onePage } = model.print;
  return {
    name,
    tabColor: model.tabColor,
    columnWidths: content.widths,
    rowHeights: Object.fromEntries(content.heights),
    cells: content.cells.map((cell) => writeCell(cell, model.key, ink)),
    ...(table && model.freeze && { freeze: { rows: table.area.top + 1, columns: model.freeze.columns } }),
    tables: content.tables.map(({ table, area }) => ({ name: nameOf(table, ink.names.tables), area, totals: false })),
    validations: content.validations.map(({ area, allow }) => writeValidation(area, allow, model.key, ink)),
    rules: content.rules.map(({ area, rule }) => writeRule(area, rule, model.key, ink)),
    charts: content.charts.map(({ chart, at }) => writeChart(chart, at, ink)),
    notes: content.notes,
    print: {
      orientation,
      fit: { wide: 1, tall: onePage ? 1 : 0 },
      ...(table && !onePage && { repeatRows: { first: 0, last: table.area.top } }),
      footer: `&L${ink.workbookTitle.replace(/&/g, "&&")}&C${name.replace(/&/g, "&&")}&RPage &P of &N`,
    },
  };
}

function writeCell(cell: DraftCell, sheet: string, ink: Ink): CellPlan {
  const { row, column, style, format, link } = cell;
  const content = writeContent(cell, sheet, ink);
  return {
    row,
    column,
    style,
    ...(content !== undefined && { content }),
    ...(format !== undefined && { format }),
    ...(link !== undefined && { link: nameOf(link, ink.names.sheets) }),
  };
}

function writeContent({ content }: DraftCell, sheet: string, ink: Ink): CellPlan["content"] {
  if (isExpression(content)) return { formula: ink.resolver.cellFormula(content, sheet) };
  return typeof content === "string" || isProse(content) ? wordsOf(content, ink.names) : content;
}

function writeValidation(area: Area, allow: Allow, sheet: string, ink: Ink): ValidationPlan {
  const { prompt } = allow;
  if (allow.kind === "between") {
    const { min, max, whole = false } = allow;
    const refusal = `Enter a number from ${shown(min)} to ${shown(max)}.`;
    return {
      kind: "between",
      area,
      min,
      max,
      whole,
      prompt: `${prompt} From ${shown(min)} to ${shown(max)}.`,
      refusal,
    };
  }
  const words = isWords(allow.words)
    ? allow.words
    : ink.resolver.plainFormula({ parts: [{ to: "column", rows: "all", ...allow.words }] }, sheet).slice(1);
  return { kind: "list", area, words, prompt, refusal: "Choose one of the words in the list." };
}

function isWords(words: Extract<Allow, { kind: "list" }>["words"]): words is readonly string[] {
  return Array.isArray(words);
}

function shown(value: number): string {
  return value.toLocaleString("en-US");
}

function writeRule(area: Area, rule: ModelRule, sheet: string, { resolver }: Ink): RulePlan {
  if (rule.kind !== "formula") return { area, ...rule };
  return { area, ...rule, formula: resolver.plainFormula(rule.formula, sheet) };
}

function writeChart(chart: ChartModel, at: Area, { resolver }: Ink): ChartPlan {
  const { kind, title, alt, xTitle, yTitle, yFormat, onOneLine } = chart;
  return {
    kind,
    title,
    alt,
    categories: resolver.range(chart.categories),
    series: chart.series.map(({ values, ...rest }) => ({ ...rest, values: resolver.range(values) })),
    ...(xTitle !== undefined && { xTitle }),
    ...(yTitle !== undefined && { yTitle }),
    ...(yFormat !== undefined && { yFormat }),
    ...(onOneLine !== undefined && { onOneLine }),
    at,
  };
}

function nameOf(key: string, names: ReadonlyMap<string, string>): string {
  const name = names.get(key);
  if (name === undefined) throw new Error(`"${key}" has no name.`);
  return name;
}
