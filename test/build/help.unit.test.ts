import { readFileSync } from "node:fs";
import path from "node:path";
import { allFunctions } from "../../src/functions";
import { functionPage } from "../../src/build/help/function-page";
import { sourcePage } from "../../src/build/help/source-page";
import { startPage } from "../../src/build/help/start-page";
import { metadataFor } from "../../src/functions/frame/metadata";
import { sources } from "../../src/reference/sources";

const pages = {
  "functions.html": functionPage(allFunctions),
  "sources.html": sourcePage(allFunctions),
  "index.html": startPage(),
};
const idsOf = (html: string) => new Set([...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));

describe("the help pages", () => {
  it("have one anchor per function, where the registration file points", () => {
    const ids = idsOf(pages["functions.html"]);
    for (const { helpUrl } of metadataFor(allFunctions, "https://example.org").functions) {
      expect(helpUrl).toMatch(/^https:\/\/example\.org\/help\/functions\.html#/);
      expect(ids.has(helpUrl.split("#")[1])).toBe(true);
    }
  });
  it("have one anchor per source", () => {
    const ids = idsOf(pages["sources.html"]);
    for (const key of Object.keys(sources)) expect(ids.has(key)).toBe(true);
  });
  it("link only to pages and anchors that exist", () => {
    for (const html of Object.values(pages)) {
      for (const [, file, anchor] of html.matchAll(/href="([a-z]+\.html)?(?:#([^"]+))?"/g)) {
        const target = file ? pages[file as keyof typeof pages] : html;
        expect(target).toBeDefined();
        if (anchor) expect(idsOf(target).has(anchor)).toBe(true);
      }
    }
  });
  it("and the README name every function", () => {
    const readme = readFileSync(path.resolve(__dirname, "../../README.md"), "utf8");
    expect(allFunctions.map(({ name }) => name).filter((name) => !readme.includes(name))).toEqual([]);
  });
  it("run no script", () => {
    for (const html of Object.values(pages)) expect(html).not.toMatch(/<script|\son[a-z]+=/);
  });
});
