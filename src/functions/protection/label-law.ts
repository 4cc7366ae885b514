/** Said with every answer of this family: the sums are ours, the say is the label's. */
export const labelLaw =
  "The label is the law. It sets crop, rate, growth stage, most in a year, protective gear and re-entry, days before harvest or grazing, buffers, wind and heat; a restricted-use product needs a licensed applicator, and registration differs by state and year. This is arithmetic and picks no product.";

export const mixingLaw =
  "Which products may share a tank, and in what order they go in, stands on their labels. Try a new mix in a jar first, and clean the tank out as the labels say.";
