import { formula } from "../../formula/expression";
import { sumOfAmounts, times, whenNamed, whenNumbers, wordsInRow } from "../../formula/natives";
import { formats } from "../../model/cell";
import { computed, computedWords } from "../../model/columns";
import { remarks } from "../../model/paragraphs";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { ClientContext } from "./client-context";
import { clientFields, comparison, proposals } from "./client-headers";
import { cropOfClientField, ofClientField } from "./client-lookup";
import { clientSheets } from "./client-sheets";

const own = comparison.own;
const field = own("field");

export function compareSheet({ rows }: ClientContext): SheetModel {
  return {
    key: "compare",
    name: clientSheets.compare.name,
    tabColor: tabColors.answer,
    title: "Now and then",
    answers: "Each field as it is farmed now, against the same field with the changes that were agreed.",
    blocks: [
      tableBlock(
        comparison,
        { rows, wholeLabel: "All fields" },
        { ...fieldColumns(), ...changeColumns(), ...totalColumns() },
      ),
      remarks(
        "Changes on one field are added up as if each worked alone; two that work on the same thing add less than their sum.",
      ),
    ],
    freeze: { table: comparison.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function fieldColumns() {
  return {
    field: computedWords(wordsInRow(clientFields.all("field"), comparison.rowNumber), { width: 18 }),
    acres: computed(ofClientField(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(comparison.all("acres")),
    }),
    crop: computedWords(cropOfClientField(field), { width: 11 }),
    profitNow: computed(ofClientField(field, "profit"), { width: 12, format: formats.cents }),
  };
}

function changeColumns() {
  const agreed = formula`${proposals.all("field")},${field},${proposals.all("decision")},"yes"`;
  return {
    changes: computed(whenNamed(field, formula`COUNTIFS(${agreed})`), { width: 10, format: formats.whole }),
    netChange: computed(whenNamed(field, formula`SUMIFS(${proposals.all("net")},${agreed})`), {
      width: 11,
      format: formats.cents,
    }),
    profitThen: computed(
      whenNumbers([own("profitNow"), own("netChange")], formula`${own("profitNow")}+${own("netChange")}`),
      { width: 12, format: formats.cents, rules: [{ kind: "compare", when: "below", value: 0, look: "bad" }] },
    ),
  };
}

function totalColumns() {
  const total = (profit: "profitNow" | "profitThen") => times(own(profit), own("acres"));
  const dollars = { width: 13, format: formats.dollars };
  return {
    totalNow: computed(total("profitNow"), { ...dollars, whole: formula`SUM(${comparison.all("totalNow")})` }),
    totalThen: computed(total("profitThen"), { ...dollars, whole: formula`SUM(${comparison.all("totalThen")})` }),
  };
}
