import { limits } from "../../core/limits";
import { cations, type CationInput, type Cations } from "../../core/soil/cations";
import { soilLimits } from "../../core/soil/soil-limits";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { acidityBufferWords } from "../words";
import { checkLines } from "../check-lines";

const args = {
  calcium: quantity(soilLimits.calcium, { says: "soil-test calcium" }),
  magnesium: quantity(soilLimits.magnesium, { says: "soil-test magnesium" }),
  potassium: quantity(soilLimits.potassium, { says: "soil-test potassium" }),
  sodium: optional(quantity(soilLimits.sodium, { says: "soil-test sodium" }), 0, "not counted"),
  bufferPH: optional(
    quantity(limits.bufferPh, { says: "buffer pH, for the acidity" }),
    null,
    "waited for unless pH is above 7 or the acidity is given",
  ),
  buffer: optional(
    choice(acidityBufferWords, { says: "buffer the laboratory used: SMP or Adams-Evans" }),
    null,
    "waited for where a buffer pH is read",
  ),
  pH: optional(quantity(limits.soilPh, { says: "soil pH; no acidity is counted above 7" }), null, "not given"),
  acidity: optional(
    quantity(limits.exchangeableAcidity, { says: "acidity as the laboratory reports it, in place of a buffer pH" }),
    null,
    "from the buffer pH",
  ),
};

interface Values {
  readonly calcium: number;
  readonly magnesium: number;
  readonly potassium: number;
  readonly sodium: number;
  readonly bufferPH: number | null;
  readonly buffer: CationInput["buffer"];
  readonly pH: number | null;
  readonly acidity: number | null;
}

const read = (values: Values): Cations =>
  cations({
    calciumPpm: values.calcium,
    magnesiumPpm: values.magnesium,
    potassiumPpm: values.potassium,
    sodiumPpm: values.sodium,
    bufferPh: values.bufferPH,
    buffer: values.buffer,
    soilPh: values.pH,
    acidityMeq: values.acidity,
  });

const sources = ["clemson-cec", "ohio-valley-cec"] as const;
const inflated =
  "Free lime in the soil is counted as calcium: above pH 7.4, or soon after liming, the figure is too high.";

export const soilCec = worksheetFunction({
  name: "SOILCEC",
  family: "soil",
  summary: "Cation exchange capacity from the soil-test cations and the acidity.",
  asks: ["what is my CEC", "cation exchange capacity", "CEC from a soil test"],
  args,
  returns: { shape: "one", unit: "meq/100 g", says: "cation exchange capacity by the sum of cations" },
  sources,
  cautions: [inflated],
  example: {
    call: [1600, 240, 195.5, null, null, null, null, 2],
    gives: 12.5,
    because: "by hand: 1600 / 200 + 240 / 120 + 195.5 / 391 + 2 = 8 + 2 + 0.5 + 2",
  },
  compute: read,
  value: (result) => result.cecMeq,
  working: meqLines,
  cites: (result) => result.cited,
});

export const baseShare = worksheetFunction({
  name: "BASESHARE",
  family: "soil",
  summary: "Share of the exchange capacity that each cation holds.",
  asks: ["base saturation", "percent calcium and magnesium", "share of potassium on the exchange"],
  args,
  returns: { shape: "table", unit: "% of CEC", says: "each cation, its meq/100 g and its share; the bases together" },
  sources,
  cautions: ["To read, not to fertilize by: most land-grant guides do not recommend by base ratios.", inflated],
  example: {
    call: [1600, 240, 195.5, null, null, null, null, 2],
    gives: [
      ["Cation", "meq/100 g", "% of CEC"],
      ["calcium", 8, 64],
      ["magnesium", 2, 16],
      ["potassium", 0.5, 4],
      ["sodium", 0, 0],
      ["acidity", 2, 16],
      ["all bases", 10.5, 84],
    ],
    because: "by hand: 8, 2, 0.5 and 2 of 12.5 meq",
  },
  compute: read,
  value: (result) => [
    ["Cation", "meq/100 g", "% of CEC"],
    ...rowsOf(result).map(([name, meq]) => [name, meq, (100 * meq) / result.cecMeq]),
  ],
  working: meqLines,
  cites: (result) => result.cited,
});

function rowsOf(result: Cations): [string, number][] {
  return [
    ["calcium", result.calciumMeq],
    ["magnesium", result.magnesiumMeq],
    ["potassium", result.potassiumMeq],
    ["sodium", result.sodiumMeq],
    ["acidity", result.acidityMeq],
    ["all bases", result.basesMeq],
  ];
}

function meqLines(result: Cations): WorkingLine[] {
  return [
    ...rowsOf(result).map(([name, meq]) => line(name, meq, "meq/100 g")),
    line("Acidity from", result.acidityFrom),
    line("CEC", result.cecMeq, "meq/100 g"),
    ...(result.isInflated ? [line("Look twice", inflated)] : []),
    ...checkLines(result.cited),
  ];
}
