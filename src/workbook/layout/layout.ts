import type { Block } from "../model/block";
import type { SheetModel, WorkbookModel } from "../model/workbook-model";
import type { FinalNames } from "../names/choose-names";
import { fragment, type DraftCell, type Fragment, type Ground } from "./fragment";
import { layCharts } from "./lay-charts";
import { layEntries } from "./lay-entries";
import { layMatrix } from "./lay-matrix";
import { layParagraphs } from "./lay-paragraphs";
import { layRows } from "./lay-rows";
import { layTable } from "./lay-table";

/** A sheet on which everything has its place. */
export interface DraftSheet {
  readonly model: SheetModel;
  readonly content: Fragment;
}

const firstBlockRow = 3;
const titleHeight = 28;

/** Stacks the blocks of every sheet below its title and question, one free row between them. */
export function layout(model: WorkbookModel, names: FinalNames): readonly DraftSheet[] {
  return model.sheets.map((sheet) => ({ model: sheet, content: laySheet(sheet, names) }));
}

function laySheet(sheet: SheetModel, names: FinalNames): Fragment {
  const widths = widthsOf(sheet, names);
  const width = widths.reduce((sum, each) => sum + each, 0);
  const laid: Fragment[] = [];
  let top = firstBlockRow;
  for (const block of sheet.blocks) {
    const piece = layBlock(block, { top, width, names });
    laid.push(piece);
    top = piece.end + 1;
  }
  return together([titleRows(sheet), ...laid], widths, top - 1);
}

function layBlock(block: Block, ground: Ground): Fragment {
  switch (block.kind) {
    case "entries":
      return layEntries(block, ground);
    case "table":
      return layTable(block, ground);
    case "matrix":
      return layMatrix(block, ground);
    case "rows":
      return layRows(block, ground);
    case "paragraphs":
      return layParagraphs(block, ground);
    case "charts":
      return layCharts(block, ground);
  }
}

/** Each column as wide as the widest wish for it; the sheet's own widths win. */
function widthsOf(sheet: SheetModel, names: FinalNames): number[] {
  const wishes = sheet.blocks.map((block) => layBlock(block, { top: 0, width: 1000, names }).widths);
  const columns = Math.max(sheet.widths?.length ?? 0, ...wishes.map(({ length }) => length));
  return Array.from(
    { length: columns },
    (_, column) => sheet.widths?.[column] ?? Math.max(0, ...wishes.map((widths) => widths[column] ?? 0)),
  );
}

function titleRows({ title, answers }: SheetModel): Fragment {
  const cells: DraftCell[] = [
    { row: 0, column: 0, content: title, style: "title" },
    { row: 1, column: 0, content: answers, style: "answers" },
  ];
  return fragment({ cells, heights: [[0, titleHeight]], end: 2 });
}

function together(pieces: readonly Fragment[], widths: readonly number[], end: number): Fragment {
  return fragment({
    cells: pieces.flatMap(({ cells }) => cells),
    tables: pieces.flatMap(({ tables }) => tables),
    names: pieces.flatMap(({ names }) => names),
    places: pieces.flatMap(({ places }) => places),
    validations: pieces.flatMap(({ validations }) => validations),
    rules: pieces.flatMap(({ rules }) => rules),
    notes: pieces.flatMap(({ notes }) => notes),
    charts: pieces.flatMap(({ charts }) => charts),
    heights: pieces.flatMap(({ heights }) => heights),
    widths,
    end,
  });
}
