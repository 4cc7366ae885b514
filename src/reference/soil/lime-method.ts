import type { Cited } from "../table";
import type { SoilKindKey } from "./soil-kinds";

/** A target pH with the numbers of its equation. */
export interface LimeLine {
  readonly targetPh: number;
  readonly constant: number;
  readonly perBuffer: number;
  readonly perPh: number;
}

/** How a method gets from the laboratory's readings to its own rate. */
export type LimeForm =
  /** constant + perBuffer × (buffer pH × bufferTimes) + perPh × pH, a line per target. */
  | { readonly kind: "lines"; readonly bufferTimes: number; readonly lines: readonly LimeLine[] }
  /** (constant + perBuffer × B + perBufferSquared × B²) × depth. */
  | {
      readonly kind: "depthCurve";
      readonly curves: readonly {
        readonly targetPh: number;
        readonly constant: number;
        readonly perBuffer: number;
        readonly perBufferSquared: number;
      }[];
    }
  /** perPh × (start − B) × (target − pH) / (start − pH). */
  | { readonly kind: "bufferAcidity"; readonly startPh: number; readonly perPh: number }
  /** perMeq × exchangeable acidity; at or under smallUpTo a flat rate where one is printed. */
  | {
      readonly kind: "exchangeableAcidity";
      readonly targets: readonly {
        readonly targetPh: number;
        readonly perMeq: number;
        readonly smallUpToMeq?: number;
        readonly smallRate?: number;
      }[];
    }
  /** Base-unsaturation curve of the Adams-Evans buffer. */
  | {
      readonly kind: "unsaturation";
      readonly startPh: number;
      readonly ratePerPh: number;
      readonly fieldFactor: number;
      readonly curve: { readonly constant: number; readonly linear: number; readonly square: number };
    }
  /** A printed table: one rate per target, by buffer pH. */
  | {
      readonly kind: "table";
      readonly targets: readonly number[];
      readonly rows: readonly (readonly [bufferPh: number, ...rates: number[]])[];
      readonly between: "linear" | "nearest";
      /** The rate for buffer pH below the last row, when one is printed. */
      readonly belowTable?: number;
    };

/** A published lime requirement: what it reads, where it holds and what its tons are made of. */
export interface LimeMethod extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  /** The buffer the laboratory must have used. */
  readonly reads: string;
  readonly soils: readonly SoilKindKey[];
  /** Buffer pH the method is printed for. Above it some methods need no lime, others print nothing. */
  readonly buffer?: {
    readonly min: number;
    readonly max: number;
    readonly above: "no lime" | "not published";
    /** A reading under this comes from a soil well short of neutral. */
    readonly acidUnder: number;
  };
  readonly ph?: { readonly min: number; readonly max: number };
  /** Highest target a method without fixed targets takes. */
  readonly highestTarget?: number;
  /** No lime while the soil is this close to the target. */
  readonly noLimeWithin?: number;
  /** Depth the rate is for, in; null where the depth stands in the equation. */
  readonly depthIn: number | null;
  readonly unit: "ton/ac" | "lb/ac" | "t/ha";
  /** Share of the method's own lime that counts as fully effective. */
  readonly effectiveShare: number;
  readonly basis: string;
  readonly form: LimeForm;
}
