import { programGroups } from "../../../../functions/protection/program-groups";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { quiet } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { PlacedCell, RowsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { headRow } from "../../../model/rows";
import type { StarterCrop } from "../../../scenario/crop-examples";
import { passWords } from "./program-block";
import { programTables } from "./protection-headers";

/** A line for each pass, the season, last season and both. */
const lines = passWords.length + 3;
const flags = 6;
const lookAt = "Look at";

/** Groups by pass, how many are effective, and what to look at. */
export function groupsBlock(crop: StarterCrop): RowsBlock {
  const key = (line: number) => `groups.${crop}.${line}`;
  const said = formula`SUMPRODUCT((${place(key(1))}:${place(key(lines))}<>"")*1)`;
  return {
    kind: "rows",
    rows: [
      headRow("Pass or season", "Groups", "How many", "Effective", "Their groups"),
      ...Array.from({ length: lines }, (_, index) => groupLine(crop, index + 1, key(index + 1))),
      ...Array.from({ length: flags }, (_, index): PlacedCell[] => [
        { content: quiet(formula`"● "&${ofProgram(crop, formula`${said}+${index + 2}`, 2)}`), style: "body" },
      ]),
    ],
  };
}

function groupLine(crop: StarterCrop, line: number, key: string): PlacedCell[] {
  const name = ofProgram(crop, formula`${line + 1}`, 1);
  const beside = (column: number) =>
    quiet(formula`IF(${place(key)}="","",${ofProgram(crop, formula`${line + 1}`, column)})`);
  return [
    { key, content: quiet(formula`IF(${name}=${lookAt},"",${name})`), style: "computedText" },
    { content: beside(2), style: "computedText" },
    { content: beside(3), style: "computed", format: formats.whole },
    { content: beside(4), style: "computed", format: formats.whole },
    { content: beside(5), style: "computedText" },
  ];
}

function ofProgram(crop: StarterCrop, line: Expression, column: number): Expression {
  const all = programTables[crop].all;
  const table = call(programGroups, {
    activeIngredients: all("ingredient"),
    control: all("effective"),
    passes: all("pass"),
    lastSeason: all("last"),
  });
  return formula`INDEX(${table},${line},${column})`;
}
