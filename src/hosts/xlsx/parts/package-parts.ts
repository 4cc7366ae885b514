import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from "fflate";

/** The parts of a workbook file by path, as text: nothing in our workbooks is anything but XML. */
export type PackageParts = Map<string, string>;

/** Signs that stand in a file by their code only. */
const controls = /[\x00-\x08\x0b-\x1f]/g;

/** Two code points that no XML may hold, in any spelling. */
const outsideXml = /[\ufffe\uffff]/g;

/** First day a zip file can name, so that the same workbook always gives the same bytes. */
const zipStart = new Date(1980, 0, 1);

export function readParts(bytes: Uint8Array): PackageParts {
  return new Map(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
}

export function packParts(parts: PackageParts): Uint8Array {
  const files: Zippable = {};
  for (const [path, text] of parts) files[path] = strToU8(text.replace(outsideXml, "\ufffd"));
  return zipSync(files, { level: 6, mtime: zipStart });
}

/** Rewrites one part; a part that is missing means the writer below us changed, and nothing is shipped. */
export function changePart(parts: PackageParts, path: string, change: (text: string) => string): void {
  const text = parts.get(path);
  if (text === undefined) throw new Error(`The workbook file has no part ${path}.`);
  parts.set(path, change(text));
}

/** Replaces what is known to be there once, and says so when it is not. */
export function replaceOnce(text: string, what: string | RegExp, by: string): string {
  const changed = text.replace(what, () => by);
  if (changed === text) throw new Error(`The workbook file does not read as expected: no ${String(what)}.`);
  return changed;
}

export function escapeXml(text: string): string {
  const marked = text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
  return marked.replace(controls, (sign) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);
}

/**
 * Text of a cell on its way into the file, where _x0041_ stands for the letter A: typed text that reads like that stays
 * what it is.
 */
export function cellText(text: string): string {
  return text.replace(/_(?=x[0-9a-f]{4}_)/gi, "_x005F_");
}

/** Declares a part that the writer below us does not know, with its content type. */
export function addPart(parts: PackageParts, path: string, text: string, contentType: string): void {
  parts.set(path, text);
  changePart(parts, "[Content_Types].xml", (types) =>
    replaceOnce(types, "</Types>", `<Override PartName="/${path}" ContentType="${contentType}"/></Types>`),
  );
}
