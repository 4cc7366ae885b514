import type { CellPlace } from "../area";
import type { TrialDesign } from "../../core/trials/trial-layout";

/** What the pane has drawn, with the cells its numbers come from. */
export type Picture = LedgerPicture | DriftPicture | GridPicture | TornadoPicture | PairsPicture | BlocksPicture;

export type Trade = "potash" | "phosphate";

/** What is put on less what two crops take, field by field. */
export interface LedgerPicture {
  readonly kind: "ledger";
  readonly trade: Trade;
  readonly rows: readonly { readonly field: CellPlace; readonly perYear: CellPlace }[];
}

/** Where the soil test is heading, field by field. */
export interface DriftPicture {
  readonly kind: "drift";
  readonly trade: Trade;
  readonly rows: readonly {
    readonly field: CellPlace;
    readonly now: CellPlace;
    readonly byPlan: CellPlace;
    readonly nothingOn: CellPlace;
  }[];
}

export const triedFigures = ["yield", "price", "cost", "perBushel", "other"] as const;
export type TriedFigure = (typeof triedFigures)[number];

/** One number of an acre: the cell it follows, or a number of its own. */
export type Tried = { readonly follows: CellPlace } | { readonly value: number };
export type TriedAcre = Readonly<Record<TriedFigure, Tried>>;

/** Profit of an acre at other yields and prices. */
export interface GridPicture {
  readonly kind: "grid";
  readonly crop: string;
  readonly tried: TriedAcre;
  readonly yieldStep: number;
  readonly priceStep: number;
}

/** How far profit moves with each figure, the widest first. */
export interface TornadoPicture {
  readonly kind: "tornado";
  readonly crop: string;
  readonly tried: TriedAcre;
  readonly swings: readonly SwingRange[];
}

export interface SwingRange {
  readonly name: string;
  /** The figure that moves, or the amount planned of a part of the costs. */
  readonly moves: TriedFigure | { readonly planned: number };
  readonly low: number;
  readonly high: number;
}

interface TrialPicture {
  readonly name: string;
  readonly design: TrialDesign;
  readonly confidencePct: number;
}

/** Two treatments: the gain of each pair and of all. */
export interface PairsPicture extends TrialPicture {
  readonly kind: "pairs";
  readonly treatments: { readonly check: string; readonly treated: string };
  readonly pairs: readonly {
    readonly block: number;
    readonly check: number | null;
    readonly treated: number | null;
  }[];
  readonly money?: { readonly priceUsdPerBu: number; readonly costUsdPerAc: number };
}

/** Several treatments: the gain of each over the check. */
export interface BlocksPicture extends TrialPicture {
  readonly kind: "blocks";
  readonly check: string;
  readonly strips: readonly {
    readonly strip: number;
    readonly block: number;
    readonly treatment: string;
    readonly yieldBuPerAc: number | null;
  }[];
  /** Costs by treatment, in the order in which the strips first name them. */
  readonly money?: {
    readonly priceUsdPerBu: number;
    readonly costs: readonly { readonly treatment: string; readonly usdPerAc: number }[];
  };
}
