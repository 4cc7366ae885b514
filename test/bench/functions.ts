import { removal } from "../../src/core/nutrients/removal";
import { removal as removalOnSheet } from "../../src/functions/nutrients/removal";
import { runFunction } from "../../src/functions/frame/run";
import type { CellIn } from "../../src/functions/frame/cell";
import { median, type Figure } from "./figure";

const rows = 1_048_575;
const calls = 100_000;

/** Speed of the runner, on the function a farm plan calls most. */
function functionSpeeds(): Figure[] {
  const yields: CellIn[][] = Array.from({ length: rows }, (_, row) => [100 + (row % 150)]);
  const spilled = median(3, () => runFunction(removalOnSheet, ["corn", yields, "K2O"]));
  const single = median(3, () => {
    for (let call = 0; call < calls; call++) runFunction(removalOnSheet, ["corn", 100 + (call % 150), "K2O"]);
  });
  const asMany = median(3, () => {
    for (let call = 0; call < rows; call++) runFunction(removalOnSheet, ["corn", 100 + (call % 150), "K2O"]);
  });
  const refused = median(3, () => {
    for (let call = 0; call < calls; call++) runFunction(removalOnSheet, ["corn", 1e7 + call, "K2O"]);
  });
  const bare = median(3, () => {
    yields.map(([yieldPerAc]) => [bareRemoval(Number(yieldPerAc))]);
  });
  return [
    { what: "REMOVAL spilling over 1,048,575 rows", value: spilled, unit: "ms", limit: 1500 },
    { what: "REMOVAL, 100,000 calls of one cell", value: single, unit: "ms", limit: 500 },
    {
      what: "per cell of the spill",
      value: (spilled / rows) * 1e6,
      unit: "ns",
      limit: Math.round((3 * bare * 1e6) / rows),
      against: { what: "bare formula over the same column", value: (bare / rows) * 1e6 },
    },
    {
      what: "per single-cell call",
      value: (asMany / rows) * 1e6,
      unit: "ns",
      limit: Math.round((3 * bare * 1e6) / rows),
      against: { what: "bare formula", value: (bare / rows) * 1e6 },
    },
    {
      what: "per refused call, its sentence written",
      value: (refused / calls) * 1e6,
      unit: "ns",
      against: { what: "one that answers", value: (asMany / rows) * 1e6 },
    },
  ];
}

function bareRemoval(yieldPerAc: number): number {
  return removal({ crop: "corn", yieldPerAc, nutrient: "K2O", part: null, set: null, moisturePct: null })
    .removedLbPerAc;
}

console.log(JSON.stringify(functionSpeeds()));
