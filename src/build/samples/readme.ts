import type { Starter } from "../../workbook/starters";

/** The page that introduces the sample workbooks. */
export function samplesReadme(starters: readonly Starter[]): string {
  return `# Sample workbooks

The starter workbooks, filled with Windmill Hollow Farm. The farm, its people and its figures are invented; prices
and costs are examples to write over.

${starters.map(section).join("\n")}
## Opening them

- **Excel with Loamsheet**: everything calculates. If a cell shows \`#NAME?\`, open the Loamsheet pane once and use
  *Look it over*.
- **Excel without Loamsheet**: the cells show what was calculated when the file was written. A cell whose inputs you
  change shows \`#NAME?\` until the add-in is there.
- **Other spreadsheet programs**: the native formulas and charts work; cells with a \`LOAM\` function show \`#NAME?\`,
  because the functions come with the add-in.

## Making them again

\`npm run samples\` writes the workbooks: the same code gives the same bytes. \`npm run samples -- --pictures\` also
paints the pictures, and needs LibreOffice, poppler's pdftoppm and Chromium for it (pngquant makes them smaller, and the Carlito font stands in for Calibri).
`;
}

function section({ key, title, forWhom, summary, sheets }: Starter): string {
  const rows = sheets.map(({ name, purpose }) => `| ${name} | ${purpose} |`);
  return `## ${title}: [${key}.xlsx](${key}.xlsx)

For ${forWhom}. ${summary}

![Printed pages of the ${title.toLowerCase()}](${key}.png)

| sheet | purpose |
| --- | --- |
${rows.join("\n")}
`;
}
