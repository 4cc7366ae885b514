import { cellText, escapeXml } from "./package-parts";
import type { StoredFormula, TableColumnFacts, TableFacts } from "../tables";

/** Writes the row formula and the total of each column into the part of a table. */
export function withColumnFormulas(xml: string, { columns }: TableFacts): string {
  return xml.replace(/<tableColumn id="(\d+)" name="([^"]*)"\/>/g, (written, id: string, name: string) => {
    const facts = columns[Number(id) - 1];
    if (!facts || (!facts.rowFormula && !facts.total)) return written;
    return `<tableColumn id="${id}" name="${name}"${totalAttribute(facts)}>${inside(facts)}</tableColumn>`;
  });
}

function totalAttribute({ total }: TableColumnFacts): string {
  if (total === undefined) return "";
  return typeof total === "string" ? ` totalsRowLabel="${escapeXml(cellText(total))}"` : ' totalsRowFunction="custom"';
}

function inside({ rowFormula, total }: TableColumnFacts): string {
  const row = rowFormula ? formula("calculatedColumnFormula", rowFormula) : "";
  return row + (typeof total === "object" ? formula("totalsRowFormula", total) : "");
}

function formula(element: string, { stored, maySpill }: StoredFormula): string {
  return `<${element}${maySpill ? ' array="1"' : ""}>${escapeXml(stored)}</${element}>`;
}
