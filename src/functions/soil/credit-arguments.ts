import { nitrogenLimits } from "../../core/nitrogen/nitrogen-limits";
import { stands } from "../../reference/nitrogen";
import { choice, optional, percent, quantity } from "../frame";
import { orWord } from "../number-or-word";
import { previousCropWords, standWords, textureWords } from "../words";

/** Arguments that several nitrogen functions share. */
export const previousCropChoice = choice(previousCropWords, { says: "crop of the season before" });

export const standArgument = optional(
  orWord(
    quantity(nitrogenLimits.plants, {
      says: "alfalfa left: plants per square foot, or good (counted as 4), fair (2), poor (0)",
    }),
    standWords,
    { ofNumber: (plants) => plants, ofWord: (word) => stands[word].plantsPerSqFt },
  ),
  null,
  "waited for where a credit turns on it",
);

export const textureArgument = optional(
  choice(textureWords, { says: "sandy, medium or fine surface soil" }),
  null,
  "waited for where the numbers turn on it",
);

export const organicMatterArgument = optional(
  percent(nitrogenLimits.organicMatter, { says: "soil organic matter", smallIsUsual: true }),
  null,
  "waited for where the guide reads it",
);
