import { refuse } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import { unevenStands, type UnevenKey } from "../../reference/seed/uneven-stand";
import type { Cited } from "../../reference/table";
import { seedLimits } from "./seed-limits";

/** Typed in percent, or what the stand looks like. */
export type UnevenLoss = { readonly lossPct: number } | { readonly key: UnevenKey };

/** Yield taken off for gaps or uneven emergence, % of what an even stand would give. */
export function unevenLoss(loss: UnevenLoss, crop: CropKey): { lossPct: number; cited: readonly Cited[] } {
  if ("lossPct" in loss) {
    within("unevenLoss", loss.lossPct, seedLimits.lossPct);
    return { lossPct: loss.lossPct, cited: [] };
  }
  const row = unevenStands.rows.find(({ key }) => key === loss.key);
  if (row && crop === "corn") return { lossPct: row.lossPct, cited: [row] };
  refuse({
    kind: "notPublished",
    what: `loss by gaps for ${crops[crop].label}`,
    where: `"${unevenStands.title}"`,
    instead: "Enter a loss in percent.",
  });
}
