import { createStore, get, promisifyRequest } from "idb-keyval";
import type { IWorkbookData } from "@univerjs/core";
import { isRecord } from "../../is-record";
import { titleOf } from "../data/workbook-parts";

/** A workbook kept in this browser, as a list shows it. */
export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  /** When it was last written, milliseconds since 1970; 0 where that is no longer known. */
  readonly changed: number;
}

export interface KeptWorkbook {
  /** Counts up with every write, so that two pages notice each other. */
  readonly version: number;
  readonly workbook: IWorkbookData;
}

type Index = Readonly<Record<string, Omit<ShelfEntry, "id">>>;

const indexKey = "loamsheet-workbooks";
const lastKey = "loamsheet-open";
const inStore = createStore("keyval-store", "keyval");
const keyOf = (id: string) => `loamsheet-workbook:${id}`;

/** The workbooks kept in this browser. Everything may fail where a browser does not allow keeping. */
export class Shelf {
  /** Newest first. */
  async entries(): Promise<ShelfEntry[]> {
    const index = await inStore("readonly", indexIn);
    return Object.entries(index)
      .map(([id, facts]) => ({ id, ...facts }))
      .sort((a, b) => b.changed - a.changed);
  }

  read(id: string): Promise<KeptWorkbook | undefined> {
    return get<KeptWorkbook>(keyOf(id), inStore);
  }

  /**
   * Writes a workbook over the version this page knows.
   *
   * @returns false, and nothing written, when another page has written since
   */
  write(id: string, { version, workbook }: KeptWorkbook, title: string): Promise<boolean> {
    return inStore("readwrite", async (store) => {
      const kept = await promisifyRequest<KeptWorkbook | undefined>(store.get(keyOf(id)));
      if ((kept?.version ?? 0) !== version) return false;
      const index = await indexIn(store);
      // Both or, where there is no room, neither.
      store.put({ version: version + 1, workbook }, keyOf(id));
      store.put({ ...index, [id]: { title, changed: Date.now() } }, indexKey);
      await promisifyRequest(store.transaction);
      return true;
    });
  }

  remove(id: string): Promise<void> {
    return inStore("readwrite", async (store) => {
      const others = Object.entries(await indexIn(store)).filter(([key]) => key !== id);
      store.put(Object.fromEntries(others), indexKey);
      store.delete(keyOf(id));
      await promisifyRequest(store.transaction);
    });
  }

  /** The workbook this tab had open last, or any tab of this browser. */
  lastOpen(): string | undefined {
    return recalled(() => sessionStorage.getItem(lastKey)) ?? recalled(() => localStorage.getItem(lastKey));
  }

  rememberOpen(id: string): void {
    recalled(() => sessionStorage.setItem(lastKey, id));
    recalled(() => localStorage.setItem(lastKey, id));
  }
}

/** What is kept; a list that is missing or damaged is made anew from the workbooks themselves. */
async function indexIn(store: IDBObjectStore): Promise<Index> {
  const kept = await promisifyRequest<unknown>(store.get(indexKey));
  return isIndex(kept) ? kept : indexAnew(store);
}

function isIndex(kept: unknown): kept is Index {
  if (!isRecord(kept)) return false;
  return Object.values(kept).every(
    (entry) => isRecord(entry) && typeof entry.title === "string" && typeof entry.changed === "number",
  );
}

async function indexAnew(store: IDBObjectStore): Promise<Index> {
  const all = IDBKeyRange.bound(keyOf(""), keyOf("\uffff"));
  const keys = await promisifyRequest(store.getAllKeys(all));
  const workbooks = await promisifyRequest<unknown[]>(store.getAll(all));
  return Object.fromEntries(
    keys.map((key, at) => {
      const kept = workbooks[at];
      const title = titleOf(isRecord(kept) ? kept.workbook : undefined);
      return [String(key).slice(keyOf("").length), { title, changed: 0 }];
    }),
  );
}

/** Storage may be missing or refuse; remembering is then left out. */
function recalled<Found>(look: () => Found | null): Found | undefined {
  try {
    return look() ?? undefined;
  } catch {
    return undefined;
  }
}
