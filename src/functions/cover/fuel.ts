import { fuelUse as fuelUseOf } from "../../core/machinery/fuel-use";
import { machineryLimits } from "../../core/machinery/machinery-limits";
import { operationFuel, systemFuelOf } from "../../core/machinery/published-fuel";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { engineLoad } from "./cover-arguments";
import { fuelWords, operationFuelWords, tillageSystemWords } from "./cover-words";

const ownUse = line("Mind", "farms differ by a third either way: soil, depth, tires and the setting of the engine");

export const fuelUse = worksheetFunction({
  name: "FUELUSE",
  family: "cover",
  summary: "Fuel an engine burns in an hour.",
  asks: ["how much diesel does a tractor burn", "fuel per hour", "what does throttling back save"],
  args: {
    horsepower: quantity(machineryLimits.horsepower, { says: "rated PTO horsepower" }),
    load: engineLoad('share of rated power that the work takes, 20 to 100, or "average" for a season of mixed work'),
    fuel: optional(choice(fuelWords, { says: "diesel or gasoline" }), "diesel", "diesel"),
    throttleReduction: optional(
      percent(machineryLimits.throttleReduction, {
        says: "how far the engine runs below full speed, with a load in percent",
        smallIsUsual: true,
      }),
      0,
      "0: full throttle",
    ),
  },
  returns: { shape: "one", unit: "gal/h", says: "fuel" },
  sources: ["isu-a3-29", "grisso-2004"],
  example: { call: [180, "average"], gives: 7.92, because: "by hand: 0.044 × 180" },
  compute: (values) =>
    fuelUseOf({
      horsepower: values.horsepower,
      load: values.load,
      fuel: values.fuel,
      throttleReductionPct: values.throttleReduction,
    }),
  value: (result) => result.galPerHour,
  working: (result) => [
    line("Fuel for each horsepower and hour", result.galPerHpHour, "gal"),
    line("Fuel", result.galPerHour, "gal/h"),
    line("Per acre", "divide by FIELDCAPACITY"),
    ownUse,
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const passFuel = worksheetFunction({
  name: "PASSFUEL",
  family: "cover",
  summary: "Diesel of one field operation as Missouri published it.",
  asks: ["gallons per acre to chisel", "fuel per acre of a field operation"],
  args: { operation: choice(operationFuelWords, { says: "field operation" }) },
  returns: { shape: "one", unit: "gal/ac", says: "diesel" },
  sources: ["missouri-g1208-1993"],
  example: { call: ["field cultivator"], gives: 0.6, because: "printed: field cultivator at 5.5 mph, 0.60 gal/ac" },
  compute: ({ operation }) => operationFuel(operation),
  value: (result) => result.galPerAc,
  working: (result) => [
    line("Diesel", result.galPerAc, "gal/ac"),
    line("At a speed of", result.mph, "mph"),
    line("PTO power for a foot of width", result.ptoHpPerFt, "hp/ft"),
    ownUse,
  ],
  cites: (result) => [result],
});

export const systemFuel = worksheetFunction({
  name: "SYSTEMFUEL",
  family: "cover",
  summary: "Diesel of a whole corn tillage system as Nebraska published it.",
  asks: ["how much fuel does no-till save", "diesel of a tillage system"],
  args: { system: choice(tillageSystemWords, { says: "tillage system" }) },
  returns: { shape: "one", unit: "gal/ac", says: "diesel without harvest" },
  sources: ["unl-fuel-requirements"],
  example: { call: ["plow"], gives: 5.28, because: "printed: 2.25 + 0.60 + 0.74 + 0.74 + 0.52 + 0.43 = 5.28" },
  compute: ({ system }) => systemFuelOf(system),
  value: (result) => result.galPerAc,
  working: (result) => [
    ...result.rows.map((row) =>
      line(row.passes === 1 ? row.operation : `${row.operation}, ${row.passes} passes`, row.galPerAc, "gal/ac"),
    ),
    line("Whole system", result.galPerAc, "gal/ac"),
    line("Passes", result.passes),
    ownUse,
  ],
  cites: (result) => result.rows,
});
