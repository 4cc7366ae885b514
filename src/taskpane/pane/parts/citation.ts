import { sources, type Source, type SourceKey } from "../../../reference/sources";
import { checkBulletin, type Cited } from "../../../reference/table";
import { element } from "../element";

/** A publication in one line: who, what, when. */
export function publication(key: SourceKey): HTMLElement {
  const { publisher, title, year }: Source = sources[key];
  return element(
    "span",
    { class: "publication" },
    `${publisher}, `,
    element("cite", {}, title),
    year ? `, ${year}.` : ".",
  );
}

/** The row of a table a number rests on: where it stands and how sure we are of it. */
export function citation({ source, locator, note, mark }: Cited): HTMLElement {
  return element(
    "li",
    {},
    publication(source),
    locator ? ` ${locator}.` : undefined,
    note ? ` ${note}` : undefined,
    mark === "M" ? element("strong", { class: "check" }, ` ${checkBulletin}`) : undefined,
  );
}
