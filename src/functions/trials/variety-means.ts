import { varietyMeans as varietyMeansOf } from "../../core/trials/variety-means";
import { line, listWithGaps, optional, choice, worksheetFunction } from "../frame";
import { names, yields } from "./trial-arguments";
import { confidence } from "../chance";
import { yesNoWords } from "../yes-no";

const yesNo = yesNoWords("answer");

export const varietyMeans = worksheetFunction({
  name: "VARIETYMEANS",
  family: "trials",
  summary: "Varieties over several locations, pulled toward the mean as far as the trials are noisy, ranked.",
  asks: ["which variety to plant", "rank hybrids over locations", "best variety", "compare hybrids"],
  args: {
    varieties: names("variety of each plot mean"),
    locations: names("location or year of each, row for row"),
    yields: yields("yield of each, row for row; blank where it was not grown"),
    mustHave: optional(
      listWithGaps(
        { ...choice(yesNo, { says: "yes or no" }), zeroIsBlank: false },
        {
          says: "no where a variety lacks a trait you need: it informs the trial but is not ranked; blank is yes",
        },
      ),
      null,
      "all are ranked",
    ),
    confidence: confidence(90),
  },
  returns: {
    shape: "table",
    unit: "bu/ac",
    says: "a row per variety, best first: locations, mean, shrunken mean with its range, chance of being the best of those ranked",
  },
  sources: ["robinson-1991", "gomez-gomez-1984"],
  cautions: [
    "The highest mean of many is partly luck; the shrunken mean is what to expect of the variety in another field like these.",
    "Standing, disease, maturity and herbicide traits decide before yield does; plots elsewhere speak for your ground only as far as they resemble it.",
  ],
  example: {
    call: [
      [["A"], ["A"], ["A"], ["B"], ["B"], ["B"], ["C"], ["C"], ["C"]],
      [["north"], ["middle"], ["south"], ["north"], ["middle"], ["south"], ["north"], ["middle"], ["south"]],
      [[200], [190], [180], [208], [189], [185], [190], [194], [171]],
    ],
    gives: [
      [
        "Variety",
        "Locations",
        "Mean, bu/ac",
        "Shrunken mean, bu/ac",
        "Likely from, bu/ac",
        "Likely to, bu/ac",
        "Best, chance (0 to 1)",
      ],
      ["B", 3, 194, 191.2413, 187.6739, 194.8088, 0.630254],
      ["A", 3, 190, 189.7878, 186.2204, 193.3552, 0.285847],
      ["C", 3, 185, 187.9709, 184.4034, 191.5383, 0.083899],
    ],
    because:
      "by hand: mean square of varieties 61, of error 38.833; variety variance (61 − 38.833) / 3 = 7.389, so 0.3634 of each difference from 189.667 is kept; chances from another program (SciPy)",
  },
  compute: (values) =>
    varietyMeansOf({
      varieties: values.varieties,
      locations: values.locations,
      yields: values.yields,
      hasTraits: values.mustHave?.map((answer) => answer !== "no") ?? null,
      confidencePct: values.confidence,
    }),
  value: (result) => [
    [
      "Variety",
      "Locations",
      "Mean, bu/ac",
      "Shrunken mean, bu/ac",
      "Likely from, bu/ac",
      "Likely to, bu/ac",
      "Best, chance (0 to 1)",
    ],
    ...result.varieties.map((row) => [
      row.variety,
      row.locations,
      row.mean,
      row.shrunkenMean,
      row.low,
      row.high,
      row.bestChance,
    ]),
  ],
  working: (result) => [
    line("Locations", result.locations),
    line("True varieties differ by (SD)", result.varietySd, "bu/ac"),
    line("A variety at one location differs by (SD)", result.locationSd, "bu/ac"),
    line("Share of a difference that is believed", result.heritablePct, "%"),
    ...(result.leftOut.length > 0 ? [line("Not ranked", result.leftOut.join(", "))] : []),
  ],
});
