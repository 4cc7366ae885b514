import { formula, type Expression, type Term } from "../../../formula/expression";
import { capitalOf, shown } from "../../../formula/natives";
import type { RowsBlock } from "../../../model/block";
import { sentencesBlock } from "../../../model/rows";
import { practiceRows } from "../practices/practice-context";
import { practiceDecisions, practiceStack, practiceTable } from "../practices/practice-headers";
import { term } from "../practices/practice-terms-block";
import { setLine } from "../stack/stack-set-block";

/** The chosen set in a sentence, then each practice: what is done about it, and why. */
export function practicesInWords(): RowsBlock {
  return sentencesBlock("Practices, and why", [
    setSentence(),
    netSentence(),
    ...Array.from({ length: practiceRows }, (_, index) => practiceSentence(index + 1)),
  ]);
}

/** "● Taken up on soybean: 3 practices, $30.63 on an acre of it for 6.6 bu/ac expected." */
function setSentence(): Expression {
  const picked = setLine("picked");
  const many = formula`${picked}&IF(${picked}=1," practice, "," practices, ")`;
  const found = formula`"● Taken up on "&${term("crop")}&": "&${many}&${dollars(setLine("cost"))}&" on an acre of it for "&${shown(setLine("gain"), "0.0")}&" bu/ac expected."`;
  return formula`IF(COUNT(${picked})=0,"● Waits for practices.",IF(${picked}>0,${found},"● No practice is taken up: none pays within its budget."))`;
}

/** "● They net $38.83 an acre on average; 1 case in 10 nets less than $17.11." */
function netSentence(): Expression {
  const found = formula`"● They net "&${dollars(setLine("net"))}&" an acre on average; 1 case in 10 nets less than "&${dollars(setLine("low"))}&"."`;
  return formula`IF(COUNT(${setLine("picked")},${setLine("low")})=2,IF(${setLine("picked")}>0,${found},""),"")`;
}

/** "▲ Narrower rows, lower rate: taken up. $1.00/ac; pays from 0.1 bu/ac, 2.2 expected, odds 100%." */
function practiceSentence(row: number): Expression {
  const listed = (column: keyof typeof practiceTable.headers) => formula`INDEX(${practiceTable.all(column)},${row})`;
  const believed = (column: keyof typeof practiceDecisions.headers) =>
    formula`INDEX(${practiceDecisions.all(column)},${row})`;
  const stacked = (column: keyof typeof practiceStack.headers) => formula`INDEX(${practiceStack.all(column)},${row})`;
  const decision = believed("decision");
  const test = formula`IF(${decision}="test","; test on "&${believed("pairs")}&" pairs","")`;
  const isPicked = formula`${stacked("pick")}="yes"`;
  const isInBudget = formula`${listed("inBudget")}&""="yes"`;
  const said = formula`IF(${isPicked},"taken up",IF(${isInBudget},"in the budget","not taken up"))`;
  // What pays and is done points up; what pays and found no place in the set is as open as what is to be tested.
  const paying = formula`IF(${decision}="adopt",IF(${isInBudget},"▲ ","● "),"● ")`;
  const sign = formula`IF(${isPicked},"▲ ",IF(${decision}="skip","▼ ",${paying}))`;
  return formula`IF(COUNT(${believed("odds")})=0,"",${sign}&${capitalOf(listed("practice"))}&": "&${said}&${test}&". "&${figures(listed, believed)})`;
}

function figures(
  listed: (column: keyof typeof practiceTable.headers) => Expression,
  believed: (column: keyof typeof practiceDecisions.headers) => Expression,
): Expression {
  const pays = formula`"; pays from "&${shown(listed("pays"), "0.0")}&" bu/ac, "&${shown(believed("expected"), "0.0")}&" expected, odds "`;
  return formula`${dollars(listed("cost"))}&"/ac"&${pays}&${shown(believed("odds"), "0%")}&"."`;
}

function dollars(value: Term): Expression {
  return formula`${shown(value, "$0.00;-$0.00")}`;
}
