import { formula, type Expression, type Term } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords, oneOf, typedWords } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { PracticeContext } from "../practices/practice-context";
import { practiceStack, practiceTable } from "../practices/practice-headers";
import { besideDecision, besidePractice, practiceOfRow } from "../practices/practice-lookup";
import { term } from "../practices/practice-terms-block";
import { pickCell, pickColumns, whenOffered } from "./stack-pick";
import { stackTerm } from "./stack-terms-block";

const own = practiceStack.own;
const name = own("practice");
const inBudget = besidePractice(practiceStack, "inBudget");

function saysYes(cell: Term): Expression {
  return formula`${cell}&""="yes"`;
}

const notes = {
  share: "Acres of the practice over all acres of the crop.",
  cost: "Cost times share. Blank where the crop budget pays for the practice already, or where it is left out.",
  gain: "Expected gain, after the trials, times share.",
  leaveOut: "yes: not this season, whatever it nets. A practice still to be tested may wait here.",
  notWith: "A practice that cannot stand beside this one.",
  needs: "A practice that has to be there for this one to work.",
  adds: "What the set would lose without it, or gain with it.",
  spread: "Standard deviation of the belief, times share; only of those picked.",
};

export function stackTableBlock({ rows }: PracticeContext): TableBlock {
  return tableBlock(
    practiceStack,
    { title: "The practices, on an acre of the crop", rows },
    { ...offerColumns(), ...wishColumns(), ...pickColumnsOf() },
  );
}

function offerColumns() {
  const isKept = formula`OR(${saysYes(inBudget)},${saysYes(own("leaveOut"))})`;
  const offered = (value: Term) => formula`IF(${isKept},"",${value})`;
  const cost = besidePractice(practiceStack, "cost");
  const gain = besideDecision(practiceStack, "expected");
  const acres = besidePractice(practiceStack, "acres");
  return {
    practice: computedWords(practiceOfRow(practiceStack), { width: 31 }),
    share: computed(whenNumbers([acres, term("acres")], formula`IF(${term("acres")}>0,${acres}/${term("acres")},0)`), {
      width: 14,
      format: formats.chance,
      note: notes.share,
    }),
    cost: computed(whenNumbers([own("share"), cost, gain], offered(formula`${cost}*${own("share")}`)), {
      width: 10,
      format: formats.cents,
      note: notes.cost,
    }),
    gain: computed(whenNumbers([own("share"), cost, gain], offered(formula`${gain}*${own("share")}`)), {
      width: 10,
      format: formats.signedOne,
      note: notes.gain,
    }),
  };
}

function wishColumns() {
  const practices = oneOf({ table: practiceTable.table, column: "practice" }, "A practice from the list of practices.");
  return {
    leaveOut: typedWords([], { width: 9, allow: oneOf(["yes", "no"], "yes to leave it out."), note: notes.leaveOut }),
    notWith: typedWords([], { width: 14, allow: practices, note: notes.notWith }),
    needs: typedWords([], { width: 14, allow: practices, note: notes.needs }),
  };
}

function pickColumnsOf() {
  const row = formula`${practiceStack.rowNumber}+1`;
  const cell = (column: number) => pickCell(stackTerm("interaction"), row, column);
  const isOffered = formula`COUNT(${own("cost")})=1`;
  const sd = besideDecision(practiceStack, "sd");
  return {
    pick: computedWords(whenNamed(name, whenOffered(formula`IF(${isOffered},${cell(pickColumns.pick)},"")`)), {
      width: 7,
      rules: [{ kind: "formula", formula: formula`${own("pick")}="yes"`, look: "good" }],
    }),
    adds: computed(whenOffered(formula`IF(${isOffered},${cell(pickColumns.adds)},"")`), {
      width: 10,
      format: formats.cents,
      note: notes.adds,
    }),
    spread: computed(formula`IF(${own("pick")}="yes",${sd}*${own("share")},"")`, {
      width: 9,
      format: formats.two,
      note: notes.spread,
    }),
    why: computedWords(
      whenNamed(
        name,
        formula`IF(${own("pick")}="yes","in the set",IF(${isOffered},${cell(pickColumns.why)},${whyNotOffered()}))`,
      ),
      { width: 40 },
    ),
  };
}

function whyNotOffered() {
  return formula`IF(${saysYes(inBudget)},"in the crop budget already",IF(${saysYes(own("leaveOut"))},"left out","waits for its figures"))`;
}
