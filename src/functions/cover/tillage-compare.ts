import { waitFor } from "../../core/fault";
import { machineryLimits } from "../../core/machinery/machinery-limits";
import {
  tillageCompare as tillageCompareOf,
  type SystemPass,
  type TillageSystem,
} from "../../core/machinery/tillage-compare";
import type { CoverPass } from "../../core/cover/cover-left";
import { sameLength } from "../../core/same-length";
import { laborHours } from "../../reference/machinery/fuel";
import { line, listWithGaps, optional, quantity, text, worksheetFunction, type CellOut } from "../frame";
import { checkLines } from "../check-lines";
import { coverPass, residueKind, startCover } from "./cover-arguments";
import { machinery } from "../cautions";

type Column = readonly (number | null)[] | null;

export const tillageCompare = worksheetFunction({
  name: "TILLAGECOMPARE",
  family: "cover",
  summary: "Tillage systems side by side: passes, fuel, hours, cover left and cost, a row for each.",
  asks: ["compare no-till with chisel", "which tillage costs less", "tillage systems side by side"],
  args: {
    systems: listWithGaps(text({ says: "name of the system" }), {
      says: "name of the system that each pass belongs to, one cell a pass; a blank is the system above",
    }),
    passes: listWithGaps(coverPass, {
      says: 'passes in order, by name or as the percent of cover kept; winters too; "spray" moves no soil',
    }),
    startCover,
    residueKind,
    fuel: optional(
      listWithGaps(quantity(machineryLimits.fuelPerAc, { says: "diesel" }), {
        says: "diesel of each pass, in the order of passes; PASSFUEL gives published figures",
      }),
      null,
      "fuel is not shown",
    ),
    hours: optional(
      listWithGaps(quantity(machineryLimits.hoursPerAc, { says: "machine hours" }), {
        says: "machine hours of each pass on an acre; 1/FIELDCAPACITY",
      }),
      null,
      "hours are not shown",
    ),
    costs: optional(
      listWithGaps(quantity(machineryLimits.costPerAc, { says: "cost" }), {
        says: "cost of each pass; without fuel and labor where fuelPrice and wage are given",
      }),
      null,
      "only fuel and labor are priced",
    ),
    fuelPrice: optional(
      quantity(machineryLimits.fuelPrice, { says: "price of diesel" }),
      0,
      "0: fuel is within costs, or not priced",
    ),
    wage: optional(
      quantity(machineryLimits.wage, { says: "worth of an hour of labor" }),
      0,
      "0: labor is within costs, or not priced",
    ),
    laborFactor: optional(
      quantity(machineryLimits.laborFactor, { says: "hours of labor for each machine hour" }),
      laborHours.perMachineHour,
      "1.1",
    ),
  },
  returns: { shape: "table", unit: "", says: "one row a system; what is missing stands in the note" },
  sources: ["scs-residue-1992", "isu-a3-29"],
  example: {
    call: [
      [["chisel"], [null], [null], ["no-till"], [null]],
      [
        ["chisel plow, straight points"],
        [85],
        ["planter, double disk openers"],
        ["spray"],
        ["no-till planter, ripple coulters"],
      ],
      80,
      "non-fragile",
      [[1.05], [0.74], [0.52], [0.11], [0.52]],
      [[0.11], [0.05], [0.1], [0.02], [0.12]],
      [[18.35], [16], [20.4], [7.65], [22.9]],
    ],
    gives: [
      [
        "System",
        "Passes",
        "Fuel, gal/ac",
        "Machine, h/ac",
        "Labor, h/ac",
        "Cover left, %",
        "Low, %",
        "High, %",
        "Cost, $/ac",
        "Note",
      ],
      ["chisel", 3, 2.31, 0.26, 0.286, 42.84, 34.68, 51.68, 54.75, ""],
      ["no-till", 2, 0.63, 0.14, 0.154, 66, 60, 72, 30.55, ""],
    ],
    because:
      "by hand: 80 × 0.70 × 0.85 × 0.90 and 80 × 0.825, low 80 × 0.60 × 0.85 × 0.85 and 80 × 0.75; Iowa custom medians of 2019 add to 54.75 and 30.55 as printed",
  },
  cautions: [
    machinery,
    "Yield and herbicide may differ between systems too: set them beside these costs in PARTIALBUDGET.",
  ],
  compute: (values) => ({
    systems: tillageCompareOf({
      passes: passRows(values.systems, values.passes, values),
      start: values.startCover,
      kind: values.residueKind,
      fuelPriceUsdPerGal: values.fuelPrice,
      wageUsdPerHour: values.wage,
      laborFactor: values.laborFactor,
    }),
    shows: shown(values),
  }),
  value: ({ systems, shows }) => [header, ...systems.map((system) => systemRow(system, shows))],
  working: ({ systems, shows }) => [
    ...systems.flatMap((system) => [
      line(`${system.system}: passes`, system.passes),
      line(`${system.system}: cover left`, system.cover.coverPct.middle, "%"),
      ...(shows.cost ? [line(`${system.system}: cost`, system.costUsdPerAc, "$/ac")] : []),
      ...notesOf(system, shows).map((note) => line(`${system.system}: note`, note)),
    ]),
    ...checkLines([...new Set(systems.flatMap(({ cover }) => cover.cited))]),
  ],
  cites: ({ systems }) => [...new Set(systems.flatMap(({ cover }) => cover.cited)), laborHours],
});

const header = [
  "System",
  "Passes",
  "Fuel, gal/ac",
  "Machine, h/ac",
  "Labor, h/ac",
  "Cover left, %",
  "Low, %",
  "High, %",
  "Cost, $/ac",
  "Note",
];

/** Which columns were asked for. */
interface Shows {
  readonly fuel: boolean;
  readonly hours: boolean;
  readonly costs: boolean;
  readonly cost: boolean;
  readonly pricesFuel: boolean;
  readonly pricesLabor: boolean;
}

interface Columns {
  readonly fuel: Column;
  readonly hours: Column;
  readonly costs: Column;
}

function shown(values: Columns & { readonly fuelPrice: number; readonly wage: number }): Shows {
  const [fuel, hours, costs] = [values.fuel !== null, values.hours !== null, values.costs !== null];
  const pricesFuel = values.fuelPrice > 0;
  const pricesLabor = values.wage > 0;
  if (pricesFuel && !fuel) waitFor("fuel");
  if (pricesLabor && !hours) waitFor("hours");
  return { fuel, hours, costs, cost: costs || pricesFuel || pricesLabor, pricesFuel, pricesLabor };
}

function passRows(
  systems: readonly (string | null)[],
  passes: readonly (CoverPass | null)[],
  columns: Columns,
): SystemPass[] {
  const { fuel, hours, costs } = columns;
  for (const [argument, column] of Object.entries({ fuel, hours, costs, systems })) {
    if (column) sameLength(argument, column, "passes", passes, "row");
  }
  const rows: SystemPass[] = [];
  let system: string | null = null;
  passes.forEach((pass, at) => {
    system = systems[at] ?? system;
    if (pass === null) return;
    if (system === null) waitFor("systems");
    rows.push({
      system,
      pass,
      fuelGalPerAc: columns.fuel?.[at] ?? null,
      hoursPerAc: columns.hours?.[at] ?? null,
      costUsdPerAc: columns.costs?.[at] ?? null,
    });
  });
  if (rows.length === 0) waitFor("passes");
  return rows;
}

function systemRow(system: TillageSystem, shows: Shows): CellOut[] {
  const { low, middle, high } = system.cover.coverPct;
  return [
    system.system,
    system.passes,
    shows.fuel ? system.fuelGalPerAc : "",
    shows.hours ? system.hoursPerAc : "",
    shows.hours ? system.laborHoursPerAc : "",
    middle,
    low,
    high,
    shows.cost ? system.costUsdPerAc : "",
    notesOf(system, shows).join("; "),
  ];
}

function notesOf(system: TillageSystem, shows: Shows): string[] {
  const missing = [
    ...(shows.fuel && system.withoutFuel > 0 ? [`fuel of ${count(system.withoutFuel)} is missing`] : []),
    ...(shows.hours && system.withoutHours > 0 ? [`hours of ${count(system.withoutHours)} are missing`] : []),
    ...(shows.costs && system.withoutCost > 0 ? [`cost of ${count(system.withoutCost)} is missing`] : []),
  ];
  return system.cover.isConservation ? missing : [...missing, "under 30 % cover"];
}

function count(passes: number): string {
  return passes === 1 ? "1 pass" : `${passes} passes`;
}
