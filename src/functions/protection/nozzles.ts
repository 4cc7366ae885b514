import { nozzleFlow } from "../../core/protection/nozzle-flow";
import { sprayCourse as sprayCourseOf } from "../../core/protection/spray-course";
import { sprayLimits } from "../../core/protection/spray-limits";
import { pressedFlow, sprayPressure as sprayPressureOf } from "../../core/protection/spray-pressure";
import { spraySpeed as spraySpeedOf } from "../../core/protection/spray-speed";
import { sprayVolume as sprayVolumeOf } from "../../core/protection/spray-volume";
import { workingPressure } from "../../reference/protection/sprayer-practice";
import { checkBulletin } from "../../reference/table";
import { line, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { labelLaw } from "../cautions";

const mph = quantity(sprayLimits.speed, { says: "ground speed" });
const spacing = quantity(sprayLimits.spacing, {
  says: "nozzle spacing; a band's width, or the row width where several nozzles spray one row",
});
const flow = quantity(sprayLimits.flow, { says: "flow of one nozzle, or of all nozzles on a row" });

export const sprayFlow = worksheetFunction({
  name: "SPRAYFLOW",
  family: "protection",
  summary: "Gallons a minute that each nozzle has to give for a spray volume.",
  asks: ["what nozzle size", "how many gallons a minute per nozzle", "sprayer nozzle output"],
  args: { gallonsPerAcre: quantity(sprayLimits.volume, { says: "spray wanted on an acre" }), mph, spacing },
  returns: { shape: "one", unit: "gal/min", says: "flow of each nozzle" },
  sources: ["ufl-sprayer-calibration"],
  cautions: [labelLaw],
  example: { call: [20, 6, 20], gives: 0.404, tolerance: 0.0005, because: "by hand: 20 × 6 × 20 / 5,940" },
  compute: (values) =>
    nozzleFlow({ volumeGalPerAc: values.gallonsPerAcre, speedMph: values.mph, spacingIn: values.spacing }),
  value: (result) => result.flowGalPerMin,
  working: (result) => [
    line("In a minute", result.ouncesPerMin, "fl oz"),
    line("A quart takes", result.secondsPerQuart, "s"),
    line("Acres an hour for each nozzle", result.acresPerHourEach, "ac/h"),
    line("Flow of each nozzle", result.flowGalPerMin, "gal/min"),
  ],
});

export const sprayVolume = worksheetFunction({
  name: "SPRAYVOLUME",
  family: "protection",
  summary: "Gallons of spray on an acre from the flow of a nozzle.",
  asks: ["how many gallons per acre am I spraying", "sprayer calibration", "gallons per acre from nozzle flow"],
  args: { flow, mph, spacing },
  returns: { shape: "one", unit: "gal/ac", says: "spray on an acre" },
  sources: ["ufl-sprayer-calibration"],
  cautions: [labelLaw],
  example: { call: [0.3, 5, 20], gives: 17.82, because: "by hand: 5,940 × 0.3 / (5 × 20)" },
  compute: (values) => sprayVolumeOf({ flowGalPerMin: values.flow, speedMph: values.mph, spacingIn: values.spacing }),
  value: (result) => result.volumeGalPerAc,
  working: (result) => [
    line("Caught in a minute", result.ouncesPerMin, "fl oz"),
    line("Sprayed in a minute", result.acresPerMinute, "ac"),
    line("Spray on an acre", result.volumeGalPerAc, "gal/ac"),
  ],
});

export const spraySpeed = worksheetFunction({
  name: "SPRAYSPEED",
  family: "protection",
  summary: "Ground speed from a timed course.",
  asks: ["how fast am I driving", "mph from feet and seconds"],
  args: {
    feet: quantity(sprayLimits.feet, { says: "length of the course" }),
    seconds: quantity(sprayLimits.seconds, { says: "time to drive it, in the field and with a half-full tank" }),
  },
  returns: { shape: "one", unit: "mph", says: "ground speed" },
  sources: ["ufl-sprayer-calibration"],
  cautions: [labelLaw],
  example: { call: [176, 20], gives: 6, because: "by hand: 176 × 60 / 20 = 528 ft a minute; / 88" },
  compute: spraySpeedOf,
  value: (result) => result.speedMph,
  working: (result) => [
    line("Feet a minute", result.feetPerMinute, "ft/min"),
    line("One mph is", 88, "ft/min"),
    line("Ground speed", result.speedMph, "mph"),
  ],
});

export const sprayCourse = worksheetFunction({
  name: "SPRAYCOURSE",
  family: "protection",
  summary: "Course length on which the ounces caught from a nozzle are the gallons per acre.",
  asks: ["sprayer calibration course length", "ounces equal gallons per acre", "1/128 acre method"],
  args: { spacing },
  returns: { shape: "one", unit: "ft", says: "length to drive, timed; then catch one nozzle for that time" },
  sources: ["lsu-ounces-gallons", "clemson-calibration"],
  cautions: [labelLaw],
  example: { call: [20], gives: 204.188, because: "by hand: 43,560 / 128 × 12 / 20; printed as 204" },
  compute: (values) => sprayCourseOf({ spacingIn: values.spacing }),
  value: (result) => result.feet,
  working: (result) => [
    line("1/128 acre", result.squareFeet, "ft²"),
    line("Course", result.feet, "ft"),
    line("Then", "fluid ounces caught in that time are gallons per acre; add the nozzles on a row"),
  ],
});

export const sprayPressure = worksheetFunction({
  name: "SPRAYPRESSURE",
  family: "protection",
  summary: "Pressure for another flow through the same nozzle, or for another speed at the same volume.",
  asks: ["what pressure do I need", "pressure when I drive faster", "nozzle pressure and flow"],
  args: {
    flow: quantity(sprayLimits.flow, { says: "flow now, or mph now" }),
    newFlow: quantity(sprayLimits.flow, { says: "flow wanted, or the new mph under a rate controller" }),
    pressure: quantity(sprayLimits.pressure, { says: "pressure now" }),
  },
  returns: { shape: "one", unit: "psi", says: "pressure for the new flow" },
  sources: ["nozzle-orifice", "sprayer-practice"],
  cautions: [labelLaw],
  example: { call: [6, 8, 40], gives: 71.11, because: "by hand: 40 × (8 / 6)²" },
  compute: (values) =>
    sprayPressureOf({
      flowGalPerMin: values.flow,
      newFlowGalPerMin: values.newFlow,
      pressurePsi: values.pressure,
    }),
  value: (result) => result.pressurePsi,
  working: (result) => [
    line("New flow over old", result.flowRatio),
    line("Pressure goes with its square", result.flowRatio ** 2),
    line("Pressure", result.pressurePsi, "psi"),
    ...unusualLines(result.isUnusual),
  ],
  cites: (result) => (result.isUnusual ? [workingPressure] : []),
});

export const nozzleFlowAt = worksheetFunction({
  name: "NOZZLEFLOW",
  family: "protection",
  summary: "Flow of the same nozzle at another pressure.",
  asks: ["nozzle output at another pressure", "what does the nozzle give at 30 psi"],
  args: {
    flow: quantity(sprayLimits.flow, { says: "flow of the nozzle at a known pressure" }),
    pressure: quantity(sprayLimits.pressure, { says: "that pressure" }),
    newPressure: quantity(sprayLimits.pressure, { says: "pressure it will run at" }),
  },
  returns: { shape: "one", unit: "gal/min", says: "flow at the new pressure" },
  sources: ["nozzle-orifice", "sprayer-practice"],
  cautions: [labelLaw],
  example: { call: [0.4, 40, 20], gives: 0.2828, tolerance: 0.0001, because: "by hand: 0.4 × √(20 / 40)" },
  compute: (values) =>
    pressedFlow({ flowGalPerMin: values.flow, pressurePsi: values.pressure, newPressurePsi: values.newPressure }),
  value: (result) => result.flowGalPerMin,
  working: (result) => [
    line("Square root of the new pressure over the old", result.flowRatio),
    line("Flow", result.flowGalPerMin, "gal/min"),
    ...unusualLines(result.isUnusual),
  ],
  cites: (result) => (result.isUnusual ? [workingPressure] : []),
});

function unusualLines(isUnusual: boolean): WorkingLine[] {
  if (!isUnusual) return [];
  return [
    line(
      "Look again",
      `most field nozzles work at ${workingPressure.lowPsi} to ${workingPressure.highPsi} psi: see the nozzle's own chart`,
    ),
    line("Check", checkBulletin),
  ];
}
