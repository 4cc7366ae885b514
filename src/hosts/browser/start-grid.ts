import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import { LocaleType, LogLevel, mergeLocales, Univer, type Plugin, type PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import rulesWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteWords from "@univerjs/preset-sheets-note/locales/en-US";
import { UniverSheetsTablePreset } from "@univerjs/preset-sheets-table";
import tableWords from "@univerjs/preset-sheets-table/locales/en-US";
import { CalculationMode } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { fontFamily } from "../../workbook/styles";
import { fonts } from "../engine/cell-styles";
import { gridTheme, tableThemes } from "./grid-theme";

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
}

const words = mergeLocales(coreWords, rulesWords, validationWords, drawingWords, noteWords, tableWords);

/**
 * Puts the spreadsheet grid into an element of the page. Only open-source parts; nothing is fetched.
 *
 * @param containerId id of the element that the grid fills
 */
export function startGrid(containerId: string, dark: boolean): Grid {
  const univer = new Univer({
    theme: gridTheme,
    darkMode: dark,
    logLevel: LogLevel.ERROR,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: words },
  });
  for (const [plugin, options] of pluginsOf(containerId)) univer.registerPlugin(plugin, options);
  return { univer, api: FUniver.newAPI(univer) };
}

const fontChoices = [
  { value: fonts, label: fontFamily },
  ...["Arial", "Georgia", "Courier New"].map((font) => ({ value: font, label: font })),
];

type Options = ConstructorParameters<PluginCtor<Plugin>>[0];

/** The plugins of all presets, each once, with our options where the presets pass none on. */
function pluginsOf(containerId: string): Map<PluginCtor<Plugin>, Options> {
  const presets = [
    UniverSheetsCorePreset({
      container: containerId,
      ribbonType: "simple",
      disableAutoFocus: true,
      customFontFamily: { override: true, list: fontChoices },
      sheets: { protectedRangeShadow: false },
      formula: { initialFormulaComputing: CalculationMode.FORCED },
    }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsDataValidationPreset(),
    UniverSheetsDrawingPreset(),
    UniverSheetsNotePreset(),
    UniverSheetsTablePreset(),
  ];
  const plugins = new Map<PluginCtor<Plugin>, Options>();
  for (const entry of presets.flatMap(({ plugins: entries }) => entries)) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry, undefined];
    if (!plugins.has(plugin)) plugins.set(plugin, options);
  }
  for (const [plugin, options] of plugins) {
    // Without this a coloured tab takes a strip above every table.
    if (plugin.pluginName === "SHEET_TABLE_UI_PLUGIN") plugins.set(plugin, { ...options, hideAnchor: true });
  }
  plugins.set(UniverSheetsTablePlugin, { userThemes: tableThemes });
  return plugins;
}
