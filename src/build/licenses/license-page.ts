import type { RuntimePackage } from "./runtime-packages";

const rule = "-".repeat(72);

/** The licenses of all that is shipped, as plain text: each text once, under the packages that it covers. */
export function licensePage(own: string, packages: readonly RuntimePackage[]): string {
  const covered = new Map<string, string[]>();
  for (const one of packages) {
    for (const text of one.texts) covered.set(text, [...(covered.get(text) ?? []), told(one)]);
  }
  const textless = packages.filter(({ texts }) => texts.length === 0).map(told);
  const sections = [...covered].map(([text, names]) => `${names.join("\n")}\n\n${text}`);
  return [
    `Loamsheet\n\n${own.trim()}`,
    `Loamsheet is built with the open-source packages below. While it is built, the places of @univerjs/ui,
@univerjs/sheets-ui, sonner and react-style-singleton that write style elements are changed to use constructed style
sheets; nothing else in a package is changed.`,
    ...sections,
    `These packages bring no text; the terms of their license are those of the same name above:\n\n${textless.join("\n")}`,
  ].join(`\n\n${rule}\n\n`);
}

function told({ name, version, license, author }: RuntimePackage): string {
  return `${name} ${version}, ${license}${author === "" ? "" : `, by ${author}`}`;
}
