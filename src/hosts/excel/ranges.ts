import { areaAddress, parseAddress, parseTableColumn, type SheetArea } from "../address";

/** The cells of an area, on the sheet in sight when it names none. */
export function rangeIn({ sheet, area }: SheetArea, { workbook: { worksheets } }: Excel.RequestContext): Excel.Range {
  const on = sheet === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(sheet);
  return on.getRange(areaAddress(area));
}

/** The cells at an address such as "Fields!B7"; those of a name; or those of a table column such as "Fields[Acres]". */
export function rangeAt(reference: string, context: Excel.RequestContext): Excel.Range {
  const place = parseAddress(reference);
  if (place) return rangeIn(place, context);
  const inTable = parseTableColumn(reference);
  if (!inTable) return context.workbook.names.getItem(reference).getRange();
  return context.workbook.tables.getItem(inTable.table).columns.getItem(inTable.column).getDataBodyRange();
}
