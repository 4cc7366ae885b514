/** What every host says of cells. */
export const cells = {
  noAddress: (text: string) => `${text} is not an address of cells.`,
  holdsFormula: (address: string) => `${address} holds a formula, which stays. Nothing was written.`,
  notEmpty: (address: string) =>
    `${address} is not empty. Select a cell with empty cells around it. Nothing was written.`,
  nothingToDraw: "Nothing to draw yet: its cells hold no numbers.",
};
