import type { SoilConductivity } from "../../core/drainage/conductivity";
import { drainageLimits } from "../../core/drainage/drainage-limits";
import type { PipeWall } from "../../core/drainage/pipe-flow";
import type { ConductivityTextureKey } from "../../reference/drainage/conductivity";
import type { PipeKindKey } from "../../reference/drainage/pipes";
import { optional, quantity } from "../frame";
import { orWord } from "../number-or-word";
import { conductivityTextureWords, pipeKindWords } from "./drainage-words";

/** Arguments that several drainage functions share. */
export const depth = quantity(drainageLimits.drainDepth, { says: "depth of the drains below the surface" });
export const midwayTable = quantity(drainageLimits.midwayTable, {
  says: "depth of the water table midway between drains that you will accept, often 1 to 2 ft",
});
export const depthToBarrier = quantity(drainageLimits.depthToBarrier, {
  says: "depth from the surface to the layer that holds water up; unknown: try once and twice the drain depth more",
});
export const drainRate = quantity(drainageLimits.drainRate, {
  says: "drainage coefficient: water to carry off in a day, such as 0.375",
});
export const spacing = quantity(drainageLimits.spacing, { says: "distance from drain to drain" });
export const diameter = quantity(drainageLimits.diameter, { says: "inside diameter" });
export const grade = quantity(drainageLimits.grade, { says: "fall in 100 ft of length, in feet: 0.1 is 0.1 %" });

function conductivityInWords(says: string) {
  return orWord<ConductivityTextureKey, SoilConductivity>(
    quantity(drainageLimits.conductivity, { says }),
    conductivityTextureWords,
    { ofNumber: (ftPerDay) => ({ ftPerDay }), ofWord: (texture) => ({ texture }) },
  );
}

export const conductivity = conductivityInWords(
  "how fast water moves through the soil; 1 in/h is 2 ft/day. Or a texture, whose average may be ten times off in one field",
);
export const conductivityBelow = optional(
  conductivityInWords("the same below the drains, where that soil differs"),
  null,
  "the same as above the drains",
);
export const radius = optional(
  quantity(drainageLimits.radius, {
    says: "outside radius of the tubing; 0.2 stands for the entry loss of 4-inch tubing",
  }),
  null,
  "2: the outside of 4-inch tubing",
);
export const roughness = optional(
  orWord<PipeKindKey, PipeWall>(
    quantity(drainageLimits.roughness, {
      says: "Manning n, or the pipe: single wall, dual wall, clay or concrete tile",
    }),
    pipeKindWords,
    { ofNumber: (manningN) => ({ manningN }), ofWord: (pipe) => ({ pipe }) },
  ),
  { pipe: "singleWall" } as const,
  "single wall: corrugated tubing, n by its size",
);
