import { families, type Family } from "../../../functions/frame/declaration";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { headingId } from "../parts/text";
import { unlessRefused } from "../unless-refused";
import { changeFind } from "./change-find";
import { headingOfSelection } from "./column-heading";
import { gatheredWords } from "./search/deep-words";
import { formActions } from "./form/form-actions";
import { withRecent } from "./recent";
import type { FindState } from "./state";

const say = words.find;

/** Looks for functions while the person types. */
export const search: Action = {
  name: "find.search",
  perform(desk, value) {
    changeFind(desk, { query: value, allFound: false, columnRefused: undefined });
    gatherDeepWords(desk);
  },
};

const told = new WeakSet<Desk>();

/** Behind the first search: whatever more can be found comes in when it is ready. */
function gatherDeepWords(desk: Desk): void {
  if (told.has(desk)) return;
  told.add(desk);
  void gatheredWords().then((deep) => changeFind(desk, { deep }));
}

/** Looks for functions by the heading of the column that the selected cell stands in. */
export const searchColumn: Action = {
  name: "find.column",
  label: say.searchColumn,
  async perform(desk) {
    changeFind(desk, await columnSearch(desk), "find-query");
    gatherDeepWords(desk);
  },
};

function columnSearch(desk: Desk): Promise<Partial<FindState>> {
  return unlessRefused(
    async () => {
      const { address, heading } = await headingOfSelection(desk.host);
      if (heading === undefined) return { columnRefused: say.noHeading(address) };
      return { query: heading, allFound: false, columnRefused: undefined };
    },
    (columnRefused) => ({ columnRefused }),
  );
}

export const clearSearch: Action = {
  name: "find.clear",
  label: say.clear,
  perform: (desk) => changeFind(desk, { query: "", allFound: false, columnRefused: undefined }, "find-query"),
};

/** Lists what else was found, and goes on from where the list ended. */
export const showAllFound: Action = {
  name: "find.all",
  perform: (desk, value) => changeFind(desk, { allFound: true }, value),
};

/** Opens or closes a family in the list. */
export const toggleFamily: Action = {
  name: "find.family",
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
  perform: (desk, value) =>
    desk.change(
      (state) => ({
        ...state,
        view: "find",
        find: { ...state.find, shown: value, outcome: undefined, recent: withRecent(state.find.recent, value) },
      }),
      headingId("function"),
    ),
};

export const backToList: Action = {
  name: "find.back",
  label: say.back,
  perform(desk) {
    const from = desk.state().find.shown;
    changeFind(desk, { shown: undefined, outcome: undefined });
    const row = from === undefined ? null : document.getElementById(rowId(from));
    (row ?? document.getElementById(headingId("find")))?.focus();
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
  searchColumn,
  clearSearch,
  showAllFound,
  toggleFamily,
  showFunction,
  backToList,
  ...formActions,
];
