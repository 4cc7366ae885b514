import type { WorksheetFunction } from "../../functions/frame/declaration";
import { checkBulletin } from "../../reference/table";
import { sources, type Source, type SourceKey } from "../../reference/sources";
import { escape, page } from "./html";

/** Every publication behind a number, with the functions that rest on it. */
export function sourcePage(functions: readonly WorksheetFunction[]): string {
  const items = (Object.entries(sources) as [SourceKey, Source][])
    .sort(([, a], [, b]) => a.publisher.localeCompare(b.publisher) || a.title.localeCompare(b.title))
    .map(([key, source]) => sourceItem(key, source, functions));
  return page(
    "Sources",
    `<h1>Where the numbers come from</h1>
<p>Coefficients and tables come from the publications below. A number we hold from memory of its bulletin carries the
words <em>${checkBulletin}</em> wherever it is used. Recommendations are regional: a guide, its soil-test method and its
sampling depth belong together.</p>
<dl>${items.join("\n")}</dl>`,
  );
}

function sourceItem(
  key: SourceKey,
  { publisher, title, year }: Source,
  functions: readonly WorksheetFunction[],
): string {
  const users = functions
    .filter((fn) => fn.sources.includes(key))
    .map(({ name }) => `<a href="functions.html#${name}">${name}</a>`);
  const used = users.length > 0 ? `<dd>Used by ${users.join(", ")}.</dd>` : "";
  return `<dt id="${key}">${escape(publisher)}</dt><dd>${escape(title)}${year ? `, ${escape(year)}` : ""}.</dd>${used}`;
}
