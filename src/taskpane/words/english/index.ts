import { about } from "./about";
import { check } from "./check";
import { find } from "./find";
import { overview } from "./overview";
import { pane } from "./pane";
import { search } from "./search";
import { sources } from "./sources";
import { start } from "./start";
import { strip } from "./strip";
import { working } from "./working";

export const english = { pane, overview, start, find, search, working, check, sources, about, strip };
