export { BrowserWorkbook, type PageSettings } from "./browser-workbook";
