import type { Reference } from "../formula/reference";
import type { Block, ChartModel } from "../model/block";
import { remarks } from "../model/paragraphs";
import type { SheetModel } from "../model/workbook-model";
import { tabColors } from "../starters/tab-colors";
import { areaFrom, type CellPlace } from "../area";

/** What the sheets of all pictures have in common is added by sheetOf. */
export interface PictureSheet {
  readonly name: string;
  readonly title: string;
  /** The question it answers. */
  readonly answers: string;
  /** Which numbers follow the workbook and which do not. */
  readonly live: string;
  readonly blocks: readonly Block[];
  readonly widths: readonly number[];
  readonly isWide?: boolean;
}

export function sheetOf(
  { name, title, answers, live, blocks, widths, isWide }: PictureSheet,
  madeOn: string,
): SheetModel {
  return {
    key: "picture",
    name,
    tabColor: tabColors.answer,
    title,
    answers,
    blocks: [remarks(`Made ${madeOn}. ${live}`), ...blocks],
    widths,
    print: { orientation: isWide ? "landscape" : "portrait", onePage: true },
  };
}

/** The chart, and under it in words what it shows: not every spreadsheet keeps the description of a chart. */
export function chartWithWords(chart: ChartModel, rows: number): readonly Block[] {
  return [{ kind: "charts", rows, charts: [chart] }, remarks(chart.alt)];
}

export function outside(place: CellPlace): Reference {
  return { to: "outside", sheet: place.sheet, area: areaFrom(place) };
}
