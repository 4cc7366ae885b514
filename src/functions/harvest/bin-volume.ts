import { binVolume as binVolumeOf, type Peak } from "../../core/harvest/bin-volume";
import { harvestLimits } from "../../core/harvest/harvest-limits";
import type { PeakGrainKey } from "../../reference/harvest/storage";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { checkLines } from "../check-lines";
import { peakGrainWords } from "./harvest-words";
import { binEntry, treatedSeed } from "../cautions";

const peak = optional(
  orWord<PeakGrainKey, Peak>(
    quantity(harvestLimits.peak, {
      says: "height of the peak above the wall line, below 0 for a cone drawn down; or the grain whose usual peak it is: corn, soybean or wheat",
    }),
    peakGrainWords,
    { ofNumber: (heightFt) => ({ heightFt }), ofWord: (grain) => ({ grain }) },
  ),
  { heightFt: 0 } as const,
  "0: leveled",
);

export const binVolume = worksheetFunction({
  name: "BINVOLUME",
  family: "harvest",
  summary: "Bushels of grain in a round bin, by volume.",
  asks: ["how many bushels in my bin", "bin capacity", "measure grain in a bin"],
  args: {
    diameter: quantity(harvestLimits.binDiameter, { says: "inside diameter of the bin" }),
    depth: quantity(harvestLimits.grainDepth, { says: "depth of grain along the wall" }),
    peak,
    packFactor: optional(
      quantity(harvestLimits.packFactor, { says: "how much the grain is packed by its own weight, 1 to 1.08" }),
      1,
      "1: no packing",
    ),
  },
  returns: { shape: "one", unit: "bu", says: "bushels by volume; PAIDBUSHELS turns them into bushels by weight" },
  sources: ["iowa-grain-warehouse", "grain-angle", "uwex-bushels-test-weight"],
  cautions: [binEntry, treatedSeed],
  example: {
    call: [30, 20, "corn"],
    gives: 12_496.13,
    tolerance: 0.05,
    because: "by hand: 706.858 sq ft × (20 + 6 / 3) = 15,550.88 cu ft / 1.244456; the peak is 0.4 × 15 = 6 ft",
  },
  compute: ({ diameter, depth, peak: height, packFactor }) =>
    binVolumeOf({ diameterFt: diameter, depthFt: depth, peak: height, packFactor }),
  value: (result) => result.bushels,
  working: (result) => [
    line("A foot of depth holds", result.bushelsPerFoot, "bu"),
    line("Below the wall line", result.levelBu, "bu"),
    line("Height of the peak", result.peakFt, "ft"),
    line("In the peak", result.peakBu, "bu"),
    line("Space the grain fills", result.volumeCuFt, "cu ft"),
    line("Bushels", result.bushels, "bu"),
    line("Mind", "wet grain and fines stand steeper; corn over 54 and soybean over 56 lb a bushel packs to more"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
