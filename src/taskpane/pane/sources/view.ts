import { allFunctions } from "../../../functions";
import { sources, type Source, type SourceKey } from "../../../reference/sources";
import { checkBulletin } from "../../../reference/table";
import { words } from "../../words";
import { element } from "../element";
import { showFunction } from "../find/actions";
import { button } from "../parts/button";
import { viewHeading } from "../parts/text";
import type { PaneState } from "../state";

const say = words.sources;

/** Sources: every publication behind a function, with the functions that rest on it. */
export function sourcesView(state: PaneState): HTMLElement {
  const keys = citedSources();
  return element(
    "div",
    { class: "view" },
    viewHeading("sources", say.title),
    element("p", { class: "lead" }, say.lead),
    element("p", {}, say.marked(checkBulletin)),
    element("p", {}, say.regional),
    element(
      "ul",
      { class: "plain-list bibliography" },
      keys.map((key) => sourceItem(key, state)),
    ),
  );
}

/** Sources that a function names, by publisher and title. */
function citedSources(): readonly SourceKey[] {
  const cited = new Set(allFunctions.flatMap((fn) => fn.sources));
  const line = (key: SourceKey): string => {
    const { publisher, title }: Source = sources[key];
    return `${publisher} ${title}`;
  };
  return [...cited].sort((a, b) => line(a).localeCompare(line(b), "en"));
}

function sourceItem(key: SourceKey, state: PaneState): HTMLElement {
  const { publisher, title, year }: Source = sources[key];
  const users = allFunctions.filter((fn) => fn.sources.includes(key));
  return element(
    "li",
    {},
    element("p", {}, element("strong", {}, `${publisher}. `), element("cite", {}, title), year ? `, ${year}.` : "."),
    element(
      "p",
      { class: "used-by" },
      `${say.usedBy} `,
      users.map(({ name }) => [button(showFunction, state, { look: "quiet", value: name, says: name }), " "]),
    ),
  );
}
