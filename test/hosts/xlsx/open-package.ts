import path from "path";
import { JSDOM } from "jsdom";
import { strFromU8, unzipSync } from "fflate";

const { DOMParser } = new JSDOM("").window;

/** A workbook file taken apart the way a strict reader does. */
export class OpenPackage {
  private readonly files: Map<string, string>;

  constructor(bytes: Uint8Array) {
    this.files = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
  }

  get paths(): string[] {
    return [...this.files.keys()];
  }

  text(part: string): string {
    const found = this.files.get(part);
    if (found === undefined) throw new Error(`no part ${part}; there are ${this.paths.join(", ")}`);
    return found;
  }

  /** The part as a tree; throws when it is not well-formed XML. */
  xml(part: string): Document {
    const tree = new DOMParser().parseFromString(this.text(part), "application/xml");
    const fault = tree.querySelector("parsererror");
    if (fault) throw new Error(`${part}: ${fault.textContent}`);
    return tree;
  }

  /** Relationships of a part: id to the path they lead to. */
  relationships(part: string): Map<string, string> {
    const folder = path.posix.dirname(part);
    const file = path.posix.join(folder, "_rels", `${path.posix.basename(part)}.rels`);
    if (!this.files.has(file)) return new Map();
    const all = [...this.xml(file).getElementsByTagName("Relationship")];
    return new Map(
      all.map((one) => [
        one.getAttribute("Id") ?? "",
        path.posix.join(folder === "." ? "" : folder, one.getAttribute("Target") ?? ""),
      ]),
    );
  }

  /** Text of a cell's element in a worksheet part. */
  cell(part: string, reference: string): string {
    return new RegExp(`<c r="${reference}"[^>]*?(?:/>|>.*?</c>)`, "s").exec(this.text(part))?.[0] ?? "";
  }
}
