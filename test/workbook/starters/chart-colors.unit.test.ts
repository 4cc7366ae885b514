import { chartColors } from "../../../src/workbook/starters/chart-colors";

/** How light a color comes out of a printer without color, 0 to 255. */
function grey(color: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => parseInt(color.slice(from, from + 2), 16));
  return 0.299 * red + 0.587 * green + 0.114 * blue;
}

it.each([
  ["income", "running"],
  ["income", "all"],
  ["running", "all"],
  ["running", "soil"],
] as const)("%s and %s stay apart on paper without color", (one, other) => {
  expect(Math.abs(grey(chartColors[one]) - grey(chartColors[other]))).toBeGreaterThan(40);
});
