import { Workbook } from "exceljs";
import fc from "fast-check";
import { CalculatedCells } from "../../../src/hosts/calculated-workbook";
import { readXlsx } from "../../../src/hosts/xlsx/read/read-xlsx";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { cell, formula, plan, sheet } from "../plan-parts";
import { nastyTexts } from "../../nasty-texts";
import { OpenPackage } from "./open-package";

/** Nothing a person types may become a formula or markup in the file, spoil it, or come back as anything else. */
const nastyText = fc.oneof(
  fc.constantFrom(...nastyTexts),
  fc.string({ unit: "binary", minLength: 1, maxLength: 40 }),
  fc
    .array(
      fc.constantFrom("_x", "0041", "_", "&", "lt;", "<", ">", '"', "'", "]]>", "=", "\t", "\r", "\n", "$&", "{", "\0"),
      {
        minLength: 1,
        maxLength: 8,
      },
    )
    .map((pieces) => pieces.join("")),
);

const sheetName = nastyText
  .map((text) => text.replace(/[[\]:*?/\\\p{C}]/gu, "").replace(/^'+|'+$/g, ""))
  .filter((text) => text.trim() !== "" && text.length <= 31);

const cells = { top: 0, left: 0, bottom: 2, right: 0 };

interface Named {
  readonly text: string;
  readonly name: string;
}

/** A sheet for each text, with the text in every place that a person's words can reach. */
function planWith(texts: readonly Named[]): { book: WorkbookPlan; values: CalculatedCells } {
  const values = new CalculatedCells();
  for (const { text, name } of texts) values.set(name, 1, 1, text);
  const [title] = texts;
  const names = texts.map(({ text, name }, index) => ({ name: `Name${index}`, sheet: name, area: cells, says: text }));
  return { book: { ...plan(texts.map(sheetWith), names), title: title?.text ?? "" }, values };
}

function sheetWith({ text, name }: Named, index: number) {
  const table = { name: `Fields${index}`, area: { top: 0, left: 0, bottom: 2, right: 1 }, totals: true };
  return sheet(
    name,
    [
      cell(0, 0, "Field", "head"),
      cell(0, 1, `${text} `, "head"),
      cell(1, 0, text, "inputText"),
      cell(1, 1, formula("=A2"), "computedText"),
      cell(2, 0, text, "totalText"),
      { ...cell(4, 0, text, "link"), link: name },
    ],
    {
      tables: [table],
      notes: [{ row: 1, column: 0, text }],
      validations: [{ kind: "list", area: cells, words: ["yes"], prompt: text, refusal: text }],
      charts: [
        {
          kind: "bar",
          title: text,
          alt: text,
          categories: { sheet: name, area: cells },
          series: [{ name: text, values: { sheet: name, area: cells }, color: "#5a4636" }],
          xTitle: text,
          yTitle: text,
          at: { top: 6, left: 0, bottom: 12, right: 3 },
        },
      ],
      print: { orientation: "portrait", fit: { wide: 1, tall: 0 }, footer: text },
    },
  );
}

/** A file is UTF-8 and XML, which have no place for half a sign and for two code points. */
const asKept = (text: string) => text.replace(/\p{Surrogate}|[\ufffe\uffff]/gu, "\ufffd");

async function expectText(texts: readonly Named[]): Promise<void> {
  const { book, values } = planWith(texts);
  const bytes = await writeXlsx(book, values);

  const parts = new OpenPackage(bytes);
  for (const part of parts.paths) parts.xml(part);
  const formulas = texts.map((_, index) => {
    const [data] = [...parts.xml(`xl/worksheets/sheet${index + 1}.xml`).getElementsByTagName("sheetData")];
    return [...(data?.getElementsByTagName("f") ?? [])].map(({ textContent }) => textContent);
  });
  expect(formulas).toEqual(texts.map(() => ["A2"]));

  const { plan: back } = await readXlsx(bytes);
  const contents = back.sheets.map((one) =>
    [
      [1, 0],
      [2, 0],
      [0, 1],
    ].map(([row, column]) => one.cells.find((found) => found.row === row && found.column === column)?.content),
  );
  expect(back.sheets.map(({ name }) => name)).toEqual(texts.map(({ name }) => name));
  expect(contents).toEqual(texts.map(({ text }) => [asKept(text), asKept(text), `${asKept(text)} `]));

  // The second reader keeps sheets by name in a plain object, and changes that object's prototype.
  if (texts.some(({ name }) => name in {})) return;
  const other = new Workbook();
  await other.xlsx.load(Buffer.from(bytes) as unknown as ArrayBuffer); // exceljs declares an older Buffer
  const found = other.worksheets.map((one) => one.getCell("A2").value);
  expect(found).toEqual(texts.map(({ text }) => asKept(text)));
}

it("the known ones stay text in the file, and come back", async () => {
  await expectText(nastyTexts.map((text, index) => ({ text, name: `Sheet ${index + 1}` })));
});

it("sheets may be called like members of every object", async () => {
  await expectText(["__proto__", "constructor", "toString"].map((name) => ({ text: name, name })));
});

it("any text stays text in the file, under a sheet of any name, and comes back", async () => {
  const texts = fc.uniqueArray(fc.record({ text: nastyText, name: sheetName }), {
    minLength: 1,
    maxLength: 8,
    selector: ({ name }) => name.toLowerCase(),
  });
  await fc.assert(fc.asyncProperty(texts, expectText), { numRuns: 10 });
});
