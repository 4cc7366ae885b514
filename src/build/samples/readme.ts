import type { Starter } from "../../workbook/starters";

/** The page that introduces the sample workbooks. */
export function samplesReadme(starters: readonly Starter[]): string {
  return `# Sample workbooks

The starter workbooks, filled with Windmill Hollow Farm. The farm, its people and its figures are invented; prices
and costs are examples to write over.

${starters.map(section).join("\n")}
## Opening them

- **Excel with Loamsheet**: everything calculates. Where a cell shows \`#NAME?\`, open the Loamsheet pane once, then
  press Enter in the cell again.
- **Excel without Loamsheet**: the cells show what was calculated when the file was written. A cell whose inputs you
  change shows \`#NAME?\` until Loamsheet is there.
- **Other spreadsheet programs**: the native formulas and charts work. Cells with a \`LOAM\` function show \`#NAME?\`,
  because the functions come with Loamsheet.

## Making them again

\`npm run samples\` writes the workbooks: the same code gives the same bytes. \`npm run samples -- --pictures\` also
paints the pictures, and needs LibreOffice, poppler's pdftoppm and Chromium for it (pngquant makes them smaller, and the Carlito font stands in for Calibri).
`;
}

function section({ key, title, forWhom, summary, sheets }: Starter): string {
  const lines = sheets.map(({ name, purpose }) => `- **${name}**: ${purpose}`);
  return `## ${title}: [${key}.xlsx](${key}.xlsx)

For ${forWhom}. ${summary}

![Printed pages of the ${title.toLowerCase()}](${key}.png)

${lines.join("\n")}
`;
}
