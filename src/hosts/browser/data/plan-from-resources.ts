import { DataValidationType } from "@univerjs/core";
import { deserializeListOptions } from "@univerjs/sheets";
import type { Area, NotePlan, RulePlan, TablePlan, ValidationPlan } from "../../../workbook/plan";
import { tablesPlugin } from "../../engine/name-and-table-resources";
import { ruleLookOf } from "../../rule-look";
import { notePlugin } from "./note-resource";
import { operators, rulePlugin } from "./rule-resource";
import { validationPlugin } from "./validation-resource";

/** What the grid keeps beside the cells, by plugin and then by sheet. */
export type SheetResources = ReadonlyMap<string, Readonly<Record<string, unknown>>>;

type Fields = Readonly<Record<string, unknown>>;

function fieldsOf(value: unknown): Fields {
  return typeof value === "object" && value !== null ? { ...value } : {};
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function entriesOf(resources: SheetResources, plugin: string, sheetId: string): unknown {
  return resources.get(plugin)?.[sheetId];
}

function areaIn(range: unknown): Area {
  const { startRow, startColumn, endRow, endColumn } = fieldsOf(range);
  return { top: Number(startRow), left: Number(startColumn), bottom: Number(endRow), right: Number(endColumn) };
}

/** Tables as they stand; a totals row stands under the table in the grid and inside it in a plan. */
export function tablesOf(resources: SheetResources, sheetId: string): TablePlan[] {
  const { tables } = fieldsOf(entriesOf(resources, tablesPlugin, sheetId));
  return listOf(tables).map((table) => {
    const { name, range, meta } = fieldsOf(table);
    const totals = fieldsOf(meta)["totals"] === true;
    const area = areaIn(range);
    return { name: String(name), area: totals ? { ...area, bottom: area.bottom + 1 } : area, totals };
  });
}

export function notesOf(resources: SheetResources, sheetId: string): NotePlan[] {
  return Object.values(fieldsOf(entriesOf(resources, notePlugin, sheetId)))
    .flatMap((row) => Object.values(fieldsOf(row)))
    .map((note) => {
      const { row, col, note: text } = fieldsOf(note);
      return { row: Number(row), column: Number(col), text: String(text) };
    });
}

export function validationsOf(resources: SheetResources, sheetId: string): ValidationPlan[] {
  return listOf(entriesOf(resources, validationPlugin, sheetId)).flatMap((entry) => {
    const rule = fieldsOf(entry);
    return listOf(rule["ranges"]).flatMap((range) => validationOf(rule, areaIn(range)));
  });
}

function validationOf(rule: Fields, area: Area): ValidationPlan[] {
  const { type, formula1, formula2, prompt, error } = rule;
  const said = { area, prompt: String(prompt ?? ""), refusal: String(error ?? "") };
  const first = String(formula1 ?? "");
  if (type === DataValidationType.LIST) {
    return [{ kind: "list", words: first.startsWith("=") ? first.slice(1) : deserializeListOptions(first), ...said }];
  }
  const [min, max] = [Number(formula1), Number(formula2)];
  const whole = type === DataValidationType.WHOLE;
  if (!(whole || type === DataValidationType.DECIMAL) || !Number.isFinite(min) || !Number.isFinite(max)) return [];
  return [{ kind: "between", min, max, whole, ...said }];
}

const whens = Object.keys(operators) as (keyof typeof operators)[];

/** Conditional formats of the kinds a plan knows; others that a person added in the grid are left out. */
export function rulesOf(resources: SheetResources, sheetId: string): RulePlan[] {
  return listOf(entriesOf(resources, rulePlugin, sheetId)).flatMap((entry) => {
    const { rule, ranges } = fieldsOf(entry);
    return listOf(ranges).flatMap((range) => ruleOf(fieldsOf(rule), areaIn(range)));
  });
}

function ruleOf(rule: Fields, area: Area): RulePlan[] {
  const config = rule["config"];
  if (rule["type"] === "dataBar") return [{ kind: "bar", area, color: String(fieldsOf(config)["positiveColor"]) }];
  if (rule["type"] === "colorScale") return scaleOf(listOf(config).map(fieldsOf), area);
  const look = ruleLookOf(fieldsOf(fieldsOf(rule["style"])["cl"])["rgb"]);
  if (look === undefined) return [];
  if (rule["subType"] === "formula") return [{ kind: "formula", area, formula: String(rule["value"]), look }];
  const when = whens.find((word) => operators[word] === rule["operator"]);
  if (rule["subType"] !== "number" || when === undefined) return [];
  return [{ kind: "compare", area, when, value: Number(rule["value"]), look }];
}

function scaleOf(stops: readonly Fields[], area: Area): RulePlan[] {
  const [low, middle, high] = stops;
  if (!low || !middle || !high) return [];
  const { type, value } = fieldsOf(middle["value"]);
  const colors = { low: String(low["color"]), middle: String(middle["color"]), high: String(high["color"]) };
  return [{ kind: "scale", area, ...colors, ...(type === "num" && { middleAt: Number(value) }) }];
}
