import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import { builtFolder, serveBuiltPages, until, type BuiltPages, type OpenedPage } from "../browser/page";

jest.setTimeout(60_000);

/** The one address elsewhere that any page asks for: an add-in has to load Excel's own script from there. */
const officeScript = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

const builtFiles = readdirSync(builtFolder, { recursive: true, encoding: "utf8" }).map((file) =>
  file.replaceAll(path.sep, "/"),
);
const ending = (end: string) => builtFiles.filter((file) => file.endsWith(end));
const textOf = (file: string) => readFileSync(path.join(builtFolder, file), "utf8");
const pageFiles = ending(".html");

/** The directives of a page's content policy. */
function policyOf(html: string): ReadonlyMap<string, readonly string[]> {
  const [, content = ""] = /<meta\s+http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(html) ?? [];
  const directives = content.split(";").map((directive) => directive.trim().split(/\s+/));
  return new Map(directives.map(([name = "", ...values]) => [name, values]));
}

it("looks at every page there is", () => {
  expect(pageFiles.sort()).toEqual([
    "help/functions.html",
    "help/index.html",
    "help/sources.html",
    "index.html",
    "taskpane.html",
  ]);
});

describe.each(pageFiles)("%s as it is written", (file) => {
  const html = textOf(file);
  const policy = policyOf(html);
  const allowed = (directive: string) => policy.get(directive) ?? policy.get("default-src") ?? ["everything"];

  it("lets only scripts and style sheets of its own run, and Excel's script where it is needed", () => {
    const office = file === "taskpane.html" ? [new URL(officeScript).origin] : [];
    const isHelp = file.startsWith("help/");
    expect(allowed("script-src")).toEqual(isHelp ? ["'none'"] : ["'self'", ...office]);
    expect(allowed("style-src")).toEqual(["'self'"]);
    expect(allowed("connect-src")).toEqual([isHelp ? "'none'" : "'self'"]);
    for (const directive of ["script-src-elem", "script-src-attr", "style-src-elem"]) {
      expect([directive, policy.has(directive)]).toEqual([directive, false]);
    }
    expect(allowed("object-src")).toEqual(["'none'"]);
    expect([policy.get("base-uri"), policy.get("form-action")]).toEqual([["'none'"], ["'none'"]]);
  });

  it("allows style attributes to the grid alone, which gives pasted cells their looks by them", () => {
    expect(policy.get("style-src-attr")).toEqual(file === "index.html" ? ["'unsafe-inline'"] : undefined);
  });

  it("has no script, no rule and no handler in its text", () => {
    expect(html.match(/<script(?![^>]*\ssrc=)[^>]*>/g)).toBeNull();
    expect(html.match(/<style/g)).toBeNull();
    expect(html.match(/<[^>]*\s(on[a-z]+|style)\s*=/g)).toBeNull();
    expect(html.match(/(href|src)\s*=\s*["']?\s*javascript:/g)).toBeNull();
  });

  it("has nothing before its policy that it would not allow", () => {
    const [before = ""] = html.split("Content-Security-Policy");
    const scripts = [...before.matchAll(/<script[^>]*\ssrc="([^"]*)"/g)].map(([, address]) => address);
    expect(scripts).toEqual(file === "taskpane.html" ? [officeScript] : []);
  });
});

describe("what makes a script of a text, in the built scripts", () => {
  // A search of the text, which names what it finds; the policy refuses it and whatever hides from such a search.
  const makers = /(?<![\w$.])(?:eval|Function)\s*\((?:[^()]|\([^()]*\)){0,30}\)?/g;
  const found = (file: string) => textOf(file).match(makers) ?? [];

  it("is nowhere in the add-in, and in the grid page only where the grid's library has it", () => {
    const inGrid = new Set(found("workbook.js").map((text) => text.replace(/\$\{\w+\}/, "${…}")));
    // Two ways to find the global object, tried last; and functions sent as text, which this page never does.
    expect([...inGrid].sort()).toEqual(['Function("return this")', "Function(`return ${…}`)"]);
    expect(ending(".js").length).toBeGreaterThan(3);
    for (const file of ending(".js").filter((name) => name !== "workbook.js"))
      expect([file, found(file)]).toEqual([file, []]);
  });
});

describe("in a browser", () => {
  let pages: BuiltPages;
  let opened: OpenedPage;
  let page: Page;

  beforeAll(async () => {
    pages = await serveBuiltPages();
    opened = await pages.open("help/index.html");
    page = opened.page;
    // Excel's script is asked for, and not given.
    await opened.context.route(officeScript, (route) => route.abort());
    await page.addInitScript(() => {
      const refused: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) =>
        refused.push(effectiveDirective),
      );
      Object.assign(window, { refused });
    });
  });
  afterAll(() => pages.stop());

  const refused = () => page.evaluate(() => Reflect.get(window, "refused") as string[]);

  /** Opens a page and waits until what it does by itself is done. */
  async function visit(file: string): Promise<void> {
    opened.foreign.length = opened.troubles.length = 0;
    await page.goto(`${pages.address}${file}${file === "index.html" ? "#empty" : ""}`);
    if (file === "index.html") await until(() => page.evaluate(() => window.loamsheet !== undefined), "it was open");
    if (file === "taskpane.html") await page.locator("#without-office").waitFor();
    await page.waitForLoadState("networkidle");
  }

  it.each(pageFiles)("%s asks nothing of anyone else, and its policy has nothing to refuse", async (file) => {
    await visit(file);
    const isAddIn = file === "taskpane.html";
    expect(opened.foreign).toEqual(isAddIn ? [officeScript] : []);
    expect(await refused()).toEqual([]);
    const withoutOffice = [/^CustomFunctions is not defined$/, /office\.js$/];
    const expected = (trouble: string) => isAddIn && withoutOffice.some((pattern) => pattern.test(trouble));
    expect(opened.troubles.filter((trouble) => !expected(trouble))).toEqual([]);
  });

  it.each(["index.html", "taskpane.html"])(
    "%s refuses what is put in: scripts, handlers, rules, texts to run",
    async (file) => {
      await visit(file);
      await page.evaluate(() => {
        const script = document.createElement("script");
        script.textContent = "window.ran = 'script'";
        const image = document.createElement("img");
        image.setAttribute("onload", "window.ran = 'handler'");
        image.src = "data:image/gif;base64,R0lGODlhAQABAAAAACH5BAEKAAEALAAAAAABAAEAAAICTAEAOw==";
        const style = document.createElement("style");
        style.textContent = "body { outline: 7px solid red }";
        document.body.append(script, image, style);
        // Apart from this call, which the policy does not reach.
        setTimeout(() => {
          try {
            new Function("window.ran = 'text'")();
          } catch {
            Object.assign(window, { refusedText: true });
          }
        });
      });
      await until(() => page.evaluate(() => Reflect.has(window, "refusedText")), "the text was refused");
      await until(async () => (await refused()).length >= 4, "all was refused");
      expect((await refused()).sort()).toEqual(["script-src", "script-src-attr", "script-src-elem", "style-src-elem"]);
      expect(await page.evaluate(() => Reflect.get(window, "ran"))).toBeUndefined();
      expect(await page.evaluate(() => getComputedStyle(document.body).outlineWidth)).not.toBe("7px");
    },
  );
});
