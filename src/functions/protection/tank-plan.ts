import { waitFor } from "../../core/fault";
import { sprayLimits } from "../../core/protection/spray-limits";
import { tankPlan as tankPlanOf, type MixPart, type TankPlan } from "../../core/protection/tank-plan";
import {
  ArrivedError,
  choice,
  isBlank,
  isCellError,
  line,
  quantity,
  readOrNull,
  worksheetFunction,
  type ManyArgument,
} from "../frame";
import { mixUnitWords } from "./protection-words";
import { gallonsPerAcre, tankGallons } from "./tank";
import { labelLaw, mixingLaw } from "../cautions";

const amountCell = quantity(sprayLimits.rate, { says: "amount" });
const unitCell = choice(mixUnitWords, { says: "unit" });

/** Rows of name, amount and unit; a row without an amount is passed over, so that a half-filled list stays calm. */
const mix: ManyArgument<readonly MixPart[]> = {
  shape: "many",
  says: "three columns: what goes in, the amount and its unit, such as 22 and fl oz/ac, 0.25 and % v/v, 17 and lb/100 gal",
  unit: "",
  readMany(cells, argument) {
    const parts = cells.flatMap(([name = null, amount = null, unit = null], row) => {
      const read = readOrNull(amountCell, amount, argument);
      const nameText = isBlank(name) || isCellError(name) ? `row ${row + 1}` : String(name);
      if (isCellError(name)) throw new ArrivedError(name);
      const readUnit = readOrNull(unitCell, unit, argument);
      if (read === null) return [];
      if (readUnit === null) waitFor(`the unit of ${nameText} in ${argument}`);
      return [{ name: nameText, amount: read, unit: readUnit }];
    });
    return parts.length > 0 ? parts : waitFor(argument);
  },
};

export const tankPlan = worksheetFunction({
  name: "TANKPLAN",
  family: "protection",
  summary: "What goes into each full load and into the last one, water included.",
  asks: ["tank mix sheet", "how much of each product per load", "how much water to add"],
  args: {
    acres: quantity(sprayLimits.acres, { says: "acres to spray" }),
    tankGallons,
    gallonsPerAcre,
    mix,
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row for everything that goes in, and the water: each full load, the last load, the whole field",
  },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw, mixingLaw],
  example: {
    call: [
      100,
      600,
      15,
      [
        ["broadleaf herbicide", 16, "fl oz/ac"],
        ["surfactant", 0.25, "% v/v"],
        ["ammonium sulfate", 8.5, "lb/100 gal"],
      ],
    ],
    gives: [
      ["What goes in", "Unit", "Each of 2 full loads", "Last load", "Whole field"],
      ["broadleaf herbicide", "fl oz", 640, 320, 1600],
      ["surfactant", "gal", 1.5, 0.75, 3.75],
      ["ammonium sulfate", "lb", 51, 25.5, 127.5],
      ["water", "gal", 593.5, 296.75, 1483.75],
      ["spray in all", "gal", 600, 300, 1500],
      ["acres sprayed", "ac", 40, 20, 100],
    ],
    because:
      "by hand: 600 / 15 = 40 ac a load, two full and 20 ac; 16 × 40 = 640 fl oz or 5 gal; 600 × 0.0025 = 1.5; 600 − 6.5 = 593.5",
  },
  compute: (values) =>
    tankPlanOf({
      acres: values.acres,
      tankGal: values.tankGallons,
      volumeGalPerAc: values.gallonsPerAcre,
      mix: values.mix,
    }),
  value: (plan, values) => [
    ["What goes in", "Unit", fullLoadsHead(plan), "Last load", "Whole field"],
    ...[...plan.parts, plan.water].map((part) => [
      part.name,
      part.unit,
      part.inFullLoad,
      part.inLastLoad,
      part.inField,
    ]),
    ["spray in all", "gal", ofFull(plan, values.tankGallons), plan.loads.lastGal, plan.loads.totalGal],
    ["acres sprayed", "ac", ofFull(plan, plan.loads.acresPerLoad), plan.loads.lastAcres, values.acres],
  ],
  working: ({ loads, water }) => [
    line("A full tank sprays", loads.acresPerLoad, "ac"),
    line("Full loads", loads.fullLoads, "loads"),
    line("Last part load sprays", loads.lastAcres, "ac"),
    line("Water for the field", water.inField, "gal"),
    line("Dry products", "taken to add no volume"),
  ],
});

function fullLoadsHead({ loads: { fullLoads } }: TankPlan): string {
  return fullLoads === 1 ? "The full load" : `Each of ${fullLoads} full loads`;
}

function ofFull({ loads }: TankPlan, amount: number): number {
  return loads.fullLoads > 0 ? amount : 0;
}
