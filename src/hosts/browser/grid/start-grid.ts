import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import { LocaleType, LogLevel, Univer, type Plugin, type PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import { UniverSheetsTablePreset } from "@univerjs/preset-sheets-table";
import { CalculationMode } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { fontFamily } from "../../../workbook/styles";
import { fonts } from "../../engine/cell-styles";
import { gridWords } from "./grid-words";
import { gridTheme, tableThemes } from "./grid-theme";
import { keepTabOrder } from "./tab-order";

export interface Grid {
  readonly univer: Univer;
  readonly api: FUniver;
}

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
    locales: { [LocaleType.EN_US]: gridWords },
  });
  for (const [plugin, options] of pluginsOf(containerId)) univer.registerPlugin(plugin, options);
  const container = document.getElementById(containerId);
  if (container) keepTabOrder(container);
  return { univer, api: FUniver.newAPI(univer) };
}

/** The grid's own locks are about users and owners, of whom a page on one machine has none. */
const withoutItems = Object.fromEntries(
  [
    "sheet.contextMenu.permission",
    "sheet.command.add-range-protection-from-toolbar",
    "sheet.command.add-range-protection-from-sheet-bar",
    "sheet.command.delete-worksheet-protection-from-sheet-bar",
    "sheet.command.change-sheet-protection-from-sheet-bar",
    "sheet.command.view-sheet-permission-from-sheet-bar",
  ].map((item) => [item, { hidden: true }]),
);

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
      menu: withoutItems,
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
