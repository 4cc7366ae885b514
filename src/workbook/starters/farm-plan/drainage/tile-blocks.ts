import type { Limit } from "../../../../core/limit";
import { drainageLimits } from "../../../../core/drainage/drainage-limits";
import { pipeCapacity, pipeSize } from "../../../../functions/drainage/pipes";
import { tileDrainRate, tileSpacing } from "../../../../functions/drainage/spacing";
import { tileCost, tileLength } from "../../../../functions/drainage/tile";
import { call } from "../../../formula/call";
import type { Expression } from "../../../formula/expression";
import { orBlank, times, whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { drainageExample, drainageTerms } from "../../../scenario/drainage-examples";
import type { FarmContext } from "../farm-context";
import { fieldList } from "../field-lookup";

const tile = (key: string) => place(`tile.${key}`);
export const job = (key: string) => place(`job.${key}`);
const site = {
  depth: tile("depth"),
  midwayTable: tile("midway"),
  conductivity: tile("conductivity"),
  depthToBarrier: tile("barrier"),
};

/** Soil and water: how far apart the lines may lie. */
export function spacingBlock({ fields }: FarmContext): EntriesBlock {
  const field = fields.find((each) => each.field === drainageExample.field);
  const start = field ? drainageExample : null;
  return {
    kind: "entries",
    key: "tile",
    title: "Soil and spacing",
    entries: [
      typedEntry({ key: "field", label: "Field" }, start?.field ?? null, fieldList),
      typedEntry(
        { key: "acres", label: "Acres to drain", unit: "ac", format: formats.one },
        field?.acres ?? null,
        within(drainageLimits.acres, "Acres that the lines drain"),
      ),
      feet("depth", "Depth of the lines", start?.depthFt ?? null, drainageLimits.drainDepth, ""),
      feet(
        "midway",
        "Water table you accept",
        start?.midwayTableFt ?? null,
        drainageLimits.midwayTable,
        "Its depth midway between lines; often 1 to 2 ft.",
      ),
      typedEntry(
        {
          key: "conductivity",
          label: "Water moves through soil",
          unit: "ft/day",
          format: formats.two,
          says: "Soil survey (in/h × 2), a field test, or a texture, which may be ten times off.",
        },
        start?.conductivityFtPerDay ?? null,
      ),
      feet(
        "barrier",
        "Tight layer lies at",
        start?.depthToBarrierFt ?? null,
        drainageLimits.depthToBarrier,
        "Unknown: try once and twice the line depth more.",
      ),
      inchesPerDay(start?.drainRateInPerDay ?? null),
      computedEntry(
        { key: "spacing", label: "Spacing that does it", unit: "ft", format: formats.whole },
        known(["depth", "midway", "rate", "barrier"], call(tileSpacing, { ...site, drainRate: tile("rate") })),
      ),
      feet(
        "chosen",
        "Spacing you choose",
        start?.spacingFt ?? null,
        drainageLimits.spacing,
        "As the contractor lays it.",
      ),
      computedEntry(
        { key: "carried", label: "It then carries off", unit: "in/day", format: formats.upToThree },
        known(["depth", "midway", "chosen", "barrier"], call(tileDrainRate, { ...site, spacing: tile("chosen") })),
      ),
    ],
  };
}

function feet(key: string, label: string, start: number | null, limit: Limit, says: string): Entry {
  return typedEntry({ key, label, unit: "ft", format: formats.one, says }, start, within(limit, label));
}

function inchesPerDay(start: number | null): Entry {
  const says = "The drainage coefficient; 3/8 is usual for field crops on mineral soil.";
  return typedEntry(
    { key: "rate", label: "Water to carry off", unit: "in/day", format: formats.upToThree, says },
    start,
    within(drainageLimits.drainRate, "Water to carry off in a day"),
  );
}

/** Nothing until these lines hold numbers and the soil is named. */
function known(keys: readonly string[], value: Expression): Expression {
  return whenNamed(tile("conductivity"), whenNumbers(keys.map(tile), value));
}

/** Main, feet and dollars. */
export function jobBlock({ fields }: FarmContext): EntriesBlock {
  const isDemo = fields.some(({ field }) => field === drainageExample.field);
  return {
    kind: "entries",
    key: "job",
    title: "The job",
    entries: [...mainLines(isDemo ? drainageExample.gradePct : null), ...feetLines(), ...costLines()],
  };
}

function mainLines(grade: number | null): Entry[] {
  const through = { grade: job("grade"), drainRate: tile("rate") };
  return [
    typedEntry(
      { key: "grade", label: "Fall of the main", unit: "%", format: formats.two, says: "Feet in 100 ft, as surveyed." },
      grade,
      within(drainageLimits.grade, "Fall in 100 ft"),
    ),
    computedEntry(
      {
        key: "size",
        label: "Main, single wall",
        unit: "in",
        format: formats.whole,
        says: "Smallest stock size that drains all the acres.",
      },
      whenNumbers([tile("acres"), job("grade"), tile("rate")], call(pipeSize, { acres: tile("acres"), ...through })),
    ),
    computedEntry(
      { key: "capacity", label: "That size drains", unit: "ac", format: formats.one },
      whenNumbers([job("size")], call(pipeCapacity, { diameter: job("size"), ...through })),
    ),
  ];
}

function feetLines(): Entry[] {
  return [
    computedEntry(
      { key: "feet", label: "Lines on an acre", unit: "ft/ac", format: formats.whole },
      whenNumbers([tile("chosen")], call(tileLength, { spacing: tile("chosen") })),
    ),
    computedEntry(
      { key: "allFeet", label: "Lines in the field", unit: "ft", format: formats.whole },
      times(job("feet"), tile("acres")),
    ),
  ];
}

function costLines(): Entry[] {
  const { lateralUsdPerFt, mainFt, mainUsdPerFt, fixedUsd } = drainageTerms;
  const perFoot = drainageLimits.pricePerFoot;
  const parts = {
    spacing: tile("chosen"),
    pricePerFoot: job("lateral"),
    acres: tile("acres"),
    mainFeet: orBlank(job("mainFeet")),
    mainPrice: orBlank(job("main")),
    fixedCost: orBlank(job("fixed")),
  };
  return [
    typedEntry(
      {
        key: "lateral",
        label: "A foot of line, laid",
        unit: "$/ft",
        format: formats.cents,
        says: "Tubing and installation.",
      },
      lateralUsdPerFt,
      within(perFoot, "A foot of line, tubing and installation"),
    ),
    typedEntry(
      { key: "mainFeet", label: "Feet of main", unit: "ft", format: formats.whole },
      mainFt,
      within(drainageLimits.mainFeet, "Feet of main"),
    ),
    typedEntry(
      { key: "main", label: "A foot of main, laid", unit: "$/ft", format: formats.cents },
      mainUsdPerFt,
      within(perFoot, "A foot of main, pipe and installation"),
    ),
    typedEntry(
      { key: "fixed", label: "Outlet, survey, design", unit: "$", format: formats.dollars },
      fixedUsd,
      within(drainageLimits.fixedCost, "Outlet, fittings, survey, design, permits"),
    ),
    computedEntry(
      { key: "perAcre", label: "Cost of an acre", unit: "$/ac", format: formats.dollars },
      whenNumbers([tile("chosen"), job("lateral"), tile("acres")], call(tileCost, parts)),
    ),
    computedEntry(
      { key: "all", label: "Cost of the job", unit: "$", format: formats.dollars },
      times(job("perAcre"), tile("acres")),
    ),
  ];
}
