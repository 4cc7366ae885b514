import { refuseArgument, waitFor } from "../../fault";
import { within } from "../../limit";
import { acrePerHectare, kilogramPerPound, poundPerTon } from "../../units/units";
import {
  limeMethods,
  organicSoilLime,
  residualLime,
  type LimeMethod,
  type LimeMethodKey,
  type SoilKindKey,
} from "../../../reference/soil";
import type { Cited } from "../../../reference/table";
import { buffersWithoutLime, checkOrder, checkSoil, checkTarget } from "./check-readings";
import { methodRate } from "./method-rate";

export interface LimeNeedInput {
  readonly ph: number;
  readonly bufferPh: number | null;
  readonly targetPh: number;
  readonly method: LimeMethodKey;
  /** Depth to be limed, in; null: the depth the method is printed for. */
  readonly depthIn: number | null;
  readonly soil: SoilKindKey;
  /** Exchangeable acidity, meq/100 g. */
  readonly acidityMeq: number | null;
  /** Lime spread earlier and not yet reacted. */
  readonly limedTonPerAc: number;
  readonly monthsSince: number | null;
}

export interface LimeNeed {
  /** Of fully effective lime. */
  readonly needTonPerAc: number;
  readonly why: "rate" | "at target" | "near target" | "buffer needs none";
  readonly methodRate: number;
  readonly methodUnit: LimeMethod["unit"];
  readonly methodDepthIn: number | null;
  readonly depthIn: number | null;
  /** Of fully effective lime, before the credit. */
  readonly beforeCreditTonPerAc: number;
  readonly creditTonPerAc: number;
  readonly method: LimeMethod;
  readonly cited: readonly Cited[];
}

const tonPer: Readonly<Record<LimeMethod["unit"], number>> = {
  "ton/ac": 1,
  "lb/ac": 1 / poundPerTon,
  "t/ha": 1000 / kilogramPerPound / poundPerTon / acrePerHectare,
};

/**
 * Lime needed to bring a soil to a target pH, ton/ac of fully effective lime.
 *
 *   method's rate × (depth / method's depth) × ton per unit × effective share of the method's own lime
 *
 * 0 at or above the target. Refuses targets, soils and buffer readings that the method does not print, and readings
 * that look swapped.
 */
export function limeNeed(input: LimeNeedInput): LimeNeed {
  const method = chooseMethod(input);
  checkTarget(method, input.targetPh);
  checkOrder(method, input.ph, input.bufferPh);
  const none = needsNone(method, input);
  if (none) return noLime(method, none);
  if (method.ph) within(`pH for ${method.label}`, input.ph, { ...method.ph, unit: "" });
  if (buffersWithoutLime(method, input.bufferPh)) return noLime(method, "buffer needs none");

  const rate = methodRate(method.form, input);
  const depthFactor = method.depthIn === null || input.depthIn === null ? 1 : input.depthIn / method.depthIn;
  const beforeCreditTonPerAc = rate * depthFactor * tonPer[method.unit] * method.effectiveShare;
  const creditTonPerAc = Math.min(beforeCreditTonPerAc, limeCredit(input));
  return {
    needTonPerAc: beforeCreditTonPerAc - creditTonPerAc,
    why: "rate",
    methodRate: rate,
    methodUnit: method.unit,
    methodDepthIn: method.depthIn,
    depthIn: input.depthIn ?? method.depthIn,
    beforeCreditTonPerAc,
    creditTonPerAc,
    method,
    cited: creditTonPerAc > 0 ? [method, residualLime] : [method],
  };
}

/** Muck and peat of the IN-MI-OH area have an equation of their own. */
function chooseMethod({ method, soil }: LimeNeedInput): LimeMethod {
  if (method === "inMiOh" && soil === "organic") return organicSoilLime;
  const chosen: LimeMethod = limeMethods[method];
  checkSoil(chosen, soil);
  return chosen;
}

function needsNone(method: LimeMethod, { ph, targetPh }: LimeNeedInput): "at target" | "near target" | undefined {
  if (ph >= targetPh) return "at target";
  return ph >= targetPh - (method.noLimeWithin ?? 0) - 1e-9 && method.noLimeWithin ? "near target" : undefined;
}

function noLime(method: LimeMethod, why: LimeNeed["why"]): LimeNeed {
  return {
    needTonPerAc: 0,
    why,
    methodRate: 0,
    methodUnit: method.unit,
    methodDepthIn: method.depthIn,
    depthIn: method.depthIn,
    beforeCreditTonPerAc: 0,
    creditTonPerAc: 0,
    method,
    cited: [method],
  };
}

/** The North Carolina credit for lime that is still reacting. */
function limeCredit({ method, limedTonPerAc, monthsSince, soil }: LimeNeedInput): number {
  if (limedTonPerAc === 0) return 0;
  if (method !== "nc") {
    refuseArgument(
      "limeApplied",
      "only NC publishes a credit for lime still reacting: leave it out, and wait a year after liming to test.",
    );
  }
  if (monthsSince === null) waitFor("monthsSince");
  return limedTonPerAc * Math.max(0, 1 - residualLime.lossPerMonth[soil] * monthsSince);
}
