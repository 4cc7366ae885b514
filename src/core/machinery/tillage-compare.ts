import { refuseArgument } from "../fault";
import { within } from "../limit";
import { coverLeft, type CoverLeft, type CoverPass, type StartCover } from "../cover/cover-left";
import { coverKept } from "../../reference/cover/tillage-residue";
import type { ResidueKindKey } from "../../reference/cover/residue-kinds";
import { machineryLimits } from "./machinery-limits";

/** One pass of one system, per acre. null: not entered. */
export interface SystemPass {
  readonly system: string;
  readonly pass: CoverPass;
  readonly fuelGalPerAc: number | null;
  readonly hoursPerAc: number | null;
  /** What the pass costs besides the fuel and labor priced below. */
  readonly costUsdPerAc: number | null;
}

export interface TillageCompareInput {
  readonly passes: readonly SystemPass[];
  readonly start: StartCover;
  readonly kind: ResidueKindKey | null;
  /** 0: fuel is within the costs. */
  readonly fuelPriceUsdPerGal: number;
  /** 0: labor is within the costs. */
  readonly wageUsdPerHour: number;
  readonly laborFactor: number;
}

export interface TillageSystem {
  readonly system: string;
  /** Passes over the field; winters are not counted. */
  readonly passes: number;
  readonly fuelGalPerAc: number;
  readonly hoursPerAc: number;
  readonly laborHoursPerAc: number;
  readonly costUsdPerAc: number;
  readonly cover: CoverLeft;
  /** Passes without the figure: the sums are then short of them. */
  readonly withoutFuel: number;
  readonly withoutHours: number;
  readonly withoutCost: number;
}

/** More names than can be compared: another column than that of the systems was pointed to. */
const mostSystems = 100;

/**
 * Tillage systems side by side: each is the sum of its passes, and its cover the product of theirs.
 *
 *   cost = costs of the passes + fuel × its price + machine hours × labor factor × wage
 *
 * @source scs-residue-1992, isu-a3-29
 */
export function tillageCompare(input: TillageCompareInput): TillageSystem[] {
  within("fuelPrice", input.fuelPriceUsdPerGal, machineryLimits.fuelPrice);
  within("wage", input.wageUsdPerHour, machineryLimits.wage);
  within("laborFactor", input.laborFactor, machineryLimits.laborFactor);
  const bySystem = new Map<string, SystemPass[]>();
  for (const pass of input.passes) {
    const known = bySystem.get(pass.system);
    if (known) known.push(pass);
    else bySystem.set(pass.system, [pass]);
  }
  if (bySystem.size > mostSystems) {
    const because = `at most ${mostSystems} different ones; got ${bySystem.size}. Name the system of each pass, not the pass.`;
    refuseArgument("systems", because);
  }
  return [...bySystem].map(([system, passes]) => systemOf(system, passes, input));
}

function systemOf(system: string, passes: readonly SystemPass[], input: TillageCompareInput): TillageSystem {
  const driven = passes.filter(({ pass }) => !isWinter(pass));
  const sum = (of: (pass: SystemPass) => number | null) => driven.reduce((total, pass) => total + (of(pass) ?? 0), 0);
  const without = (of: (pass: SystemPass) => number | null) => driven.filter((pass) => of(pass) === null).length;
  const fuelGalPerAc = sum((pass) => pass.fuelGalPerAc);
  const hoursPerAc = sum((pass) => pass.hoursPerAc);
  const laborHoursPerAc = hoursPerAc * input.laborFactor;
  const pricedUsd = fuelGalPerAc * input.fuelPriceUsdPerGal + laborHoursPerAc * input.wageUsdPerHour;
  return {
    system,
    passes: driven.length,
    fuelGalPerAc,
    hoursPerAc,
    laborHoursPerAc,
    costUsdPerAc: sum((pass) => pass.costUsdPerAc) + pricedUsd,
    cover: coverLeft({ start: input.start, passes: passes.map(({ pass }) => pass), kind: input.kind }),
    withoutFuel: without((pass) => pass.fuelGalPerAc),
    withoutHours: without((pass) => pass.hoursPerAc),
    withoutCost: without((pass) => pass.costUsdPerAc),
  };
}

function isWinter(pass: CoverPass): boolean {
  return "pass" in pass && "isWinter" in coverKept[pass.pass];
}
