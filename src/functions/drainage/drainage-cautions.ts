/** Said at the functions whose work they concern. */
export const digging =
  "Call before you dig, and wait until buried lines are marked; trench walls cave in: never enter a trench without shoring or a box.";
export const drainageLaw =
  "Drainage law, outlet rights and wetland rules come first: ask the drainage authority and the USDA office before any work.";
export const design =
  "An estimate for planning: a surveyed grade, the local drainage guide and, where the law asks for it, a licensed designer decide.";
