import { parseAddress } from "../../../hosts/address";
import type { WorkbookHost } from "../../../hosts/port";
import { blocksOf } from "../../../workbook/findings/reading/blocks-of";

interface SelectedColumn {
  readonly address: string;
  /** The words that head the column of the selected cell; nothing where none do. */
  readonly heading: string | undefined;
}

/** What heads the column that the selected cell stands in: of its table, or of a list that looks like one. */
export async function headingOfSelection(host: WorkbookHost): Promise<SelectedColumn> {
  const { address } = await host.readSelection();
  const place = parseAddress(address);
  const { sheets } = await host.readSheets();
  const sheet = sheets.find(({ name }) => name === place?.sheet);
  if (!place || !sheet) return { address, heading: undefined };
  const { top, left } = place.area;
  const block = blocksOf(sheet).find(
    // The row below the last is where a list goes on.
    ({ heads, firstRow, lastRow }) =>
      top >= firstRow - 1 && top <= lastRow + 1 && heads.some(({ column }) => column === left),
  );
  const heading = block?.heads.find(({ column }) => column === left)?.text;
  return { address, heading: heading === "" ? undefined : heading };
}
