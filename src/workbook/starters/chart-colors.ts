/** Colours of chart series; they stay apart for colour-blind readers and as greys on paper. */
export const chartColors = {
  income: "#2c6e5a",
  running: "#d9a46f",
  all: "#5a1622",
  soil: "#5a4636",
} as const;
