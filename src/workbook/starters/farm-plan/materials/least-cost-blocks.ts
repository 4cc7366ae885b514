import { leastCostMix } from "../../../../functions/materials/least-cost-mix";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUp, quiet } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { Block, PlacedCell } from "../../../model/block";
import { formats } from "../../../model/cell";
import { typedEntry } from "../../../model/entries";
import { headRow } from "../../../model/rows";
import type { FarmContext } from "../farm-context";
import { fieldList } from "../field-lookup";
import { fertilityPlan, materialTable } from "../headers";
import { materialRows } from "./material-rows";

const nutrients = [
  ["N", "nitrogen"],
  ["P2O5", "phosphate"],
  ["K2O", "potash"],
  ["S", "sulfur"],
  ["Zn", "zinc"],
] as const;

const field = place("mix.field");

/** The cheapest mix of the materials on offer that brings what is planned for one field. */
export function leastCostBlocks({ fields }: FarmContext): Block[] {
  // A field that wants nitrogen too shows more of a mix.
  const start = (fields.find(({ nextCrop }) => nextCrop === "corn") ?? fields[0])?.field ?? null;
  const line = { key: "field", label: "Field", says: "The mix brings at least what the fertility plan plans for it." };
  return [
    { kind: "entries", key: "mix", title: "Cheapest mix for one field", entries: [typedEntry(line, start, fieldList)] },
    { kind: "rows", rows: [...needRows(), ...mixRows()] },
  ];
}

function needRows(): PlacedCell[][] {
  return [
    [
      { content: "Planned for it, lb/ac", style: "head" },
      ...nutrients.map(([symbol]): PlacedCell => ({ key: `mix.head.${symbol}`, content: symbol, style: "head" })),
    ],
    [
      { content: "What the mix has to bring", style: "label" },
      ...nutrients.map(([symbol, column]): PlacedCell => ({
        key: `mix.need.${symbol}`,
        content: plannedAmount(column),
        style: "computed",
        format: formats.one,
      })),
    ],
  ];
}

/** What the plan has for the field; nothing needed where it has no number. */
function plannedAmount(column: (typeof nutrients)[number][1]): Expression {
  const value = lookUp(field, fertilityPlan.all("field"), fertilityPlan.all(column));
  return formula`IF(${field}&""="","",IFERROR(SUM(${value}),0))`;
}

/** Asked in every cell: one table that spills would be lost in a program without the add-in. */
function mixRows(): PlacedCell[][] {
  const ofTable = Array.from(
    { length: materialRows },
    (_, row) => formula`INDEX(${materialTable.all("material")},${row + 1})&""`,
  );
  const lines: Term[] = [...ofTable, "All materials", ...nutrients.map(([symbol]) => `${symbol} supplied`)];
  return [headRow("Material", "lb/ac", "$/ac", "In words"), ...lines.map(mixLine)];
}

function mixLine(item: Term, row: number): PlacedCell[] {
  const key = `mix.item${row + 1}`;
  const isTotal = item === "All materials";
  const figure = isTotal ? "total" : "computed";
  return [
    { key, content: formula`${item}`, style: isTotal ? "totalText" : "computedText" },
    { content: partOfMix(place(key), 2), style: figure, format: formats.one },
    { content: partOfMix(place(key), 3), style: figure, format: formats.cents },
    { content: partOfMix(place(key), 4), style: "body" },
  ];
}

function partOfMix(item: Term, column: number): Expression {
  const mix = call(leastCostMix, {
    needs: formula`${place("mix.head.N")}:${place("mix.need.Zn")}`,
    analyses: materialTable.block("material", "zinc"),
    prices: materialTable.all("price"),
    limits: materialTable.all("most"),
  });
  return formula`IF(${item}="","",${quiet(formula`VLOOKUP(${item},${mix},${column},FALSE)`)})`;
}
