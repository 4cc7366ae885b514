/** Colours of chart series; hues that stay apart for colour-blind readers, light to dark. */
export const chartColors = {
  income: "#2c6e5a",
  running: "#d9a46f",
  all: "#8a2f3d",
  soil: "#5a4636",
} as const;
