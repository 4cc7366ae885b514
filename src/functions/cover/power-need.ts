import { machineryLimits } from "../../core/machinery/machinery-limits";
import { powerNeed as powerNeedOf } from "../../core/machinery/power-need";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { draftSoilWords, draftWords } from "./cover-words";
import { machinery } from "../cautions";

export const powerNeed = worksheetFunction({
  name: "POWERNEED",
  family: "cover",
  summary: "Power at the drawbar that pulls a tillage tool or planter.",
  asks: ["how many horsepower to pull a chisel", "is my tractor big enough", "implement draft"],
  args: {
    implement: choice(draftWords, { says: "implement" }),
    width: quantity(machineryLimits.count, { says: "feet, tools or rows, as the implement is counted" }),
    mph: quantity(machineryLimits.mph, { says: "speed in the field" }),
    soil: choice(draftSoilWords, { says: "fine, medium or coarse soil" }),
    depth: optional(
      quantity(machineryLimits.depth, { says: "working depth" }),
      null,
      "needed for tillage tools; a planter's draft does not ask for it",
    ),
  },
  returns: { shape: "one", unit: "hp", says: "drawbar horsepower" },
  sources: ["asabe-d497"],
  example: {
    call: ["field cultivator, secondary", 60, 7, "medium", 3],
    gives: 90.25,
    because: "by hand: 0.85 × (19 + 1.8 × 7) × 60 × 3 = 4,834.8 lb; × 7 / 375",
  },
  cautions: [machinery],
  compute: (values) =>
    powerNeedOf({
      implement: values.implement,
      width: values.width,
      mph: values.mph,
      soil: values.soil,
      depthIn: values.depth,
    }),
  value: (result) => result.drawbarHp,
  working: (result) => [
    line("Width is counted in", result.published.perWidth),
    line(`Draft of one ${oneOf[result.published.perWidth]}`, result.draftLbPerWidth, "lb"),
    line("Draft", result.draftLb, "lb"),
    line("At the drawbar", result.drawbarHp, "hp"),
    line(
      "Mind",
      "the PTO must give more than the drawbar: tires and soil take a share; hills and ballast ask for room",
    ),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

const oneOf = { ft: "foot", tools: "tool", rows: "row" } as const;
