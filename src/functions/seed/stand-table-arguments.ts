import { seedLimits } from "../../core/seed/seed-limits";
import type { UnevenLoss } from "../../core/seed/uneven-loss";
import { rowsOfGuide, standGuides } from "../../reference/seed/stand-guides";
import { unevenStands, type UnevenKey } from "../../reference/seed/uneven-stand";
import { populationCurves } from "../../reference/seed/population-curves";
import type { Cited } from "../../reference/table";
import { choice, optional, percent, quantity } from "../frame";
import { orWord } from "../number-or-word";
import { cropWords } from "../words";
import { rowWidth } from "./seed-arguments";
import { hybridWords, standGuideWords, unevenWords } from "./seed-words";

export const standCrop = choice(cropWords, { says: "corn, soybean or wheat" });
export const standGuide = choice(standGuideWords, {
  says: "whose table: Iowa, Illinois or Wisconsin for corn, Illinois or Penn State for soybean, Penn State or Ontario for wheat",
});

export const unevenLossArgument = optional(
  orWord<UnevenKey, UnevenLoss>(
    percent(seedLimits.lossPct, {
      says: "yield lost to gaps or uneven emergence in the stand, or what it looks like",
      smallIsUsual: true,
    }),
    unevenWords,
    { ofNumber: (lossPct) => ({ lossPct }), ofWord: (key) => ({ key }) },
  ),
  { lossPct: 0 },
  "0: an even stand",
);

export const hybrid = (which: string) =>
  optional(choice(hybridWords, { says: `${which}; only Wisconsin tells them apart` }), "full", "full season");

export const standRowWidth = optional(rowWidth, null, "waited for by Ontario, which counts along the row");
export const plants = (says: string) => quantity(seedLimits.stand, { says });

/** Every row a stand table may rest on, by the guide's label. */
export function everyStandRow(guide: string | null): readonly Cited[] {
  const key = guide === null ? null : standGuideWords.find(guide);
  const asked = standGuides.filter((one) => key === null || one.guide === key);
  const curves = asked.flatMap((one) =>
    one.form === "curve" ? populationCurves.rows.filter((row) => row.key === one.curve) : [],
  );
  return [...asked.flatMap(rowsOfGuide), ...curves, ...(key === null ? unevenStands.rows : [])];
}
