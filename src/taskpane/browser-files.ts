import { zipSync } from "fflate";
import { allFunctions } from "../functions";
import { workbookFile } from "../hosts/browser/kept/workbook-file";
import { calculate } from "../hosts/engine";
import type { ClientFiles } from "./pane";

/** Makes workbooks of plans beside the one that is open, and hands several over as one zip. */
export const clientFiles: ClientFiles = {
  make: async (plan) => workbookFile(plan, await calculate(plan, allFunctions)),
  async handOver(files, name) {
    const entries: Record<string, Uint8Array> = {};
    for (const file of files) entries[freeName(file.name, entries)] = new Uint8Array(await file.arrayBuffer());
    // A workbook is packed already: packing it again would take long and save nothing.
    const bytes = zipSync(entries, { level: 0 });
    download(new File([new Uint8Array(bytes)], name, { type: "application/zip" }));
    return name;
  },
};

/** Two clients may be called alike once the signs are gone that a file name cannot hold. */
function freeName(name: string, used: Readonly<Record<string, unknown>>): string {
  let free = name;
  for (let number = 2; free in used; number++) free = name.replace(/(\.\w+)$/, ` ${number}$1`);
  return free;
}

/** Saves a file where the browser keeps its downloads. */
export function download(file: File): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
