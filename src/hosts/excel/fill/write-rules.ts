import type { RuleLook, RulePlan, SheetPlan } from "../../../workbook/plan";
import { ruleLooks } from "../../../workbook/styles";
import { areaAddress } from "../../address";
import type { Requests } from "./requests";

/** Conditional formats. */
export async function writeRules({ name, rules }: SheetPlan, requests: Requests): Promise<void> {
  for (const plan of rules) {
    await requests.makeRoom({ steps: 10 });
    addRule(plan, requests.sheet(name).getRange(areaAddress(plan.area)).conditionalFormats);
  }
}

const operators = {
  below: "LessThan",
  above: "GreaterThan",
  atLeast: "GreaterThanOrEqual",
  atMost: "LessThanOrEqual",
} as const;

function addRule(plan: RulePlan, formats: Excel.ConditionalFormatCollection): void {
  switch (plan.kind) {
    case "compare": {
      const { cellValue } = formats.add("CellValue");
      cellValue.rule = { formula1: String(plan.value), operator: operators[plan.when] };
      return dress(cellValue.format, plan.look);
    }
    case "formula": {
      const { custom } = formats.add("Custom");
      custom.rule.formula = plan.formula;
      return dress(custom.format, plan.look);
    }
    case "bar": {
      const { dataBar } = formats.add("DataBar");
      dataBar.positiveFormat.fillColor = plan.color;
      dataBar.positiveFormat.gradientFill = false;
      return;
    }
    case "scale":
      formats.add("ColorScale").colorScale.criteria = scaleOf(plan);
  }
}

function dress({ font, fill }: Excel.ConditionalRangeFormat, look: RuleLook): void {
  font.color = ruleLooks[look].color;
  fill.color = ruleLooks[look].fill;
}

function scaleOf(plan: RulePlan & { kind: "scale" }): Excel.ConditionalColorScaleCriteria {
  const middle =
    plan.middleAt === undefined
      ? ({ type: "Percentile", formula: "50" } as const)
      : ({ type: "Number", formula: String(plan.middleAt) } as const);
  return {
    minimum: { type: "LowestValue", color: plan.low },
    midpoint: { ...middle, color: plan.middle },
    maximum: { type: "HighestValue", color: plan.high },
  };
}
