import { browser } from "./browser";
import { cells } from "./cells";
import { excel } from "./excel";
import { files } from "./files";

export const english = { browser, cells, excel, files };
