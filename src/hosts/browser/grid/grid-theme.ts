import { defaultTheme } from "@univerjs/themes";
import { BorderStyleTypes } from "@univerjs/core";
import { borderColor } from "../../../workbook/styles";
import { tableLook } from "../../engine/name-and-table-resources";

/** The grid's own colours, with slate blue where it would have its accent. */
export const gridTheme: typeof defaultTheme = {
  ...defaultTheme,
  primary: {
    50: "#f2f5f9",
    100: "#e3eaf1",
    200: "#c9d6e4",
    300: "#a9bed4",
    400: "#7f9dbd",
    500: "#4f7299",
    600: "#2f4f6f",
    700: "#284560",
    800: "#213a51",
    900: "#1a2e41",
  },
};

const line = { s: BorderStyleTypes.THIN, cl: { rgb: borderColor } };

/** Tables keep the colours their cells have; a thin line closes them. */
export const tableThemes = [{ name: tableLook, style: { lastRowStyle: { bd: { b: line } } } }];
