import { readFileSync } from "node:fs";
import path from "node:path";
import { JSDOM } from "jsdom";

const folder = path.resolve(__dirname, "../../src/taskpane");
const { document } = new JSDOM(readFileSync(path.join(folder, "taskpane.html"), "utf8")).window;
const entry = readFileSync(path.join(folder, "excel-entry.ts"), "utf8");

describe("the page that Excel opens", () => {
  it("loads Excel's own script first in its head, before anything that talks to Excel", () => {
    const scripts = [...document.querySelectorAll("script")];
    expect(scripts.map((script) => script.getAttribute("src"))).toEqual(["<%= officeScript %>"]);
    expect(scripts[0]?.parentElement).toBe(document.head);
    expect(scripts[0]?.hasAttribute("defer") || scripts[0]?.hasAttribute("async")).toBe(false);
  });

  it("has no script or style of its own inside, which its security policy would stop", () => {
    const policy = document.querySelector("meta[http-equiv]")?.getAttribute("content") ?? "";
    expect(policy).toMatch(/default-src 'self'/);
    expect(policy).not.toContain("unsafe");
    expect(document.querySelectorAll("script:not([src]), style, [style], [onclick]")).toHaveLength(0);
  });

  it("has every part that its script looks for", () => {
    const wanted = [...entry.matchAll(/(?:part|explain)\("([a-z-]+)"\)/g)].map(([, id]) => id);
    expect(wanted).toContain("pane");
    expect(wanted).toContain("outside-excel");
    for (const id of wanted) expect([id, document.getElementById(id ?? "") !== null]).toEqual([id, true]);
  });

  it("shows no trouble before there is any", () => {
    for (const id of ["cannot-start", "outside-excel", "without-office"]) {
      expect(document.getElementById(id)?.hidden).toBe(true);
    }
  });
});
