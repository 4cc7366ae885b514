import { starters } from "../../../src/workbook/starters";
import { planOf, show } from "./shown-sheet";

describe("words that formulas make", () => {
  it.each(starters.map(({ key }) => key))("fit where they stand in the %s", async (key) => {
    const book = await show(planOf(key));
    const cut: string[] = [];
    for (const { name, cells, columnWidths } of book.plan.sheets) {
      const all = columnWidths.reduce((sum, width) => sum + width, 0);
      for (const { row, column, content, style } of cells) {
        const value = book.at(name, row, column);
        if (typeof content !== "object" || typeof value !== "string" || style === "title") continue;
        // Sentences run over the free cells beside them; boxed words have to stay in theirs.
        const room = style === "body" ? all : (columnWidths[column] ?? 0);
        if (value.length * 0.92 > room) cut.push(`${name}: ${value}`);
      }
    }
    expect(cut).toEqual([]);
  });
});
