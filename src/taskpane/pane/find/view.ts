import { allFunctions } from "../../../functions";
import { families, type Family, type WorksheetFunction } from "../../../functions/frame/declaration";
import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { hintId } from "../parts/field";
import { section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { clearSearch, rowId, search, searchColumn, showAllFound, showFunction, toggleFamily } from "./actions";
import { functionPage } from "./function-page";
import type { Found, SearchResult } from "./search/search";
import { searchAll } from "./search/search-all";

const say = words.find;

/** So many answers are listed at first; the best come first. */
const mostFound = 10;

/** Find a function: the list with its search, or the page of one function. */
export function findView(state: PaneState): HTMLElement {
  const shown = allFunctions.find(({ name }) => name === state.find.shown);
  return shown ? functionPage(shown, state) : listView(state);
}

function listView(state: PaneState): HTMLElement {
  const { query, deep } = state.find;
  const result = query.trim() === "" ? undefined : searchAll(query, deep);
  return element(
    "div",
    { class: "view" },
    viewHeading("find", say.title),
    element("p", { class: "lead" }, say.lead(allFunctions.length)),
    searchBox(state),
    element("p", { class: "count", role: "status" }, state.find.columnRefused ?? (result ? countLine(result) : "")),
    result ? foundList(result, state) : [recentList(state), familyList(state)],
  );
}

function searchBox(state: PaneState): HTMLElement {
  return element(
    "form",
    { class: "search", role: "search" },
    element("label", { for: "find-query" }, say.searchLabel),
    element("p", { class: "hint", id: hintId("find-query") }, say.searchHint),
    element("input", {
      id: "find-query",
      type: "text",
      value: state.find.query,
      autocomplete: "off",
      "aria-describedby": hintId("find-query"),
      "data-action": search.name,
    }),
    element(
      "div",
      { class: "side-by-side" },
      button(searchColumn, state, { look: "quiet" }),
      state.find.query ? button(clearSearch, state, { look: "quiet" }) : undefined,
    ),
  );
}

function countLine({ found, readAs }: SearchResult): string {
  return [say.found(found.length), ...readAs.map(({ typed, taken }) => say.readAs(typed, taken))].join(" ");
}

/** What answers the question, best first, each with its family and the question of its own that comes closest. */
function foundList({ found }: SearchResult, state: PaneState): Child {
  if (found.length === 0) return element("p", {}, say.nothing);
  const listed = state.find.allFound ? found : found.slice(0, mostFound);
  const next = found[listed.length]?.fn.name;
  return [
    element(
      "ul",
      { class: "plain-list functions found", id: "find-found" },
      listed.map((one) => functionItem(one, state, true)),
    ),
    next !== undefined &&
      button(showAllFound, state, { value: rowId(next), says: say.showAll(found.length - listed.length) }),
  ];
}

function recentList(state: PaneState): Child {
  const recent = state.find.recent.flatMap((name) => allFunctions.find((fn) => fn.name === name) ?? []);
  if (recent.length === 0) return undefined;
  return section(
    "find-recent",
    say.recent,
    element(
      "ul",
      { class: "plain-list recent" },
      recent.map((fn) =>
        element(
          "li",
          {},
          button(showFunction, state, {
            look: "quiet",
            value: fn.name,
            says: fn.name,
            attributes: { title: fn.summary },
          }),
        ),
      ),
    ),
  );
}

function familyList(state: PaneState): HTMLElement {
  return element(
    "ul",
    { class: "plain-list families" },
    Object.keys(families).map((family) => familyItem(family as Family, state)), // keys of families are families
  );
}

function familyItem(family: Family, state: PaneState): HTMLElement {
  const members = allFunctions.filter((fn) => fn.family === family);
  const open = state.find.openFamilies.includes(family);
  const head = button(toggleFamily, state, {
    look: "row",
    value: family,
    says: [
      element("span", { class: "row-name" }, families[family]),
      " ",
      element("span", { class: "row-count" }, String(members.length)),
    ],
    attributes: { "aria-expanded": String(open), "aria-controls": open ? `family-${family}` : undefined },
  });
  return element(
    "li",
    {},
    element("h3", { class: "family-head" }, head),
    open &&
      element(
        "ul",
        { id: `family-${family}`, class: "plain-list functions" },
        members.map((fn) => functionItem({ fn }, state, false)),
      ),
  );
}

function functionItem({ fn, phrase }: Found, state: PaneState, isFound: boolean): HTMLElement {
  return element(
    "li",
    {},
    button(showFunction, state, {
      look: "row",
      value: fn.name,
      says: [
        element("span", { class: "function-name" }, fn.name),
        " ",
        element("span", { class: "row-summary" }, fn.summary),
        isFound && [" ", element("span", { class: "row-family" }, familyLine(fn, phrase))],
      ],
      attributes: { id: rowId(fn.name) },
    }),
  );
}

function familyLine(fn: WorksheetFunction, phrase: string | undefined): string {
  return [phrase && say.asked(phrase), families[fn.family]].filter(Boolean).join(" · ");
}
