import type { ConditionalRule, DataValidation } from "hucre/xlsx";
import type { Area, RulePlan, ValidationPlan } from "../../../workbook/plan";
import { parseAddress } from "../../address";
import { ruleLookOf } from "../../rule-look";
import { colorOf } from "../cell-styles";
import { operators } from "../rules";
import { typedFormula } from "../formulas/typed-formula";

const whens = Object.keys(operators) as (keyof typeof operators)[];

/** Conditional formats of the kinds a plan knows; others are left out. */
export function readRules(rules: readonly ConditionalRule[]): RulePlan[] {
  return [...rules]
    .sort((a, b) => a.priority - b.priority)
    .flatMap((rule) => areasOf(rule.range).flatMap((area) => ruleOf(rule, area)));
}

function ruleOf(rule: ConditionalRule, area: Area): RulePlan[] {
  const formula = [rule.formula ?? []].flat()[0] ?? "";
  const color = rule.style?.font?.color?.rgb;
  const look = color === undefined ? undefined : ruleLookOf(colorOf(color));
  switch (rule.type) {
    case "expression":
      return look ? [{ kind: "formula", area, formula: typedFormula(formula), look }] : [];
    case "cellIs": {
      const when = whens.find((word) => operators[word] === rule.operator);
      return look && when ? [{ kind: "compare", area, when, value: Number(formula), look }] : [];
    }
    case "dataBar":
      return rule.dataBar ? [{ kind: "bar", area, color: colorOf(rule.dataBar.color) }] : [];
    case "colorScale":
      return scaleOf(rule, area);
    default:
      return [];
  }
}

function scaleOf({ colorScale }: ConditionalRule, area: Area): RulePlan[] {
  const [low, middle, high] = colorScale?.colors ?? [];
  if (low === undefined || middle === undefined || high === undefined) return [];
  const stop = colorScale?.cfvo[1];
  return [
    {
      kind: "scale",
      area,
      low: colorOf(low),
      middle: colorOf(middle),
      high: colorOf(high),
      ...(stop?.type === "num" && { middleAt: Number(stop.value) }),
    },
  ];
}

/** What may be typed where; kinds a plan does not know are left out. */
export function readValidations(validations: readonly DataValidation[]): ValidationPlan[] {
  return validations.flatMap((one) => areasOf(one.range).flatMap((area) => validationOf(one, area)));
}

function validationOf(one: DataValidation, area: Area): ValidationPlan[] {
  const said = { area, prompt: one.inputMessage ?? "", refusal: one.errorMessage ?? "" };
  if (one.type === "list") {
    const words = one.values?.map((word) => word.replace(/""/g, '"')) ?? one.formula1;
    return words === undefined ? [] : [{ kind: "list", words, ...said }];
  }
  const [min, max] = [Number(one.formula1), Number(one.formula2)];
  const isNumber = one.type === "whole" || one.type === "decimal";
  if (!isNumber || !Number.isFinite(min) || !Number.isFinite(max)) return [];
  return [{ kind: "between", min, max, whole: one.type === "whole", ...said }];
}

/** A rule may stand for several areas, written with spaces between. */
function areasOf(range: string): Area[] {
  return range.split(/\s+/).flatMap((one) => parseAddress(one)?.area ?? []);
}
