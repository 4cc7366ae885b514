/** Colour of a sheet's tab by what one does there; the names say it too. */
export const tabColors = {
  start: "#2f4f6f",
  input: "#b08d3c",
  answer: "#5a4636",
  summary: "#2c6e5a",
} as const;
