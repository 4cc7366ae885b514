import { nitrogenNeed } from "../../../../functions/soil/nitrogen-need";
import { phosphateNeed, potashNeed } from "../../../../functions/soil/nutrient-need";
import { microNeed } from "../../../../functions/soil/micro-need";
import { sulfurNeed } from "../../../../functions/soil/sulfur-need";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { orBlank } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { FarmContext } from "../farm-context";
import { fromSoilTest } from "../field-lookup";
import { guidesWhere, isOneOf, lateTestGuides, nitrateGuides, sulfateGuides, turnsOnCec } from "./guide-facts";
import { named } from "../names";

/** A crop on a field, as the guide is asked about it. */
export interface Asked {
  readonly field: Term;
  readonly crop: Term;
  readonly goal: Term;
  /** The crop before it. */
  readonly before: Term;
}

/** Why a guide gives no number, in words short enough for its column. */
const why = {
  crop: "waits for crop",
  goal: "waits for goal",
  test: "waits for test",
  cec: "waits for CEC",
  method: "other method",
  noMethod: "needs a method",
  later: "by June test",
  low: "low, no rate",
  none: "no rate here",
} as const;

/** Under the table: what the words mean. */
export const whyInWords =
  "no rate here: the guide, as far as this workbook has it, prints no rate for that crop, test or yield. Nothing is borrowed from another state: take it " +
  "from the current bulletin and type your own rate. low, no rate: below the guide's level, but no rate is printed. other method: the guide is not made for that extraction.";

const guide = named("guide");

/** P2O5 by the guide, lb/ac, or why there is none. */
export function phosphateByGuide(asked: Asked, testUnit: FarmContext["testUnit"]): Expression {
  const test = fromSoilTest(asked.field, "phosphorus");
  const method = named("phosphorusMethod");
  const need = call(phosphateNeed, {
    crop: asked.crop,
    yieldGoal: asked.goal,
    soilTest: test,
    guide,
    method,
    rotationCrop: asked.before,
    ...guideDetails(testUnit),
  });
  return orWhy(need, asked, [noNumber(test, why.test), ...methodReasons(method, "guide.takesP")], guideWaits());
}

/** K2O by the guide, lb/ac, or why there is none. */
export function potashByGuide(asked: Asked, testUnit: FarmContext["testUnit"]): Expression {
  const test = fromSoilTest(asked.field, "potassium");
  const cec = fromSoilTest(asked.field, "cec");
  const method = named("potassiumMethod");
  const need = call(potashNeed, {
    crop: asked.crop,
    yieldGoal: asked.goal,
    soilTest: test,
    guide,
    cec,
    method,
    ...guideDetails(testUnit),
  });
  const waitsForCec = formula`AND(COUNT(${cec})=0,${isOneOf(guide, guidesWhere(turnsOnCec))})`;
  return orWhy(
    need,
    asked,
    [noNumber(test, why.test), ...methodReasons(method, "guide.takesK"), [waitsForCec, why.cec]],
    guideWaits(),
  );
}

/** N by the guide's own formula, lb/ac, or why there is none. */
export function nitrogenByGuide({ field, crop, goal, before }: Asked): Expression {
  const nitrate = formula`IF(${isOneOf(guide, nitrateGuides)},${fromSoilTest(field, "nitrate")},"")`;
  const ask = (soilNitrate: Term, organicMatter: Term, soil: Term) =>
    call(nitrogenNeed, { crop, yieldGoal: goal, guide, previousCrop: before, soilNitrate, organicMatter, soil });
  const need = ask(nitrate, fromSoilTest(field, "organicMatter"), wordsOfTexture(field));
  const isLate = formula`AND(${crop}="corn",${isOneOf(guide, lateTestGuides)})`;
  // Asked again with a test of 0: a number says that only the test is missing.
  const isWaiting = formula`ISNUMBER(${ask(0, 3, "medium")})`;
  return orWhy(
    need,
    { field, crop, goal, before },
    [
      [isLate, why.later],
      [isWaiting, why.test],
    ],
    why.none,
  );
}

/** S by the guide, lb/ac, or why there is none. */
export function sulfurByGuide({ field, crop, goal, before }: Asked): Expression {
  const organicMatter = fromSoilTest(field, "organicMatter");
  const profile = fromSoilTest(field, "sulfate");
  const test = formula`IF(${isOneOf(guide, sulfateGuides)},${profile},${fromSoilTest(field, "sulfur")})`;
  const need = call(sulfurNeed, {
    crop,
    yieldGoal: goal,
    organicMatter,
    guide,
    soilTest: test,
    soil: wordsOfTexture(field),
  });
  const isHeld = formula`ISNUMBER(${call(sulfurNeed, { crop, yieldGoal: goal, organicMatter: 3, guide, soilTest: 0, soil: "medium" })})`;
  const isTested = formula`COUNT(${test},${organicMatter})=2`;
  const held = formula`IF(${isTested},${why.low},${why.test})`;
  return orWhy(need, { field, crop, goal, before }, [[isHeld, held]], why.none);
}

/** Zn by the guide, lb/ac broadcast, or why there is none. Asked only with the extraction that the guide reads. */
export function zincByGuide({ field, crop, goal, before }: Asked): Expression {
  const reads = place("guide.zincTest");
  const test = fromSoilTest(field, "zinc");
  const ask = (soilTest: Term) =>
    call(microNeed, { nutrient: "Zn", crop, soilTest, pH: fromSoilTest(field, "ph"), guide, placement: "broadcast" });
  const need = ask(formula`IF(${named("zincMethod")}=${reads},${test},"")`);
  return orWhy(
    need,
    { field, crop, goal, before },
    [
      // With plenty of zinc every rule held says none; no number means no rule for the crop.
      [formula`ISNUMBER(${ask(1000)})=FALSE`, why.none],
      noNumber(test, why.test),
      [formula`${named("zincMethod")}<>${reads}`, why.method],
    ],
    why.low,
  );
}

type Reason = readonly [when: Expression, words: Term];

/** The need; otherwise the first reason that holds, the last one when none does. */
function orWhy(need: Expression, { crop, goal }: Asked, reasons: readonly Reason[], last: Term): Expression {
  const all: readonly Reason[] = [[formula`${crop}=""`, why.crop], noNumber(goal, why.goal), ...reasons];
  const words = all.reduceRight<Expression>(
    (rest, [when, reason]) => formula`IF(${when},${reason},${rest})`,
    formula`${last}`,
  );
  return formula`IFERROR(${need},${words})`;
}

function noNumber(value: Term, words: string): Reason {
  return [formula`COUNT(${value})=0`, words];
}

/** Named and not taken, or not named where the guide takes several. */
function methodReasons(method: Term, takes: string): Reason[] {
  const isTaken = formula`ISNUMBER(SEARCH("; "&${method}&";","; "&${place(takes)}&";"))`;
  const several = formula`ISNUMBER(SEARCH(";",${place(takes)}))`;
  return [
    [formula`AND(${method}&""<>"",${isTaken}=FALSE)`, why.method],
    [formula`AND(${method}&""="",${several})`, why.noMethod],
  ];
}

/** What a guide still wants to know, from the sheet of assumptions. */
function guideWaits(): Expression {
  const waits = place("guide.waits");
  return formula`IF(${waits}="nothing",${why.none},"needs "&${waits})`;
}

/** What some guides ask for besides the crop and the test. */
function guideDetails(testUnit: FarmContext["testUnit"]) {
  return {
    approach: named("approach"),
    group: named("soilGroup"),
    years: orBlank(named("buildYears")),
    ...(testUnit !== null && { testUnit }),
  };
}

function wordsOfTexture(field: Term): Expression {
  return fromSoilTest(field, "texture");
}
