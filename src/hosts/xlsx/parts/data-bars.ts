import type { RulePlan, SheetPlan } from "../../../workbook/plan";
import { ruleLooks } from "../../../workbook/styles";
import { opaqueHex } from "../cell-styles";
import { replaceOnce } from "./package-parts";
import { areaAddress } from "../../address";

type Bar = RulePlan & { readonly kind: "bar" };

const x14 = "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main";
const xm = "http://schemas.microsoft.com/office/excel/2006/main";
const ruleExtension = "{B025F937-C7B1-47D3-B67F-A62EFF666E3E}";
const sheetExtension = "{78C0D931-6437-407d-A8EE-F0AAD7539E65}";

/** Bars that start at zero, are of one colour and turn the other way below zero: the younger half of a data bar. */
export function withDataBars(xml: string, sheet: SheetPlan, sheetIndex: number): string {
  const bars = sheet.rules.flatMap((rule, index) =>
    rule.kind === "bar" ? [{ rule, priority: index + 1, id: barId(sheetIndex, index) }] : [],
  );
  if (bars.length === 0) return xml;
  const linked = bars.reduce((text, { priority, id }) => linkRule(text, priority, id), xml);
  const rules = bars.map(({ rule, id }) => extendedRule(rule, id)).join("");
  const list = `<extLst><ext xmlns:x14="${x14}" uri="${sheetExtension}"><x14:conditionalFormattings>${rules}</x14:conditionalFormattings></ext></extLst>`;
  return replaceOnce(linked, "</worksheet>", `${list}</worksheet>`);
}

/** Ids must differ within a workbook and stay the same from one writing to the next. */
function barId(sheetIndex: number, ruleIndex: number): string {
  const number = (value: number, digits: number) => value.toString(16).toUpperCase().padStart(digits, "0");
  return `{10A35EE7-0000-4000-8000-${number(sheetIndex, 4)}${number(ruleIndex, 8)}}`;
}

function linkRule(xml: string, priority: number, id: string): string {
  const rule = new RegExp(`<cfRule type="dataBar" priority="${priority}">.*?</dataBar>`, "s").exec(xml)?.[0] ?? "";
  const link = `<extLst><ext xmlns:x14="${x14}" uri="${ruleExtension}"><x14:id>${id}</x14:id></ext></extLst>`;
  return replaceOnce(xml, rule, rule + link);
}

function extendedRule({ area }: Bar, id: string): string {
  return [
    `<x14:conditionalFormatting xmlns:xm="${xm}"><x14:cfRule type="dataBar" id="${id}">`,
    '<x14:dataBar minLength="0" maxLength="100" gradient="0"><x14:cfvo type="autoMin"/><x14:cfvo type="autoMax"/>',
    `<x14:negativeFillColor rgb="${opaqueHex(ruleLooks.bad.color)}"/><x14:axisColor rgb="FF7B838A"/></x14:dataBar>`,
    `</x14:cfRule><xm:sqref>${areaAddress(area)}</xm:sqref></x14:conditionalFormatting>`,
  ].join("");
}
