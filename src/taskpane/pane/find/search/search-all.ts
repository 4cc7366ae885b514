import { allFunctions } from "../../../../functions";
import type { DeepWordsByName } from "./deep-words";
import { searchFunctions, type SearchResult } from "./search";
import { indexOf, type SearchIndex } from "./search-index";

const none: DeepWordsByName = new Map();
const indexes = new WeakMap<DeepWordsByName, SearchIndex>();

/** Searches all functions; each index is made once. */
export function searchAll(query: string, deep: DeepWordsByName = none): SearchResult {
  let index = indexes.get(deep);
  if (!index) indexes.set(deep, (index = indexOf(allFunctions, deep)));
  return searchFunctions(index, query);
}
