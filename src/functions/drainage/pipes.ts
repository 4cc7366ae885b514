import { drainageLimits } from "../../core/drainage/drainage-limits";
import {
  leastGrade as leastGradeOf,
  longestLateral as longestLateralOf,
  pipeCapacity as pipeCapacityOf,
  pipeSize as pipeSizeOf,
  type PipeCapacity,
} from "../../core/drainage/pipe-capacity";
import { choice, line, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { checkLines } from "../check-lines";
import { diameter, drainRate, grade, roughness, spacing } from "./drain-arguments";
import { sedimentWords } from "./drainage-words";
import { digging, drainageDesign, drainageLaw } from "../cautions";

function flowLines(result: PipeCapacity): WorkingLine[] {
  return [
    line("Roughness (Manning n)", result.manningN),
    line("Velocity, flowing full", result.velocityFtPerS, "ft/s"),
    line("Flow", result.flowCuFtPerS, "cu ft/s"),
    line("Least grade, no fine sand or silt", result.leastGradePct, "%"),
    line("Least grade, fine sand or silt may enter", result.leastGradeSiltPct, "%"),
    line("Speed", result.verdict),
  ];
}

export const pipeCapacity = worksheetFunction({
  name: "PIPECAPACITY",
  family: "drainage",
  summary: "Acres that a tile main or lateral drains at its grade.",
  asks: ["how many acres will this tile drain", "capacity of 8 inch tile", "is my tile main big enough"],
  args: { diameter, grade, drainRate, roughness },
  returns: { shape: "one", unit: "ac", says: "acres drained with the pipe flowing full" },
  sources: ["manning-full-flow", "asae-ep260", "nrcs-neh-650-14", "uw-madison-tile", "dual-wall-practice"],
  cautions: [digging, drainageLaw, drainageDesign],
  example: {
    call: [8, 0.1, 0.375],
    gives: 21.02,
    tolerance: 0.01,
    because:
      "by hand: 1.486 / 0.015 × (8 / 48)^(2/3) × 0.001^(1/2) = 0.9488 ft/s × 0.34907 sq ft = 0.3312; / (0.375 × 0.042014)",
  },
  compute: (values) =>
    pipeCapacityOf({
      diameterIn: values.diameter,
      gradePct: values.grade,
      rateInPerDay: values.drainRate,
      wall: values.roughness,
    }),
  value: (result) => result.acres,
  working: (result) => [...flowLines(result), line("Drains", result.acres, "ac"), ...checkLines(result.cited)],
  cites: (result) => result.cited,
});

export const pipeSize = worksheetFunction({
  name: "PIPESIZE",
  family: "drainage",
  summary: "Stock size of the pipe that drains the acres at a grade.",
  asks: ["what size tile main do I need", "tile size for 40 acres"],
  args: {
    acres: quantity(drainageLimits.acres, { says: "all acres that drain through the pipe" }),
    grade,
    drainRate,
    roughness,
  },
  returns: { shape: "one", unit: "in", says: "nominal inside diameter, the smallest in stock that does" },
  sources: ["manning-full-flow", "asae-ep260", "nrcs-neh-650-14", "uw-madison-tile", "dual-wall-practice"],
  cautions: [digging, drainageLaw, drainageDesign],
  example: {
    call: [40, 0.2, 0.375],
    gives: 10,
    because: "by hand: 0.375 × 40 / 23.80 = 0.6302 cu ft/s needs 9.37 in at n 0.017, and 8 in drains 29.7 ac",
  },
  compute: (values) =>
    pipeSizeOf({
      acres: values.acres,
      gradePct: values.grade,
      rateInPerDay: values.drainRate,
      wall: values.roughness,
    }),
  value: (result) => result.sizeIn,
  working: (result) => [
    line("Flow to carry", result.neededFlowCuFtPerS, "cu ft/s"),
    line("Diameter that would just do", result.exactIn, "in"),
    line("Stock size", result.sizeIn, "in"),
    line("Drains", result.capacity.acres, "ac"),
    ...flowLines(result.capacity),
    line("Mind", "going down the line the size never gets smaller"),
    ...checkLines(result.capacity.cited),
  ],
  cites: (result) => result.capacity.cited,
});

export const leastGrade = worksheetFunction({
  name: "LEASTGRADE",
  family: "drainage",
  summary: "Least grade at which a tile keeps itself clean.",
  asks: ["how flat can tile be laid", "minimum grade for 4 inch tile"],
  args: {
    diameter,
    sediment: choice(sedimentWords, { says: "whether fine sand or silt may enter: none or silt" }),
    roughness,
  },
  returns: { shape: "one", unit: "%", says: "feet of fall in 100 ft" },
  sources: ["manning-full-flow", "uw-madison-tile", "umn-drainage-2001", "asae-ep260"],
  cautions: [digging, drainageDesign],
  example: {
    call: [4, "silt"],
    gives: 0.549,
    tolerance: 0.0005,
    because: "by hand: (1.4 × 0.015 / (1.486 × (1/12)^(2/3)))² × 100 = (0.021 / 0.28351)² × 100; printed 0.55",
  },
  compute: (values) => leastGradeOf(values.diameter, values.sediment, values.roughness),
  value: (result) => result.gradePct,
  working: (result) => [
    line("Velocity to keep", result.velocity.feetPerSecond, "ft/s"),
    line("Roughness (Manning n)", result.manningN),
    line("Least grade", result.gradePct, "%"),
    line("Fall in 100 ft", result.fallInPer100Ft, "in"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const lateralLength = worksheetFunction({
  name: "LATERALLENGTH",
  family: "drainage",
  summary: "Longest lateral of one size before it is full.",
  asks: ["how long can a 4 inch lateral be", "maximum tile run"],
  args: { diameter, grade, drainRate, spacing, roughness },
  returns: { shape: "one", unit: "ft", says: "length at which the pipe flows full at its lower end" },
  sources: ["manning-full-flow", "asae-ep260", "uw-madison-tile"],
  cautions: [digging, drainageDesign],
  example: {
    call: [4, 0.1, 0.375, 50],
    gives: 2884,
    tolerance: 1,
    because: "by hand: 0.05216 cu ft/s / (0.375 × 0.042014) = 3.3107 ac; × 43,560 / 50",
  },
  compute: (values) =>
    longestLateralOf(
      {
        diameterIn: values.diameter,
        gradePct: values.grade,
        rateInPerDay: values.drainRate,
        wall: values.roughness,
      },
      values.spacing,
    ),
  value: (result) => result.lengthFt,
  working: (result) => [
    ...flowLines(result.capacity),
    line("Drains", result.capacity.acres, "ac"),
    line("Longest lateral", result.lengthFt, "ft"),
    ...checkLines(result.capacity.cited),
  ],
  cites: (result) => result.capacity.cited,
});
