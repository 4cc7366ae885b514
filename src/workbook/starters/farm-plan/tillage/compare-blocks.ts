import type { Limit } from "../../../../core/limit";
import { coverLimits } from "../../../../core/cover/cover-limits";
import { machineryLimits } from "../../../../core/machinery/machinery-limits";
import { coverFactor, slopeFactor, soilLoss, soilLossRatio } from "../../../../functions/cover/erosion";
import { tillageCompare } from "../../../../functions/cover/tillage-compare";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { lookUp, quiet, whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry, MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { computedRow, wordsRow } from "../../../model/matrix-rows";
import { tableBlock, type TableBlock } from "../../../model/table";
import { erosionExample, passExamples } from "../../../scenario/tillage-examples";
import type { FarmContext } from "../farm-context";
import { cropTable } from "../headers";
import { machineTable, passCostTable, passNames, passTable } from "./tillage-headers";

const rows = 14;
const own = passTable.own;
const soil = (key: string) => place(`soil.${key}`);
const systems = [{ key: "first" }, { key: "second" }] as const;
type System = (typeof systems)[number]["key"];
/** Rows of the table of TILLAGECOMPARE, from 1, its heading first; systems stand in the order of their first pass. */
const systemRows: Readonly<Record<System, number>> = { first: 2, second: 3 };
const value = (row: string, system: System) => place("systems", row, system);

/** The passes of two systems, in order. */
export function passBlock({ withDemo }: FarmContext): TableBlock {
  const passes = withDemo ? passExamples : [];
  const machineUsed = { table: machineTable.table, column: "machine" };
  return tableBlock(
    passTable,
    { title: "Passes of the systems", rows },
    {
      system: typedWords(pick(passes, "system"), {
        width: 22,
        note: "The same name in every row of a system; the first two are compared.",
      }),
      pass: typedWords(pick(passes, "pass"), {
        width: 20,
        allow: oneOf(
          { table: passNames.table, column: "pass" },
          "What it does to the residue; the names stand on the last sheet.",
        ),
      }),
      machine: typedWords(pick(passes, "machine"), {
        width: 11,
        allow: oneOf(machineUsed, "One of the machines above; blank where it is hired."),
      }),
      hired: typedNumber([], {
        width: 11,
        format: formats.cents,
        allow: within(machineryLimits.costPerAc, "What a hired pass costs; goes before the machine's cost"),
      }),
      diesel: computed(ofMachine("diesel"), { width: 11, format: formats.two }),
      hours: computed(ofMachine("hours"), { width: 11, format: formats.upToThree }),
      cost: computed(
        whenNamed(own("pass"), formula`IF(COUNT(${own("hired")})=1,${own("hired")},${ofMachine("total")})`),
        { width: 11, format: formats.cents },
      ),
    },
  );
}

function ofMachine(column: keyof typeof passCostTable.headers): Expression {
  return quiet(lookUp(own("machine"), passCostTable.all("machine"), passCostTable.all(column)));
}

/** Where it is done: cover before the first pass, rain, soil and slope. */
export function soilBlock({ crops, withDemo }: FarmContext): EntriesBlock {
  const crop = withDemo ? (crops[0]?.crop ?? null) : null;
  return {
    kind: "entries",
    key: "soil",
    title: "Field and soil",
    entries: [
      typedEntry(
        { key: "crop", label: "Residue of", says: "Its usual cover after harvest is where the count begins." },
        crop,
        oneOf({ table: cropTable.table, column: "crop" }, "The crop harvested before."),
      ),
      ...soilLines(withDemo ? erosionExample : null),
      computedEntry(
        { key: "slope", label: "Slope factor", unit: "LS", format: formats.two },
        whenNumbers(
          [soil("length"), soil("steepness")],
          call(slopeFactor, { length: soil("length"), steepness: soil("steepness") }),
        ),
      ),
    ],
  };
}

function soilLines(start: typeof erosionExample | null): Entry[] {
  return [
    soilLine("rain", "Rain factor", "R", start?.rain ?? null, coverLimits.rain, "100 to 300 in the Corn Belt."),
    soilLine(
      "erodibility",
      "Erodibility",
      "K",
      start?.erodibility ?? null,
      coverLimits.erodibility,
      "From the soil survey.",
    ),
    soilLine(
      "length",
      "Length of slope",
      "ft",
      start?.slopeLengthFt ?? null,
      coverLimits.slopeLength,
      "Top to where soil settles.",
    ),
    soilLine(
      "steepness",
      "Steepness",
      "%",
      start?.steepnessPct ?? null,
      coverLimits.steepness,
      "Feet of fall in 100 ft.",
    ),
    soilLine(
      "practice",
      "Practice",
      "P",
      start?.practice ?? null,
      coverLimits.practiceFactor,
      "1: rows up and down the slope.",
    ),
    soilLine(
      "tolerance",
      "Tolerance",
      "ton/ac",
      start?.toleranceTonPerAc ?? null,
      coverLimits.tolerance,
      "T of the soil survey.",
    ),
  ];
}

function soilLine(key: string, label: string, unit: string, start: number | null, limit: Limit, says: string): Entry {
  return typedEntry({ key, label, unit, format: formats.upToThree, says }, start, within(limit, label));
}

/** The first two systems side by side. */
export function compareBlock(): MatrixBlock {
  return {
    kind: "matrix",
    key: "systems",
    title: "Side by side",
    corner: "An acre",
    columns: systems.map(({ key }) => ({ key, head: quiet(ofSystem(key, 1)) })),
    rows: [...workRows(), ...erosionRows()],
  };
}

function workRows(): MatrixRow[] {
  return [
    compared("passes", "Passes", "", formats.whole, 2),
    compared("fuel", "Diesel", "gal/ac", formats.two, 3),
    compared("hours", "Machine time", "h/ac", formats.upToThree, 4),
    compared("labor", "Labor", "h/ac", formats.upToThree, 5),
    { ...compared("cost", "Cost", "$/ac", formats.cents, 9), total: true },
    compared("cover", "Cover left", "%", formats.whole, 6),
    compared("low", "Cover at least", "%", formats.whole, 7),
    compared("high", "Cover at most", "%", formats.whole, 8),
    wordsRow({ key: "note", label: "Note" }, systems, (system) => quiet(ofSystem(system, 10))),
  ];
}

function erosionRows(): MatrixRow[] {
  const known = (system: System, cell: Expression) =>
    whenNumbers([value("factor", system), soil("rain"), soil("erodibility"), soil("slope"), soil("practice")], cell);
  return [
    row("factor", "Loss against bare ground", "C", formats.two, (system) =>
      whenNumbers([value("cover", system)], call(coverFactor, { cover: value("cover", system) })),
    ),
    row("loss", "Soil loss", "ton/ac/yr", formats.one, (system) =>
      known(
        system,
        call(soilLoss, {
          rain: soil("rain"),
          erodibility: soil("erodibility"),
          slopeFactor: soil("slope"),
          cover: value("factor", system),
          practice: soil("practice"),
        }),
      ),
    ),
    row("ratio", "Against tolerance", "× T", formats.two, (system) =>
      whenNumbers(
        [value("loss", system), soil("tolerance")],
        call(soilLossRatio, { loss: value("loss", system), tolerance: soil("tolerance") }),
      ),
    ),
    wordsRow({ key: "words", label: "In words" }, systems, (system) =>
      whenNumbers([value("ratio", system)], formula`IF(${value("ratio", system)}<=1,"● within T","▼ over T")`),
    ),
  ];
}

/** A line of the table of TILLAGECOMPARE, by its column there. */
function compared(key: string, label: string, unit: string, format: string, column: number): MatrixRow {
  return row(key, label, unit, format, (system) => quiet(ofSystem(system, column)));
}

function row(key: string, label: string, unit: string, format: string, cell: (of: System) => Expression): MatrixRow {
  return computedRow({ key, label, unit, format }, systems, cell);
}

function ofSystem(system: System, column: number): Expression {
  const table = call(tillageCompare, {
    systems: passTable.all("system"),
    passes: passTable.all("pass"),
    startCover: soil("crop"),
    fuel: passTable.all("diesel"),
    hours: passTable.all("hours"),
    costs: passTable.all("cost"),
  });
  return formula`INDEX(${table},${systemRows[system]},${column})`;
}
