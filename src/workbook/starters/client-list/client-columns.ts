import type { ShownValue } from "../../findings/reading/workbook-reading";

/** What a list of clients may say about a field, by the words that head its columns. */
const headWords = {
  client: /^(client|grower|customer|farm|owner|land ?owner|producer|operator)( name)?$/,
  field: /^(field|tract|parcel)( name| id)?$/,
  acres: /^(acres?|ac|area)\b/,
  crop: /^(next |planned )?crop( name)?$/,
  yield: /^(planned )?yield( goal| target)?( bu ac| bushels?)?$/,
  cost: /^(all )?costs?\b/,
  price: /^(cash |planned )?price\b/,
  sampled: /^(date |year )?sampled( on| in)?$|^(soil )?(sample|sampling|test|lab) (date|year)$/,
  ph: /^(soil |water )?ph( in water| 1 1)?$/,
  bufferPh: /buffer|^bph$|^lime (test )?index$/,
  phosphorus: /^(soil test )?(p|phosphorus)( test)?( m3| mehlich 3)?( ppm| lb ac)?$/,
  potassium: /^(soil test )?(k|potassium)( test)?( m3| mehlich 3)?( ppm| lb ac)?$/,
  cec: /^cec\b/,
  organicMatter: /^(om|organic matter)\b/,
  note: /^(notes?|remarks?|comments?)\b/,
} as const;

export type ClientColumn = keyof typeof headWords;

/** Without these a row says nothing that a budget could stand on. */
const needed = ["client", "field", "crop"] as const;

/** The header row of a list of clients and the columns found in it. */
export interface ClientColumns {
  readonly row: number;
  readonly at: ReadonlyMap<ClientColumn, number>;
  /** The header as it is written. */
  readonly heads: ReadonlyMap<ClientColumn, string>;
  /** Columns that look right and cannot be used, a sentence each. */
  readonly leftOut: readonly string[];
}

/** A header stands near the top. */
const rowsSearched = 20;

/** Finds the header of a list of clients by its words; nothing where a sheet has none. */
export function findClientColumns(values: readonly (readonly ShownValue[])[]): ClientColumns | undefined {
  const top = values.slice(0, rowsSearched);
  for (const [row, cells] of top.entries()) {
    const found = columnsOf(cells);
    if (needed.every((column) => found.at.has(column))) return { row, ...found };
  }
  return undefined;
}

function columnsOf(cells: readonly ShownValue[]): Omit<ClientColumns, "row"> {
  const at = new Map<ClientColumn, number>();
  const heads = new Map<ClientColumn, string>();
  const leftOut: string[] = [];
  cells.forEach((cell, index) => {
    const column = typeof cell === "string" ? columnNamed(cell) : undefined;
    if (column === undefined || at.has(column)) return;
    const head = String(cell).trim();
    const refusal = unitRefusal(column, head);
    if (refusal !== undefined) return void leftOut.push(refusal);
    at.set(column, index);
    heads.set(column, head);
  });
  return { at, heads, leftOut };
}

function columnNamed(head: string): ClientColumn | undefined {
  const words = head
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
  const columns: readonly ClientColumn[] = Object.keys(headWords) as ClientColumn[]; // Keys of the closed record above.
  return columns.find((column) => headWords[column].test(words));
}

/** Guides are read in ppm: a report in pounds would be taken for twice the test. */
function unitRefusal(column: ClientColumn, head: string): string | undefined {
  if (column !== "phosphorus" && column !== "potassium") return undefined;
  if (!/\blb/i.test(head)) return undefined;
  return `The column "${head}" is in pounds per acre; the guides are read in ppm. Halve the numbers and head the column ppm.`;
}
