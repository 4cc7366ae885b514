import { allFunctions } from "../../../functions";
import { families, type Family } from "../../../functions/frame/declaration";
import { exampleFormula } from "../../../functions/frame/formula-text";
import { HostError } from "../../../hosts/port";
import { words } from "../../words";
import { always, type Action, type Desk } from "../action";
import { headingId } from "../parts/text";
import type { FindState } from "./state";

const say = words.find;

function changeFind(desk: Desk, part: Partial<FindState>, focus?: string): void {
  desk.change((state) => ({ ...state, find: { ...state.find, ...part } }), focus);
}

/** Looks for functions while the person types. */
export const search: Action = {
  name: "find.search",
  label: "",
  allowed: always,
  perform: (desk, value) => changeFind(desk, { query: value }),
};

export const clearSearch: Action = {
  name: "find.clear",
  label: say.clear,
  allowed: always,
  perform: (desk) => changeFind(desk, { query: "" }, "find-query"),
};

/** Opens or closes a family in the list. */
export const toggleFamily: Action = {
  name: "find.family",
  label: "",
  allowed: always,
  perform(desk, value) {
    const open = desk.state().find.openFamilies;
    const others = open.filter((family) => family !== value);
    const opened = others.length === open.length && isFamily(value) ? [...others, value] : others;
    changeFind(desk, { openFamilies: opened });
  },
};

/** Opens the page of a function, from wherever it is named. */
export const showFunction: Action = {
  name: "find.show",
  label: "",
  allowed: always,
  perform: (desk, value) =>
    desk.change(
      (state) => ({ ...state, view: "find", find: { ...state.find, shown: value, outcome: undefined } }),
      headingId("function"),
    ),
};

export const backToList: Action = {
  name: "find.back",
  label: say.back,
  allowed: always,
  perform(desk) {
    const from = desk.state().find.shown;
    changeFind(desk, { shown: undefined, outcome: undefined });
    document.getElementById(from === undefined ? headingId("find") : rowId(from))?.focus();
  },
};

/** Writes the example of the open page into the selected cell, if that cell is empty. */
export const insertExample: Action = {
  name: "find.insert",
  label: say.insert,
  allowed: always,
  async perform(desk, value) {
    const fn = allFunctions.find(({ name }) => name === value);
    if (!fn) return;
    try {
      await desk.host.insertFormula(exampleFormula(fn));
      changeFind(desk, { outcome: { done: true, says: say.inserted } });
    } catch (thrown) {
      if (!(thrown instanceof HostError)) throw thrown;
      changeFind(desk, { outcome: { done: false, says: thrown.message } });
    }
  },
};

/** Id of a function's row in the list, so that going back finds the place again. */
export function rowId(name: string): string {
  return `find-${name}`;
}

function isFamily(value: string): value is Family {
  return value in families;
}

export const findActions: readonly Action[] = [
  search,
  clearSearch,
  toggleFamily,
  showFunction,
  backToList,
  insertExample,
];
