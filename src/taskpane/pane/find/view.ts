import { allFunctions } from "../../../functions";
import { families, type Family, type WorksheetFunction } from "../../../functions/frame/declaration";
import { words } from "../../words";
import { element } from "../element";
import { button } from "../parts/button";
import { viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { clearSearch, rowId, search, showFunction, toggleFamily } from "./actions";
import { functionPage } from "./function-page";
import { searchFunctions } from "./search";

const say = words.find;

/** Find a function: the list with its search, or the page of one function. */
export function findView(state: PaneState): HTMLElement {
  const shown = allFunctions.find(({ name }) => name === state.find.shown);
  return shown ? functionPage(shown, state) : listOf(allFunctions, state);
}

function listOf(functions: readonly WorksheetFunction[], state: PaneState): HTMLElement {
  const { query } = state.find;
  const asked = query.trim() !== "";
  const found = searchFunctions(functions, query);
  return element(
    "div",
    { class: "view" },
    viewHeading("find", say.title),
    element("p", { class: "lead" }, say.lead(functions.length)),
    searchBox(state),
    element("p", { class: "count", role: "status" }, asked ? say.found(found.length) : ""),
    asked && found.length === 0 ? element("p", {}, say.nothing) : undefined,
    element(
      "ul",
      { class: "plain-list families" },
      groupsOf(found).map((group) => familyItem(group, asked, state)),
    ),
  );
}

function searchBox(state: PaneState): HTMLElement {
  return element(
    "form",
    { class: "search", role: "search" },
    element("label", { for: "find-query" }, say.searchLabel),
    element("input", {
      id: "find-query",
      type: "text",
      value: state.find.query,
      autocomplete: "off",
      "data-action": search.name,
    }),
    state.find.query ? button(clearSearch, state, { look: "quiet" }) : undefined,
  );
}

interface Group {
  readonly family: Family;
  readonly members: readonly WorksheetFunction[];
}

/** Families in the order of their best member; members keep their order. */
function groupsOf(found: readonly WorksheetFunction[]): readonly Group[] {
  const groups = new Map<Family, WorksheetFunction[]>();
  for (const fn of found) groups.set(fn.family, [...(groups.get(fn.family) ?? []), fn]);
  return [...groups].map(([family, members]) => ({ family, members }));
}

function familyItem({ family, members }: Group, asked: boolean, state: PaneState): HTMLElement {
  if (asked) {
    return element("li", {}, element("h3", {}, families[family]), functionList(`family-${family}`, members, state));
  }
  const open = state.find.openFamilies.includes(family);
  const head = button(toggleFamily, state, {
    look: "row",
    value: family,
    says: [
      element("span", { class: "row-name" }, families[family]),
      element("span", { class: "row-count" }, String(members.length)),
    ],
    attributes: { "aria-expanded": String(open), "aria-controls": open ? `family-${family}` : undefined },
  });
  return element(
    "li",
    {},
    element("h3", { class: "family-head" }, head),
    open && functionList(`family-${family}`, members, state),
  );
}

function functionList(id: string, members: readonly WorksheetFunction[], state: PaneState): HTMLElement {
  return element(
    "ul",
    { id, class: "plain-list functions" },
    members.map((fn) =>
      element(
        "li",
        {},
        button(showFunction, state, {
          look: "row",
          value: fn.name,
          says: [
            element("span", { class: "function-name" }, fn.name),
            element("span", { class: "row-summary" }, fn.summary),
          ],
          attributes: { id: rowId(fn.name) },
        }),
      ),
    ),
  );
}
