import type { CellStyle, ConditionalRule } from "hucre/xlsx";
import type { RuleLook, RulePlan } from "../../workbook/plan";
import { ruleLooks } from "../../workbook/styles";
import { hex, opaqueHex } from "./cell-styles";
import { areaAddress } from "../address";
import { addInFunctionsIn, storedFormula } from "./formulas/stored-formula";

export const operators = {
  below: "lessThan",
  above: "greaterThan",
  atLeast: "greaterThanOrEqual",
  atMost: "lessThanOrEqual",
} as const;

/** A conditional format; the first of a sheet is looked at first. */
export function conditionalRule(plan: RulePlan, index: number): ConditionalRule {
  const common = { range: areaAddress(plan.area), priority: index + 1 };
  switch (plan.kind) {
    case "compare":
      return {
        ...common,
        type: "cellIs",
        operator: operators[plan.when],
        formula: String(plan.value),
        style: ruleStyle(plan.look),
      };
    case "formula":
      return { ...common, type: "expression", formula: nativeFormula(plan.formula), style: ruleStyle(plan.look) };
    case "bar":
      return {
        ...common,
        type: "dataBar",
        dataBar: { cfvo: [{ type: "min" }, { type: "max" }], color: opaqueHex(plan.color) },
      };
    case "scale":
      return { ...common, type: "colorScale", colorScale: colorScale(plan) };
  }
}

function colorScale(plan: RulePlan & { kind: "scale" }): NonNullable<ConditionalRule["colorScale"]> {
  const middle =
    plan.middleAt === undefined
      ? { type: "percentile" as const, value: "50" }
      : { type: "num" as const, value: String(plan.middleAt) };
  return {
    cfvo: [{ type: "min" }, middle, { type: "max" }],
    colors: [plan.low, plan.middle, plan.high].map(opaqueHex),
  };
}

/** In a conditional format the colour of a plain fill is its background. */
function ruleStyle(look: RuleLook): CellStyle {
  const { color, fill } = ruleLooks[look];
  return {
    font: { color: { rgb: hex(color) } },
    fill: { type: "pattern", pattern: "solid", bgColor: { rgb: hex(fill) } },
  };
}

function nativeFormula(typed: string): string {
  const stored = storedFormula(typed);
  if (addInFunctionsIn(stored).length > 0) {
    throw new Error(`Add-in functions do not work in conditional formats: ${typed}`);
  }
  return stored;
}
