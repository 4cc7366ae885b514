import type { WrittenBlock } from "../../../hosts/port";
import type { Said } from "../parts/outcome";
import type { LedgerReading } from "../tables/ledgers";
import type { Quantity } from "./quantities";

/** The cell behind a quantity, as it was read. */
export interface Bound {
  readonly address: string;
  /** null: the cell holds no number. */
  readonly value: number | null;
  /** Where a number of one's own goes; missing when the sheet works the value out. */
  readonly entry?: { readonly address: string; readonly value: number | null };
}

/** A part of the costs that may turn out otherwise; as typed. */
export interface CostLine {
  readonly name: string;
  readonly planned: string;
  readonly low: string;
  readonly high: string;
}

export interface Scenario {
  readonly name: string;
  readonly values: Readonly<Partial<Record<Quantity, number>>>;
}

/** What the pane remembers with a workbook. */
export interface Kept {
  /** What is tried; a quantity without an entry follows the sheet. */
  readonly typed: Readonly<Partial<Record<Quantity, string>>>;
  /** Lowest and highest as typed, by "yield.low". */
  readonly ranges: Readonly<Record<string, string>>;
  readonly lines: readonly CostLine[];
  readonly scenarios: readonly Scenario[];
  /** Cells the person tied to quantities, by address. */
  readonly cells: Readonly<Partial<Record<Quantity, string>>>;
  /** The sheet chosen where several are there; see places.ts. */
  readonly place: string;
}

export interface WhatIfState {
  readonly kept: Kept;
  /** The workbook that kept belongs to; undefined until it was read. */
  readonly workbook?: string | undefined;
  /** Counts the readings, so that a slow one does not replace a newer one. */
  readonly reading: number;
  readonly places: readonly { readonly key: string; readonly sheet: string }[];
  readonly crop: string;
  readonly bound: Readonly<Partial<Record<Quantity, Bound>>>;
  readonly scenarioName: string;
  readonly asking: boolean;
  /** What came of the last order, said where it was given. */
  readonly said?: (Said & { readonly at: "take" | "keep" | "sheet" }) | undefined;
  /** What stood in the cells before the last write. */
  readonly former?: readonly WrittenBlock[] | undefined;
  /** The ledgers that pictures are drawn from; missing until they are asked for. */
  readonly ledgers?: readonly LedgerReading[] | undefined;
}

export const nothingKept: Kept = { typed: {}, ranges: {}, lines: [], scenarios: [], cells: {}, place: "" };

export const firstWhatIf: WhatIfState = {
  kept: nothingKept,
  reading: 0,
  places: [],
  crop: "",
  bound: {},
  scenarioName: "",
  asking: false,
};
