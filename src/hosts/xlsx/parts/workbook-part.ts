import { changePart, replaceOnce, type PackageParts } from "./package-parts";

/** The calculation engine of today's Excel: a workbook that names it is shown as saved, not calculated afresh. */
const calculationEngine = 191029;

/**
 * Keeps the cached values on opening. A full calculation would show #NAME? in every add-in cell until the add-in is
 * there; and the day of writing would make each file differ from the one before.
 */
export function settleWorkbook(parts: PackageParts): void {
  changePart(parts, "xl/workbook.xml", (xml) =>
    replaceOnce(xml, /<calcPr [^>]*\/>/, `<calcPr calcId="${calculationEngine}"/>`),
  );
  changePart(parts, "docProps/core.xml", (xml) =>
    replaceOnce(xml, /<dcterms:modified [^>]*>[^<]*<\/dcterms:modified>/, ""),
  );
  // Other spreadsheets keep cached text only in files that say they are in Excel's own dialect.
  changePart(parts, "docProps/app.xml", (xml) =>
    replaceOnce(xml, /<Application>[^<]*<\/Application>/, "<Application>Microsoft Excel</Application>"),
  );
}
