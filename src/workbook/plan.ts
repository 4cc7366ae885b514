/**
 * A workbook as plain data, laid out cell by cell: what every host writer receives. Writers hold no decisions
 * of their own; what a sheet says, where it stands and how it looks is all here.
 *
 * Rows and columns count from 0. Formulas are in the form a person types in an English spreadsheet, with a
 * leading "=", add-in functions as LOAM.NAME, sheet references quoted where needed and table references in the
 * long form (Fields[[#This Row],[Acres]]), which every engine understands.
 */
export interface WorkbookPlan {
  /** Starter this plan was made from, such as "farm-plan". */
  readonly starter: string;
  readonly title: string;
  readonly sheets: readonly SheetPlan[];
  readonly names: readonly NamePlan[];
}

export interface SheetPlan {
  /** At most 31 characters, none of : \ / ? * [ ]. */
  readonly name: string;
  /** "#rrggbb". */
  readonly tabColor?: string;
  /** Width of each column from A on, in characters of the default font. */
  readonly columnWidths: readonly number[];
  /** Height in points, by row; other rows keep the default. */
  readonly rowHeights: Readonly<Record<number, number>>;
  /** Every cell that holds something or has a style; at most one entry per cell. */
  readonly cells: readonly CellPlan[];
  /** Rows and columns that stay in sight. */
  readonly freeze?: { readonly rows: number; readonly columns: number };
  readonly tables: readonly TablePlan[];
  readonly validations: readonly ValidationPlan[];
  readonly rules: readonly RulePlan[];
  readonly charts: readonly ChartPlan[];
  readonly notes: readonly NotePlan[];
  readonly print: PrintPlan;
}

export interface CellPlan {
  readonly row: number;
  readonly column: number;
  readonly content?: number | string | boolean | FormulaPlan;
  readonly style: StyleName;
  /** Number format in English spreadsheet notation, such as "#,##0.0" or "$#,##0.00". */
  readonly format?: string;
  /** Sheet whose first cell a click leads to; a host that cannot link shows the text alone. */
  readonly link?: string;
}

export interface FormulaPlan {
  readonly formula: string;
  /** Size of the result when it spills; 1 × 1 otherwise. Cells it covers have style entries without content. */
  readonly spill?: { readonly rows: number; readonly columns: number };
}

/** Looks of a cell; what each means in font, fill and border is said in styles.ts. */
export type StyleName =
  | "title"
  | "answers"
  | "section"
  | "head"
  | "body"
  | "wrap"
  | "label"
  | "unit"
  | "says"
  | "input"
  | "inputText"
  | "computed"
  | "computedText"
  | "total"
  | "totalText"
  | "caution"
  | "link";

export interface NamePlan {
  /** Defined name, workbook scope. */
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly says: string;
}

/** A rectangle of cells, both corners inside. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface TablePlan {
  /** Unique in the workbook; letters, digits and underscore. */
  readonly name: string;
  /** Header row included; the header texts are the cells of its first row, all different. */
  readonly area: Area;
  readonly totals: boolean;
}

export type ValidationPlan =
  | {
      readonly kind: "list";
      readonly area: Area;
      /** Either the words themselves or a reference such as "Lists!$A$2:$A$9". */
      readonly words: readonly string[] | string;
      readonly prompt: string;
      readonly refusal: string;
    }
  | {
      readonly kind: "between";
      readonly area: Area;
      readonly min: number;
      readonly max: number;
      readonly whole: boolean;
      readonly prompt: string;
      readonly refusal: string;
    };

/** Conditional formats. Built only of native comparisons: add-in functions do not work inside them. */
export type RulePlan =
  | {
      readonly kind: "compare";
      readonly area: Area;
      readonly when: "below" | "above" | "atLeast" | "atMost";
      readonly value: number;
      readonly look: RuleLook;
    }
  | {
      /** An A1 formula written for the top-left cell of the area, with a leading "=". */
      readonly kind: "formula";
      readonly area: Area;
      readonly formula: string;
      readonly look: RuleLook;
    }
  | { readonly kind: "bar"; readonly area: Area; readonly color: string }
  | {
      readonly kind: "scale";
      readonly area: Area;
      readonly low: string;
      readonly middle: string;
      readonly high: string;
      /** The middle colour sits at this value; at the 50th percentile when left out. */
      readonly middleAt?: number;
    };

/** "unseen" is for a cell whose error only tells a chart to leave a point out. */
export type RuleLook = "good" | "bad" | "attention" | "unseen";

export interface ChartPlan {
  readonly kind: "column" | "bar" | "line" | "scatter";
  readonly title: string;
  /** What the chart shows, in a sentence, for a reader who cannot see it. */
  readonly alt: string;
  readonly categories: ChartRange;
  readonly series: readonly {
    readonly name: string;
    readonly values: ChartRange;
    /** "#rrggbb". */
    readonly color: string;
    /** Of a line chart; a line with a marker at each value unless said. */
    readonly look?: SeriesLook;
  }[];
  readonly xTitle?: string;
  readonly yTitle?: string;
  readonly yFormat?: string;
  /** Of bars: those of a category lie over one another on one line, as where each is one end of the same range. */
  readonly onOneLine?: boolean;
  /** Cells the chart covers. */
  readonly at: Area;
}

/** Markers alone, or a line without them: told apart without colour. */
export type SeriesLook = "points" | "solid" | "dashed" | "dotted";

export interface ChartRange {
  readonly sheet: string;
  readonly area: Area;
}

export interface NotePlan {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

export interface PrintPlan {
  readonly orientation: "portrait" | "landscape";
  /** Pages wide and tall; 0 tall means as many as needed. */
  readonly fit: { readonly wide: number; readonly tall: number };
  /** Rows repeated on each page, first and last. */
  readonly repeatRows?: { readonly first: number; readonly last: number };
  readonly area?: Area;
  /** Left, centre and right of the foot; &P page, &N pages as spreadsheets write them. */
  readonly footer: string;
}
