import { del, get, update } from "idb-keyval";
import type { IWorkbookData } from "@univerjs/core";

/** A workbook kept in this browser, as a list shows it. */
export interface ShelfEntry {
  readonly id: string;
  readonly title: string;
  /** When it was last written, milliseconds since 1970. */
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
const keyOf = (id: string) => `loamsheet-workbook:${id}`;

/** The workbooks kept in this browser. Everything may fail where a browser does not allow keeping. */
export class Shelf {
  /** Newest first. */
  async entries(): Promise<ShelfEntry[]> {
    const index = (await get<Index>(indexKey)) ?? {};
    return Object.entries(index)
      .map(([id, facts]) => ({ id, ...facts }))
      .sort((a, b) => b.changed - a.changed);
  }

  read(id: string): Promise<KeptWorkbook | undefined> {
    return get<KeptWorkbook>(keyOf(id));
  }

  /**
   * Writes a workbook over the version this page knows.
   *
   * @returns false, and nothing written, when another page has written since
   */
  async write(id: string, { version, workbook }: KeptWorkbook, title: string): Promise<boolean> {
    let isOurs = true;
    await update<KeptWorkbook>(keyOf(id), (kept) => {
      isOurs = (kept?.version ?? 0) === version;
      return kept && !isOurs ? kept : { version: version + 1, workbook };
    });
    if (isOurs) await this.list(id, { title, changed: Date.now() });
    return isOurs;
  }

  async remove(id: string): Promise<void> {
    await this.list(id, undefined);
    await del(keyOf(id));
  }

  /** The workbook this tab had open last, or any tab of this browser. */
  lastOpen(): string | undefined {
    return recalled(() => sessionStorage.getItem(lastKey)) ?? recalled(() => localStorage.getItem(lastKey));
  }

  rememberOpen(id: string): void {
    recalled(() => sessionStorage.setItem(lastKey, id));
    recalled(() => localStorage.setItem(lastKey, id));
  }

  private list(id: string, facts: Index[string] | undefined): Promise<void> {
    return update<Index>(indexKey, (index = {}) => {
      const others = Object.entries(index).filter(([key]) => key !== id);
      return Object.fromEntries(facts ? [...others, [id, facts]] : others);
    });
  }
}

/** Storage may be missing or refuse; remembering is then left out. */
function recalled<Found>(look: () => Found | null): Found | undefined {
  try {
    return look() ?? undefined;
  } catch {
    return undefined;
  }
}
