/** Rules written down as text, without a style element: the page's content policy refuses those. */
export function sheetOf(text) {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return sheet;
}

/** Lets rules hold for the whole page. */
export function adopt(text) {
  const sheet = sheetOf(text);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return sheet;
}

/** Takes rules away again. */
export function drop(sheet) {
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((present) => present !== sheet);
}
