import type { RuleLook, StyleName } from "./plan";

/** What a style name means. Colours are "#rrggbb"; sizes in points. */
export interface CellLook {
  readonly size: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly color: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  readonly vertical: "top" | "middle" | "bottom";
  readonly wrap?: boolean;
  readonly border?: "thin" | "top";
  /** Stays writable when computed cells are protected. */
  readonly input?: boolean;
}

export const fontFamily = "Calibri";
export const borderColor = "#d9d2c5";

const ink = "#22282e";
const umber = "#5a4636";
const inputBlue = "#1f4e8c";
const inputFill = "#fdf6e3";
const quietFill = "#f4f1ea";

const body = { size: 11, color: ink, vertical: "middle" } as const;
const boxed = { ...body, border: "thin" } as const;

/** One family, three sizes: title, head, body. */
export const cellLooks: Readonly<Record<StyleName, CellLook>> = {
  title: { size: 18, bold: true, color: umber, vertical: "middle" },
  answers: { ...body, italic: true },
  section: { size: 13, bold: true, color: umber, vertical: "bottom" },
  head: {
    ...body,
    bold: true,
    color: "#ffffff",
    fill: umber,
    align: "center",
    wrap: true,
    border: "thin",
  },
  body,
  wrap: { ...body, vertical: "top", wrap: true },
  label: boxed,
  unit: { ...boxed, color: "#5b646c" },
  input: { ...boxed, color: inputBlue, fill: inputFill, align: "right", input: true },
  inputText: { ...boxed, color: inputBlue, fill: inputFill, align: "left", input: true },
  computed: { ...boxed, align: "right" },
  computedText: { ...boxed, align: "left" },
  total: { ...boxed, bold: true, fill: quietFill, align: "right" },
  totalText: { ...boxed, bold: true, fill: quietFill, align: "left" },
  says: { ...body, color: "#5b646c" },
  caution: { ...body, color: "#a8501f" },
  link: { ...body, color: "#2f4f6f" },
};

/** Font colour and fill of a conditional format. */
export const ruleLooks: Readonly<Record<RuleLook, { readonly color: string; readonly fill: string }>> = {
  good: { color: "#2c6e5a", fill: "#e3f0ea" },
  bad: { color: "#8a2f3d", fill: "#f7e4e6" },
  attention: { color: "#a8501f", fill: "#faebdf" },
  unseen: { color: "#ffffff", fill: "#ffffff" },
};
