/** The one sheet of the starter: what it is called and what it is for. */
export const quickSheet = {
  name: "Quick what if",
  purpose: "one crop: break-evens, profit grid, and what the grain takes",
};
