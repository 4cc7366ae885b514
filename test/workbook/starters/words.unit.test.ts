import { starters } from "../../../src/workbook/starters";
import { planOf, show } from "./shown-sheet";

describe("words that formulas make", () => {
  it.each(starters.map(({ key }) => key))("fit where they stand in the %s", async (key) => {
    const book = await show(planOf(key));
    const cut: string[] = [];
    for (const { name, cells, columnWidths } of book.plan.sheets) {
      const all = columnWidths.reduce((sum, width) => sum + width, 0);
      const filled = new Set(
        cells.flatMap(({ row, column, content = "" }) => (content === "" ? [] : [`${row},${column}`])),
      );
      /** A cell with the free ones beside it, over which its words may run. */
      const roomAt = (row: number, column: number): number => {
        let end = column + 1;
        while (end < columnWidths.length && !filled.has(`${row},${end}`)) end += 1;
        return columnWidths.slice(column, end).reduce((sum, width) => sum + width, 0);
      };
      for (const { row, column, content, style } of cells) {
        const value = book.at(name, row, column);
        if (typeof content !== "object" || typeof value !== "string" || style === "title") continue;
        const room = style === "body" ? all : roomAt(row, column);
        if (value.length * 0.92 > room) cut.push(`${name}: ${value}`);
      }
    }
    expect(cut).toEqual([]);
  });
});
