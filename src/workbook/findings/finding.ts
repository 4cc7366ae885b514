import type { CellPlace } from "../area";

/** Something in a workbook that is missing or doubtful, as plain facts; the pane words it. */
export type Finding =
  | MissingBuffer
  | OldSoilTest
  | ImplausibleFigure
  | TypedOver
  | ForeignExtraction
  | LoneHerbicideGroup
  | FewBlocks
  | DoubleLine
  | ErrorCells
  | UnknownName;

export type FindingKind = Finding["kind"];

interface At {
  /** The cell it leads to. */
  readonly at: CellPlace;
}

/** A field that is due for lime and has no buffer pH. */
export interface MissingBuffer extends At {
  readonly kind: "missingBuffer";
  readonly row: string | undefined;
  readonly ph: number;
  readonly targetPh: number;
}

export interface OldSoilTest extends At {
  readonly kind: "oldSoilTest";
  readonly row: string | undefined;
  readonly year: number;
}

export interface ImplausibleFigure extends At {
  readonly kind: "implausibleFigure";
  readonly what: "price" | "yield";
  readonly head: string;
  readonly crop: string | undefined;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

/** A typed number where the rest of the column has a formula. */
export interface TypedOver extends At {
  readonly kind: "typedOver";
  readonly row: string | undefined;
  readonly head: string;
  readonly value: number;
  /** The column's formula as it would stand in this cell. */
  readonly formula: string;
}

/** A guide asked about a test by an extraction that it is not defined for. */
export interface ForeignExtraction extends At {
  readonly kind: "foreignExtraction";
  readonly guide: string;
  readonly nutrient: string;
  readonly extraction: string;
  readonly takes: readonly string[];
  /** Cells that do so; the finding leads to the first. */
  readonly cells: number;
}

export interface LoneHerbicideGroup extends At {
  readonly kind: "loneHerbicideGroup";
  readonly group: number;
  /** Herbicides of the program, or cells of the list. */
  readonly uses: number;
  /** The pass that leans on it; undefined: the whole season. */
  readonly pass: string | undefined;
}

export interface FewBlocks extends At {
  readonly kind: "fewBlocks";
  readonly blocks: number;
  readonly usual: number;
  readonly unit: "blocks" | "pairs";
}

/** The same line twice, with the same amount. */
export interface DoubleLine extends At {
  readonly kind: "doubleLine";
  readonly label: string;
  readonly amount: number;
  readonly column: string | undefined;
  readonly first: CellPlace;
}

/** Cells of a column that give no answer, all for the same reason. */
export interface ErrorCells extends At {
  readonly kind: "errorCells";
  readonly code: string;
  /** The sentence behind it, where it is known. */
  readonly message: string | undefined;
  readonly cells: readonly CellPlace[];
}

/** Cells that show #NAME?, or would if they did not catch it. */
export interface UnknownName extends At {
  readonly kind: "unknownName";
  /** Names called that are like ours but are none of ours. */
  readonly misspelled: readonly string[];
  /** Cells with a function of ours that the spreadsheet did not know when they were written. */
  readonly mendable: readonly Mendable[];
  /** Those that show #NAME?. */
  readonly cells: readonly CellPlace[];
  /** How many of the mendable ones do not show it. */
  readonly hidden: number;
}

export interface Mendable {
  readonly place: CellPlace;
  /** What stands there. */
  readonly was: string;
  /** What is to stand there: the same, with our names as they are typed. */
  readonly formula: string;
}
