import { readFileSync } from "node:fs";
import path from "node:path";
import { JSDOM } from "jsdom";

export const projectFolder = path.resolve(__dirname, "../..");
export const projectManifest = readFileSync(path.join(projectFolder, "manifest.xml"), "utf8");

/** A manifest, read as XML: what is not well-formed does not get this far. */
export class ManifestFile {
  private readonly document: Document;

  constructor(text: string) {
    const { DOMParser } = new JSDOM("").window;
    this.document = new DOMParser().parseFromString(text, "application/xml");
    const [problem] = this.elements("parsererror");
    if (problem) throw new Error(problem.textContent ?? "not well-formed");
  }

  /** Every element of a name, whatever its prefix. */
  elements(name: string): Element[] {
    return [...this.document.getElementsByTagNameNS("*", name)];
  }

  one(name: string): Element {
    const [element, ...others] = this.elements(name);
    if (element === undefined || others.length > 0) throw new Error(`not one ${name}`);
    return element;
  }

  /** The attribute of every element that has it. */
  attributes(name: string): string[] {
    return [...this.document.getElementsByTagName("*")].flatMap((element) => element.getAttribute(name) ?? []);
  }

  /** The value behind a resource id. */
  resource(id: string): string | undefined {
    const holders = ["Image", "Url", "String"].flatMap((name) => this.elements(name));
    return holders.find((element) => element.getAttribute("id") === id)?.getAttribute("DefaultValue") ?? undefined;
  }

  /** Names of the children of the one element of a name, in order. */
  childrenOf(element: Element): string[] {
    return [...element.children].map(({ localName }) => localName);
  }
}
