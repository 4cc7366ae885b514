import { headersOf } from "../../../model/table";

/** What is known of each practice before a trial, and what that says. */
export const practiceTable = headersOf("Practices", {
  practice: "Practice",
  field: "Field",
  acres: "Acres",
  inBudget: "In the budget now",
  cost: "Cost $/ac",
  low: "Low gain bu/ac",
  likely: "Likely gain bu/ac",
  high: "High gain bu/ac",
  pairCost: "A pair of strips $",
  pays: "Gain that pays bu/ac",
  odds: "Odds that it pays",
  net: "Expected net $/ac",
});

/** What the trials said, one row a trial. */
export const trialResults = headersOf("TrialResults", {
  practice: "Practice",
  field: "Field",
  trial: "Trial",
  pairs: "Pairs",
  gain: "Gain bu/ac",
  spread: "SE bu/ac",
  from: "Likely from bu/ac",
  to: "Likely to bu/ac",
  luck: "By luck p",
  pays: "Pays with chance",
  weight: "Weight",
  weighted: "Weight times gain",
});

/** What to believe after the trials, and what to do. */
export const practiceDecisions = headersOf("PracticeDecisions", {
  practice: "Practice",
  decision: "Decision",
  odds: "Odds now",
  expected: "Expected gain bu/ac",
  sd: "Give or take bu/ac",
  net: "Expected net $/ac",
  testValue: "A test is worth $",
  pairs: "Pairs to lay",
  testAcres: "Acres to test on",
  trialGain: "Trials gained bu/ac",
  trialSpread: "Their SE bu/ac",
  low: "Low now bu/ac",
  likely: "Likely now bu/ac",
  high: "High now bu/ac",
});

const stripHeaders = {
  block: "Block",
  left: "Left strip",
  right: "Right strip",
  check: "Check as weighed",
  checkMoisture: "Check moisture %",
  treated: "Treated as weighed",
  treatedMoisture: "Treated moisture %",
  checkYield: "Check bu/ac",
  treatedYield: "Treated bu/ac",
  difference: "Treated less check bu/ac",
} as const;

/** Strips of each trial sheet, a row a pair. */
export const stripTables = [headersOf("TrialStrips1", stripHeaders), headersOf("TrialStrips2", stripHeaders)] as const;

const drawnHeaders = {
  block: "Block",
  difference: "Treated less check bu/ac",
  gain: "Mean gain bu/ac",
  from: "Likely from bu/ac",
  to: "Likely to bu/ac",
  pays: "Pays from bu/ac",
} as const;

/** What the chart of each trial sheet is drawn from, a row a pair. */
export const drawnTables = [headersOf("TrialDrawn1", drawnHeaders), headersOf("TrialDrawn2", drawnHeaders)] as const;

export type DrawnTable = (typeof drawnTables)[number];

export type StripTable = (typeof stripTables)[number];

/** The practices on an acre of the crop, and the set that nets most. */
export const practiceStack = headersOf("PracticeStack", {
  practice: "Practice",
  share: "Share of the crop",
  cost: "Cost on a crop acre $/ac",
  gain: "Gain on a crop acre bu/ac",
  leaveOut: "Leave out",
  notWith: "Does not go with",
  needs: "Cannot do without",
  pick: "Pick",
  adds: "Adds to the set $/ac",
  spread: "Give or take bu/ac",
  why: "Why",
});
