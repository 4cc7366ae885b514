import { about } from "./about";
import { check } from "./check";
import { clients } from "./clients";
import { find } from "./find";
import { overview } from "./overview";
import { pane } from "./pane";
import { pictures } from "./pictures";
import { search } from "./search";
import { sources } from "./sources";
import { start } from "./start";
import { strip } from "./strip";
import { trial } from "./trial";
import { charts, whatIf } from "./what-if";
import { working } from "./working";

export const english = {
  pane,
  overview,
  clients,
  start,
  find,
  search,
  working,
  whatIf,
  charts,
  pictures,
  trial,
  check,
  sources,
  about,
  strip,
};
