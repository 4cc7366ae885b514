import { refuse } from "../../core/fault";
import { crops, type CropKey } from "../../reference/crops";
import { checkBulletin, type Cited } from "../../reference/table";
import { weedFreePeriods, weedReports, type WeedFreeRow, type WeedReportRow } from "../../reference/protection/weeds";
import { choice, line, optional, worksheetFunction, type CellOut } from "../frame";
import { cropWords } from "../words";
import { labelLaw } from "../cautions";
import { checkLine, noteInWords } from "../check-lines";

const oneStudy = "Single studies: time of emergence matters more than numbers, and sites and years differ widely.";
const crop = optional(choice(cropWords, { says: "crop" }), null, "every crop held");

export const weedTable = worksheetFunction({
  name: "WEEDTABLE",
  family: "protection",
  summary: "Yield lost to weeds as studies report it, with densities that paid to treat.",
  asks: ["yield loss from Palmer amaranth", "waterhemp yield loss", "weed studies"],
  args: { crop },
  returns: { shape: "table", unit: "%", says: "a row per report: weed, density, yield lost" },
  sources: [...new Set(weedReports.rows.map(({ source }) => source))],
  cautions: [labelLaw, oneStudy],
  example: {
    call: ["cotton"],
    gives: [
      ["Crop", "Weed", "Weeds from", "to", "Counted", "Loss from %", "to %", "Note"],
      ["cotton", "Palmer amaranth", 1.1, 1.1, "per square meter", 59, 59, "Loss of lint."],
    ],
    because: "by reading: the one report held for cotton",
  },
  compute: (values) => ofCrop<WeedReportRow>(weedReports.rows, values.crop, weedReports.title),
  value: (rows) => [
    ["Crop", "Weed", "Weeds from", "to", "Counted", "Loss from %", "to %", "Note"],
    ...rows.map((row): CellOut[] => [
      crops[row.crop].label,
      row.weed,
      row.low,
      row.high,
      row.per,
      row.lossLowPct ?? "",
      row.lossHighPct ?? "",
      noteInWords(row),
    ]),
  ],
  working: (rows) => [line("Reports", rows.length), ...checkLine(rows)],
  cites: (rows) => rows,
  everyRow: () => [...weedReports.rows],
});

export const weedFreePeriod = worksheetFunction({
  name: "WEEDFREEPERIOD",
  family: "protection",
  summary: "Crop stages by which weeds have to be out, or between which none may stand.",
  asks: [
    "when do weeds hurt corn",
    "critical weed-free period",
    "how long can I wait to spray weeds",
    "when must I kill the weeds",
  ],
  args: { crop },
  returns: { shape: "table", unit: "", says: "a row per study and condition: the stage" },
  sources: [...new Set(weedFreePeriods.rows.map(({ source }) => source))],
  cautions: [labelLaw, oneStudy],
  example: {
    call: ["soybean"],
    gives: [
      ["Crop", "Condition", "What", "Stage", "Note"],
      ["soybean", "7.5-in rows", "weeds out by", "V3", "5 % loss."],
      ["soybean", "15-in rows", "weeds out by", "V2", "5 % loss."],
      ["soybean", "30-in rows", "weeds out by", "V1", "5 % loss."],
      ["soybean", "general advice", "keep weed-free until", "about V4 to R1, canopy closed", checkBulletin],
    ],
    because: "by reading: Weed Technology 17:666, and general advice",
  },
  compute: (values) => ofCrop<WeedFreeRow>(weedFreePeriods.rows, values.crop, weedFreePeriods.title),
  value: (rows) => [
    ["Crop", "Condition", "What", "Stage", "Note"],
    ...rows.map((row): CellOut[] => [crops[row.crop].label, row.condition, row.what, row.stage, noteInWords(row)]),
  ],
  working: (rows) => [
    line("Rows", rows.length),
    ...rows.map(({ condition, what, stage }) => line(condition, `${what} ${stage}`)),
    ...checkLine(rows),
  ],
  cites: (rows) => rows,
  everyRow: () => [...weedFreePeriods.rows],
});

function ofCrop<Row extends Cited & { readonly crop: CropKey }>(
  rows: readonly Row[],
  crop: CropKey | null,
  title: string,
): readonly Row[] {
  const own = rows.filter((row) => crop === null || row.crop === crop);
  if (own.length > 0 || crop === null) return own;
  const held = [...new Set(rows.map((row) => crops[row.crop].label))];
  refuse({
    kind: "notPublished",
    what: `row for ${crops[crop].label}`,
    where: `"${title}"`,
    instead: `It holds: ${held.join(", ")}.`,
  });
}
