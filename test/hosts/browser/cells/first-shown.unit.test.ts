import { firstShown } from "../../../../src/hosts/browser/cells/first-shown";

const columns = [130, 90, 68, 68, 60];
const sizeOf = (index: number) => columns[index] ?? 0;

/** How much the grid scrolls away for an answer: all before the first shown one, and a part of it. */
function scrolledAway({ index, offset }: ReturnType<typeof firstShown>): number {
  return columns.slice(0, index).reduce((sum, width) => sum + width, offset);
}

it("scrolls away what lies between the columns that stay and the wanted one, whatever their widths", () => {
  // The first column stays: for the fourth, 90 + 68 go.
  expect(scrolledAway(firstShown(1, 3, sizeOf))).toBe(158);
  expect(scrolledAway(firstShown(0, 3, sizeOf))).toBe(288);
  expect(firstShown(1, 3, sizeOf)).toEqual({ index: 1, offset: 28 });
});

it("scrolls nothing away for a cell that stays or is the first beside it", () => {
  expect(firstShown(1, 0, sizeOf)).toEqual({ index: 0, offset: 0 });
  expect(firstShown(1, 1, sizeOf)).toEqual({ index: 0, offset: 0 });
});
