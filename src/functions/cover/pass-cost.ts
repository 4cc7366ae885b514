import { machineryLimits } from "../../core/machinery/machinery-limits";
import { passCost as passCostOf, type PassCost, type PassPart } from "../../core/machinery/pass-cost";
import { laborHours, ownershipExtras } from "../../reference/machinery/fuel";
import type { TractorKey } from "../../reference/machinery/machines";
import {
  choice,
  line,
  optional,
  percent,
  quantity,
  rate,
  worksheetFunction,
  type Matrix,
  type WorkingLine,
} from "../frame";
import { checkLines } from "../check-lines";
import { engineLoad } from "./cover-arguments";
import { fieldMachineWords, tractorWords } from "./cover-words";
import { averageMachine, machinery } from "../cautions";

const price = (says: string) => quantity(machineryLimits.price, { says });

export const passCost = worksheetFunction({
  name: "PASSCOST",
  family: "cover",
  summary: "Cost of one pass over an acre with your own machines, part by part.",
  asks: ["what does a pass cost", "cost of chiseling an acre", "own it or hire it", "machinery cost per acre"],
  args: {
    implement: choice(fieldMachineWords, { says: "implement or self-propelled machine" }),
    width: quantity(machineryLimits.width, { says: "working width" }),
    mph: quantity(machineryLimits.mph, { says: "speed in the field" }),
    price: price("price paid for the implement"),
    acresPerYear: quantity(machineryLimits.acres, { says: "acres it goes over in a year, all passes" }),
    horsepower: quantity(machineryLimits.horsepower, { says: "rated PTO horsepower of the tractor or its own engine" }),
    fuelPrice: quantity(machineryLimits.fuelPrice, { says: "price of diesel" }),
    wage: quantity(machineryLimits.wage, { says: "worth of an hour of labor" }),
    rate: rate(machineryLimits.rate, { says: "interest on money in machines" }),
    years: optional(quantity(machineryLimits.years, { says: "years the implement is kept" }), 10, "10"),
    efficiency: optional(
      percent(machineryLimits.efficiency, { says: "field efficiency" }),
      null,
      "typical of the implement",
    ),
    load: optional(
      engineLoad('engine load, 20 to 100, or "average" for a season of mixed work'),
      "average",
      "average of a season, which understates heavy tillage",
    ),
    tractorPrice: optional(price("price paid for the tractor"), null, "tractor ownership and repairs are not counted"),
    tractorHours: optional(
      quantity(machineryLimits.hoursPerYear, { says: "all the tractor's hours in a year" }),
      null,
      "needed with tractorPrice",
    ),
    tractorYears: optional(quantity(machineryLimits.years, { says: "years the tractor is kept" }), null, "as years"),
    listPrice: optional(price("list price of the implement"), null, "the price paid"),
    tractorListPrice: optional(price("list price of the tractor"), null, "the tractor's price paid"),
    salvage: optional(
      price("what the implement will bring at the end"),
      null,
      "the share of list that the standard leaves",
    ),
    tractorSalvage: optional(
      price("what the tractor will bring at the end"),
      null,
      "the share of list that the standard leaves",
    ),
    tractorKind: optional(choice(tractorWords, { says: "2WD or 4WD tractor" }), "twoWheel", "2WD"),
    ownershipExtras: optional(
      percent(machineryLimits.extras, {
        says: "taxes, insurance and housing, percent of price a year",
        smallIsUsual: true,
      }),
      ownershipExtras.pct,
      "1",
    ),
    laborFactor: optional(
      quantity(machineryLimits.laborFactor, { says: "hours of labor for each machine hour" }),
      laborHours.perMachineHour,
      "1.1",
    ),
  },
  returns: { shape: "table", unit: "$/ac", says: "a row for each part and the total, per acre and per machine hour" },
  sources: ["isu-a3-29", "asabe-d497", "cross-perry-1995", "grisso-2004"],
  example: {
    call: [
      "chisel plow",
      16.5,
      5,
      20_000,
      1000,
      100,
      4,
      20,
      0,
      10,
      100,
      null,
      null,
      null,
      null,
      null,
      null,
      10_000,
      null,
      null,
      0,
    ],
    gives: [
      ["Part", "$/ac", "$/h"],
      ["Implement ownership", 1, 10],
      ["Implement repair", 0.56, 5.6],
      ["Tractor ownership, not counted", 0, 0],
      ["Tractor repair, not counted", 0, 0],
      ["Fuel", 1.76, 17.6],
      ["Oil", 0.264, 2.64],
      ["Labor", 2.2, 22],
      ["Total", 5.784, 57.84],
    ],
    because:
      "by hand: 16.5 × 5 / 8.25 = 10 ac/h, so 100 h/yr; (20,000 − 10,000) / 10 / 100 = 10 $/h; 20,000 × 0.28 × 1^1.4 / 1,000 h; 0.044 × 100 × 4; 15 % of it; 1.1 × 20",
  },
  cautions: [averageMachine, machinery],
  compute: (values) =>
    passCostOf({
      implement: values.implement,
      widthFt: values.width,
      mph: values.mph,
      efficiencyPct: values.efficiency,
      acresPerYear: values.acresPerYear,
      priceUsd: values.price,
      listPriceUsd: values.listPrice,
      salvageUsd: values.salvage,
      years: values.years,
      rate: values.rate,
      extrasPct: values.ownershipExtras,
      horsepower: values.horsepower,
      load: values.load,
      fuelPriceUsdPerGal: values.fuelPrice,
      wageUsdPerHour: values.wage,
      laborFactor: values.laborFactor,
      tractor: tractorFrom(values),
    }),
  value: (result) => partRows(result),
  working: (result) => [
    line("Worked in an hour", result.capacity.acPerHour, "ac/h"),
    line("Field efficiency", result.capacity.efficiencyPct, "%"),
    line("Machine time", result.capacity.hoursPerAc, "h/ac"),
    line("Labor", result.laborHoursPerAc, "h/ac"),
    line("Diesel", result.fuelUse.galPerHour, "gal/h"),
    line("Diesel", result.fuelGalPerAc, "gal/ac"),
    ...ownedLines("Implement", result.implement),
    ...(result.tractor ? ownedLines("Tractor", result.tractor) : []),
    ...partRows(result)
      .slice(1)
      .map(([part, usdPerAc]) => line(String(part), usdPerAc ?? 0, "$/ac")),
    line("To set beside it", "CUSTOMRATE gives what neighbors charge"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

interface TractorValues {
  readonly tractorPrice: number | null;
  readonly tractorHours: number | null;
  readonly tractorYears: number | null;
  readonly tractorListPrice: number | null;
  readonly tractorSalvage: number | null;
  readonly tractorKind: TractorKey;
}

function tractorFrom(values: TractorValues) {
  if (values.tractorPrice === null) return null;
  return {
    kind: values.tractorKind,
    priceUsd: values.tractorPrice,
    listPriceUsd: values.tractorListPrice,
    years: values.tractorYears,
    hoursPerYear: values.tractorHours,
    salvageUsd: values.tractorSalvage,
  };
}

function partRows(result: PassCost): Matrix<string | number> {
  const row = (label: string, { usdPerAc, usdPerHour }: PassPart) => [label, usdPerAc, usdPerHour];
  const tractor = result.countsTractor ? "" : result.isSelfPropelled ? ", none" : ", not counted";
  return [
    ["Part", "$/ac", "$/h"],
    row("Implement ownership", result.implementOwnership),
    row("Implement repair", result.implementRepair),
    row(`Tractor ownership${tractor}`, result.tractorOwnership),
    row(`Tractor repair${tractor}`, result.tractorRepair),
    row("Fuel", result.fuel),
    row("Oil", result.oil),
    row("Labor", result.labor),
    row("Total", result.total),
  ];
}

function ownedLines(name: string, owned: PassCost["implement"]): WorkingLine[] {
  return [
    line(`${name}: hours a year`, owned.hoursPerYear, "h/yr"),
    line(`${name}: worth at the end`, owned.salvageUsd, "$"),
    line(`${name}: ownership`, owned.ownershipUsdPerYr, "$/yr"),
    ...(owned.isPastLife
      ? [line("Mind", `${name.toLowerCase()}: kept past its wear-out life, where the repair curve is a stretch`)]
      : []),
  ];
}
