/**
 * A change under discussion on the invented farm, with the gain a cautious, a likely and a hopeful person would name.
 * Gains and costs are invented in the range that field trials and budgets report; they are examples to overwrite.
 */
export interface PracticeExample {
  readonly change: string;
  readonly field: string;
  readonly lowGainBuPerAc: number;
  readonly likelyGainBuPerAc: number;
  readonly highGainBuPerAc: number;
  readonly addedCostUsdPerAc: number;
  readonly savedCostUsdPerAc: number;
  readonly decision: "yes" | "no" | "test";
}

export const practiceExamples: readonly PracticeExample[] = [
  practice("potash before soybean", "Mill Road", [1.5, 4.5, 8], [42, 0], "yes"),
  practice("seed treatment with inoculant", "Home Quarter", [0, 1.2, 2.5], [14, 0], "test"),
  practice("narrower rows, lower rate", "Twin Oaks", [0.5, 2, 4], [10, 9], "yes"),
  practice("second residual herbicide group", "North Flat", [0.5, 2.5, 6], [18, 0], "yes"),
  practice("fungicide pass at pod set", "Home Quarter", [0, 2.3, 5], [29, 0], "test"),
  practice("foliar micronutrient", "North Flat", [-0.5, 0.3, 1.5], [12, 0], "no"),
  practice("tile, a year's share", "Creek Bend", [3, 7, 12], [92, 0], "no"),
];

function practice(
  change: string,
  field: string,
  [lowGainBuPerAc, likelyGainBuPerAc, highGainBuPerAc]: readonly [number, number, number],
  [addedCostUsdPerAc, savedCostUsdPerAc]: readonly [number, number],
  decision: PracticeExample["decision"],
): PracticeExample {
  return {
    change,
    field,
    lowGainBuPerAc,
    likelyGainBuPerAc,
    highGainBuPerAc,
    addedCostUsdPerAc,
    savedCostUsdPerAc,
    decision,
  };
}
