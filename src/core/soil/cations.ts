import { needed, refuseArgument } from "../fault";
import { acidityBuffers, cationPpmPerMeq, type AcidityBufferKey } from "../../reference/soil";
import type { Cited } from "../../reference/table";

export interface CationInput {
  readonly calciumPpm: number;
  readonly magnesiumPpm: number;
  readonly potassiumPpm: number;
  readonly sodiumPpm: number;
  readonly bufferPh: number | null;
  readonly buffer: AcidityBufferKey | null;
  readonly soilPh: number | null;
  /** Typed acidity, meq/100 g; comes before a buffer. */
  readonly acidityMeq: number | null;
}

/** meq/100 g of each, and their sum. */
export interface Cations {
  readonly calciumMeq: number;
  readonly magnesiumMeq: number;
  readonly potassiumMeq: number;
  readonly sodiumMeq: number;
  readonly acidityMeq: number;
  readonly basesMeq: number;
  readonly cecMeq: number;
  readonly acidityFrom: "typed" | "pH above 7" | "buffer";
  /** Free lime adds calcium that is not exchangeable. */
  readonly isInflated: boolean;
  readonly cited: readonly Cited[];
}

/**
 * Cation exchange capacity by the sum of cations, meq/100 g.
 *
 *   Ca / 200 + Mg / 120 + K / 391 + Na / 230 (ppm) + acidity; acidity = slope × (neutral − buffer pH)
 *
 * No acidity above pH 7.
 */
export function cations(input: CationInput): Cations {
  const { acidityMeq, acidityFrom, cited } = acidityOf(input);
  const calciumMeq = input.calciumPpm / cationPpmPerMeq.calcium;
  const magnesiumMeq = input.magnesiumPpm / cationPpmPerMeq.magnesium;
  const potassiumMeq = input.potassiumPpm / cationPpmPerMeq.potassium;
  const sodiumMeq = input.sodiumPpm / cationPpmPerMeq.sodium;
  const basesMeq = calciumMeq + magnesiumMeq + potassiumMeq + sodiumMeq;
  const cecMeq = basesMeq + acidityMeq;
  if (cecMeq === 0) {
    refuseArgument("calcium", "calcium, magnesium, potassium and acidity are all 0.");
  }
  return {
    calciumMeq,
    magnesiumMeq,
    potassiumMeq,
    sodiumMeq,
    acidityMeq,
    basesMeq,
    cecMeq,
    acidityFrom,
    isInflated: input.soilPh !== null && input.soilPh > 7.4,
    cited: [cationPpmPerMeq, ...cited],
  };
}

function acidityOf({ acidityMeq, soilPh, bufferPh, buffer }: CationInput): {
  acidityMeq: number;
  acidityFrom: Cations["acidityFrom"];
  cited: readonly Cited[];
} {
  if (acidityMeq !== null) return { acidityMeq, acidityFrom: "typed", cited: [] };
  if (soilPh !== null && soilPh > 7) return { acidityMeq: 0, acidityFrom: "pH above 7", cited: [] };
  const read = needed("bufferPH", bufferPh);
  const method = acidityBuffers[needed("buffer", buffer)];
  return { acidityMeq: Math.max(0, method.slope * (method.neutral - read)), acidityFrom: "buffer", cited: [method] };
}
