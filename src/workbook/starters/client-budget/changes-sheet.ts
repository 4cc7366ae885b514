import { breakEvenGain, partialBudget, returnPerDollar } from "../../../functions/money/partial-budget";
import { limits } from "../../../core/limits";
import { call } from "../../formula/call";
import { formula, type Expression, type Term } from "../../formula/expression";
import { times, whenNamed, whenNumbers } from "../../formula/natives";
import { formats, type Allow } from "../../model/cell";
import { computed, computedWords, oneOf, pick, typedNumber, typedWords, within } from "../../model/columns";
import { cautions } from "../../model/paragraphs";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { ClientContext } from "./client-context";
import { proposals } from "./client-headers";
import { clientFieldList, cropOfClientField, ofClientCrop, ofClientField } from "./client-lookup";
import { clientSheets } from "./client-sheets";

const own = proposals.own;
const price = ofClientCrop(cropOfClientField(own("field")), "price");
const perBushel = ofClientCrop(cropOfClientField(own("field")), "costPerBushel");

const decisions = ["yes", "test", "no"] as const;

export function changesSheet(context: ClientContext): SheetModel {
  return {
    key: "changes",
    name: clientSheets.changes.name,
    tabColor: tabColors.answer,
    title: "Proposed changes",
    answers: "What each change adds and costs on an acre, and the gain in bushels that pays for it.",
    blocks: [
      tableBlock(
        proposals,
        { rows: context.proposalRows, wholeLabel: "Changes agreed" },
        { ...whatColumns(context), ...gainColumns(context), ...costColumns(context), ...answerColumns() },
      ),
      cautions(
        "A pesticide, a rate or a mix is only an option where the label and the state allow it for this crop, and where a licensed person applies it when that is called for.",
      ),
    ],
    freeze: { table: proposals.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function whatColumns({ practices }: ClientContext) {
  return {
    change: typedWords(pick(practices, "change"), { width: 29, note: "What would be done otherwise, in a few words." }),
    field: typedWords(pick(practices, "field"), { width: 14, allow: clientFieldList }),
    decision: typedWords(pick(practices, "decision"), {
      width: 10,
      allow: oneOf(decisions, "yes: do it; test: a strip trial first; no: leave it."),
      note: "yes counts in the comparison of now and then; test and no do not.",
    }),
  };
}

function gainColumns({ practices }: ClientContext) {
  const gain: Allow = {
    kind: "between",
    min: -100,
    max: 200,
    prompt: "Bushels per acre over doing nothing; below zero is a loss.",
  };
  const bushels = { width: 9, format: formats.signedOne, allow: gain };
  return {
    low: typedNumber(pick(practices, "lowGainBuPerAc"), {
      ...bushels,
      note: "A gain you would bet on nine years in ten.",
    }),
    likely: typedNumber(pick(practices, "likelyGainBuPerAc"), bushels),
    high: typedNumber(pick(practices, "highGainBuPerAc"), {
      ...bushels,
      note: "A gain you would see one year in ten.",
    }),
  };
}

function costColumns({ practices }: ClientContext) {
  const dollars = { width: 10, format: formats.cents };
  return {
    added: typedNumber(pick(practices, "addedCostUsdPerAc"), {
      ...dollars,
      allow: within(limits.price, "Material, pass and labor of an acre"),
    }),
    saved: typedNumber(pick(practices, "savedCostUsdPerAc"), {
      ...dollars,
      allow: within(limits.price, "Costs the change saves on an acre"),
    }),
    lost: typedNumber([], { ...dollars, allow: within(limits.price, "Income the change gives up on an acre") }),
  };
}

function answerColumns() {
  const known = (value: Term) => whenNamed(own("change"), value);
  const spent = formula`${own("added")}+MAX(0,${own("likely")})*${perBushel}`;
  const back = formula`MAX(0,${own("likely")})*${price}+N(${own("saved")})`;
  return {
    acres: computed(ofClientField(own("field"), "acres"), { width: 9, format: formats.one }),
    net: computed(known(whenNumbers([own("likely"), own("added")], netAt(own("likely")))), moneyLook("likely")),
    netLow: computed(known(whenNumbers([own("low"), own("added")], netAt(own("low")))), moneyLook("low")),
    total: computed(times(own("net"), own("acres")), {
      width: 11,
      format: formats.dollars,
      whole: formula`SUMIF(${proposals.all("decision")},"yes",${proposals.all("total")})`,
    }),
    breakEven: computed(known(whenNumbers([own("added")], breakEven())), {
      width: 10,
      format: formats.one,
      note: "Bushels per acre that pay for the change after what it saves and what hauling them costs.",
    }),
    perDollar: computed(
      known(
        whenNumbers(
          [own("likely"), own("added")],
          formula`IF(${spent}>0,${call(returnPerDollar, { addedReturns: back, addedCosts: spent })},"")`,
        ),
      ),
      { width: 9, format: formats.two, note: "At the likely gain; above 1 it pays." },
    ),
    words: computedWords(known(meaning()), { width: 26 }),
  };
}

function moneyLook(gain: "likely" | "low") {
  return {
    width: 10,
    format: formats.cents,
    note: `Net of the partial budget at the ${gain} gain.`,
    rules: [{ kind: "compare", when: "below", value: 0, look: "bad" }],
  } as const;
}

/** The partial budget of an acre at a gain; a gain below zero is income given up. */
function netAt(gain: Term): Expression {
  return call(partialBudget, {
    addedReturns: formula`MAX(0,${gain})*${price}`,
    reducedCosts: formula`N(${own("saved")})`,
    addedCosts: formula`${own("added")}+MAX(0,${gain})*${perBushel}`,
    reducedReturns: formula`N(${own("lost")})+MAX(0,-${gain})*${price}`,
  });
}

function breakEven(): Expression {
  const cost = formula`MAX(0,${own("added")}-N(${own("saved")})+N(${own("lost")}))`;
  return call(breakEvenGain, { cost, price, costPerBushel: perBushel });
}

/** "▲ pays even at the low gain", and so on. */
function meaning(): Expression {
  const pays = formula`IF(${own("netLow")}>=0,"▲ pays even at the low gain",IF(${own("net")}>=0,"● pays at the likely gain","▼ does not pay"))`;
  return formula`IF(COUNT(${own("net")},${own("netLow")})=2,${pays},"● waits for its figures")`;
}
