import { usualTrial } from "../../reference/trials/usual-trial";
import { isBlank } from "../../functions/frame/cell";
import { cellsGiven, differentCalls, type CallReading } from "./reading/call-reading";
import type { FewBlocks } from "./finding";

/** Trials with fewer blocks or pairs than can usually settle anything. */
export function fewBlocks(calls: readonly CallReading[]): FewBlocks[] {
  return differentCalls(calls, "TRIALBLOCKS", "TRIALPAIRS").flatMap((call): FewBlocks[] => {
    const counted = blocksIn(call) ?? pairsIn(call);
    // A trial that is not filled in yet asks for nothing.
    if (counted === undefined || counted.blocks === 0 || counted.blocks >= usualTrial.leastBlocks) return [];
    return [{ kind: "fewBlocks", at: call.at, ...counted, usual: usualTrial.leastBlocks }];
  });
}

type Counted = Pick<FewBlocks, "blocks" | "unit">;

/** Blocks in which a strip has a yield. */
function blocksIn(call: CallReading): Counted | undefined {
  if (call.name !== "TRIALBLOCKS") return undefined;
  const yields = cellsGiven(call, "yields");
  const blocks = cellsGiven(call, "blocks").filter((block, row) => !isBlank(block) && typeof yields[row] === "number");
  return { blocks: new Set(blocks.map(String)).size, unit: "blocks" };
}

/** Pairs of which both strips have a yield. */
function pairsIn(call: CallReading): Counted | undefined {
  if (call.name !== "TRIALPAIRS") return undefined;
  const treated = cellsGiven(call, "treated");
  const pairs = cellsGiven(call, "check").filter(
    (check, row) => typeof check === "number" && typeof treated[row] === "number",
  );
  return { blocks: pairs.length, unit: "pairs" };
}
