import type { RangeShape } from "../core/statistics/three-point";
import { choice, optional, vocabulary } from "./frame";

const rangeShapeWords = vocabulary<RangeShape>("range shape", {
  triangular: { label: "triangular", also: ["triangle"] },
  pert: { label: "PERT", also: ["beta", "beta PERT", "smooth"] },
});

/** How likely the values between a lowest, a likeliest and a highest are. */
export const rangeShape = optional(
  choice(rangeShapeWords, {
    says: "how the range is filled: straight slopes, or PERT, a smooth curve with thinner ends",
  }),
  "triangular",
  "triangular",
);
