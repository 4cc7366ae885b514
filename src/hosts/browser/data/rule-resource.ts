import type { IResources } from "@univerjs/core";
import type { RuleLook, RulePlan, SheetPlan } from "../../../workbook/plan";
import { ruleLooks } from "../../../workbook/styles";
import { rangeOf } from "../../engine/ranges";
import { listed, sheetResource } from "../../engine/sheet-resource";

export const rulePlugin = "SHEET_CONDITIONAL_FORMATTING_PLUGIN";

export const operators = {
  below: "lessThan",
  above: "greaterThan",
  atLeast: "greaterThanOrEqual",
  atMost: "lessThanOrEqual",
} as const;

/** Conditional formats of a plan, as the grid stores them in a workbook. */
export function rulesResource(sheets: readonly SheetPlan[], sheetIds: readonly string[]): IResources[number] {
  return sheetResource(rulePlugin, sheets, sheetIds, ({ rules }, id) =>
    listed(rules, (rule, index) => ruleData(rule, `${id}-rule-${index}`)),
  );
}

function ruleData(rule: RulePlan, id: string): object {
  return { cfId: id, ranges: [rangeOf(rule.area)], stopIfTrue: false, rule: ruleConfig(rule) };
}

function ruleConfig(rule: RulePlan): object {
  switch (rule.kind) {
    case "compare":
      return { ...highlight(rule), subType: "number", operator: operators[rule.when], value: rule.value };
    case "formula":
      return { ...highlight(rule), subType: "formula", value: rule.formula };
    case "bar":
      return {
        type: "dataBar",
        isShowValue: true,
        config: {
          min: { type: "num", value: 0 },
          max: { type: "max" },
          isGradient: false,
          positiveColor: rule.color,
          nativeColor: ruleLooks.bad.color,
        },
      };
    case "scale":
      return { type: "colorScale", config: scaleStops(rule) };
  }
}

function highlight({ look }: { readonly look: RuleLook }): object {
  const { color, fill } = ruleLooks[look];
  return { type: "highlightCell", style: { cl: { rgb: color }, bg: { rgb: fill } } };
}

function scaleStops({ low, middle, high, middleAt }: RulePlan & { kind: "scale" }): object[] {
  const at = middleAt === undefined ? { type: "percentile", value: 50 } : { type: "num", value: middleAt };
  return [
    { index: 0, color: low, value: { type: "min" } },
    { index: 1, color: middle, value: at },
    { index: 2, color: high, value: { type: "max" } },
  ];
}
