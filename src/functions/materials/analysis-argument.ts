import { limits } from "../../core/limits";
import { percent } from "../frame";

/** Share of one nutrient in a product. */
export const analysisArgument = percent(limits.analysis, {
  says: "share of the nutrient in the product, as on the label: 46 for urea's nitrogen",
});
