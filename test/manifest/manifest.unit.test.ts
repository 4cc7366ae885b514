import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { namespace } from "../../src/functions/frame/formula-text";
import { iconSizes, signNames } from "../../src/build/icons/write-icons";
import { developmentUrl } from "../../src/build/manifest";
import { ribbonViews } from "../../src/hosts/excel/ribbon";
import { ManifestFile, projectFolder, projectManifest } from "./manifest-file";

const manifest = new ManifestFile(projectManifest);
const urls = () =>
  [...manifest.attributes("DefaultValue"), ...manifest.attributes("Value")].filter((value) => value.includes("://"));

/** Where each page comes from: made by the build, so only its maker is in the project. */
const makers: Readonly<Record<string, string>> = {
  "taskpane.html": "src/taskpane/taskpane.html",
  "functions.js": "src/hosts/excel/functions-entry.ts",
  "functions.json": "src/functions/frame/metadata.ts",
  "help/index.html": "src/build/help/start-page.ts",
};

describe("the manifest", () => {
  it("has its elements in the order that Excel wants", () => {
    expect(manifest.childrenOf(manifest.one("OfficeApp"))).toEqual([
      ...["Id", "Version", "ProviderName", "DefaultLocale", "DisplayName", "Description", "IconUrl"],
      ...["HighResolutionIconUrl", "SupportUrl", "Hosts", "Requirements", "DefaultSettings", "Permissions"],
      "VersionOverrides",
    ]);
    const inner = manifest.one("VersionOverrides").querySelector("Host");
    expect(inner && manifest.childrenOf(inner)).toEqual(["Runtimes", "AllFormFactors", "DesktopFormFactor"]);
    expect(manifest.childrenOf(manifest.one("Resources"))).toEqual(["Images", "Urls", "ShortStrings", "LongStrings"]);
    expect(manifest.childrenOf(manifest.one("DesktopFormFactor"))).toEqual([
      "GetStarted",
      "FunctionFile",
      "ExtensionPoint",
    ]);
  });

  it("asks for the function runtime and one page for everything", () => {
    const sets = manifest.elements("Set").map((set) => set.getAttribute("Name"));
    expect(sets).toEqual(["CustomFunctionsRuntime", "SharedRuntime"]);
    expect(manifest.one("Runtime").getAttribute("lifetime")).toBe("long");
  });

  it("has every resource it refers to, with an id of at most 32 characters, and refers to every one it has", () => {
    const used = new Set(manifest.attributes("resid"));
    for (const id of used) expect([id, manifest.resource(id) === undefined]).toEqual([id, false]);
    const had = ["Image", "Url", "String"]
      .flatMap((name) => manifest.elements(name))
      .flatMap((element) => element.getAttribute("id") ?? []);
    expect(new Set(had)).toEqual(used);
    for (const id of had) expect(id.length).toBeLessThanOrEqual(32);
  });

  it("has no id twice", () => {
    const ids = manifest.attributes("id");
    expect(ids).toEqual([...new Set(ids)]);
  });

  it("gives every icon in the sizes that a ribbon asks for, each by its own picture", () => {
    const icons = manifest.elements("Icon");
    expect(icons.length).toBeGreaterThan(0);
    for (const icon of icons) {
      const images = [...icon.children].map((image) => [image.getAttribute("size"), image.getAttribute("resid")]);
      expect(images.map(([size]) => size)).toEqual(expect.arrayContaining(["16", "32", "80"]));
      const kinds = images.map(([size, resid]) => {
        const picture = manifest.resource(resid ?? "") ?? "";
        return /\/assets\/([a-z]+)-(\d+)\.png$/.exec(picture)?.slice(1) ?? [picture, size];
      });
      expect(kinds.map(([, pixels]) => pixels)).toEqual(images.map(([size]) => size));
      expect(new Set(kinds.map(([kind]) => kind)).size).toBe(1);
    }
  });

  it("uses https throughout, on this machine", () => {
    expect(urls().length).toBeGreaterThan(0);
    for (const url of urls()) expect(url.startsWith(`${developmentUrl}/`)).toBe(true);
  });

  it("points only to what the build makes", () => {
    const pages = new Set(urls().map((url) => url.slice(developmentUrl.length + 1)));
    for (const page of pages) {
      const [, picture, size] = /^assets\/([a-z]+)-(\d+)\.png$/.exec(page) ?? [];
      if (picture !== undefined) {
        // What they show is checked with the icons.
        expect(["icon", ...signNames]).toContain(picture);
        expect(iconSizes).toContain(Number(size));
        continue;
      }
      expect([page, existsSync(path.join(projectFolder, makers[page] ?? "nowhere"))]).toEqual([page, true]);
    }
  });

  it("names one page for the runtime, the functions, the commands and the pane, and no pane beside it", () => {
    const places = ["Runtime", "FunctionFile"].map((name) => manifest.one(name).getAttribute("resid"));
    const page = manifest.one("Page").querySelector("SourceLocation")?.getAttribute("resid");
    const panes = manifest.elements("Action").flatMap((action) => [...action.querySelectorAll("SourceLocation")]);
    expect(panes).toHaveLength(1);
    const all = [...places, page, ...panes.map((pane) => pane.getAttribute("resid"))];
    expect(new Set(all)).toEqual(new Set(["Taskpane.Url"]));
    expect(manifest.elements("TaskpaneId")).toEqual([]);
    expect(manifest.elements("DefaultSettings")[0]?.querySelector("SourceLocation")?.getAttribute("DefaultValue")).toBe(
      manifest.resource("Taskpane.Url"),
    );
  });

  it("has buttons that each do something, by a name that the pane answers to", () => {
    const buttons = manifest.elements("Control");
    expect(buttons.length).toBeGreaterThan(1);
    for (const button of buttons) {
      expect(manifest.childrenOf(button)).toEqual(["Label", "Supertip", "Icon", "Action"]);
      expect(manifest.resource(button.querySelector("Label")?.getAttribute("resid") ?? "")).not.toBe("");
    }
    const commands = manifest.elements("FunctionName").map(({ textContent }) => textContent);
    expect(commands.length).toBeGreaterThan(0);
    expect(new Set(commands)).toEqual(new Set(Object.keys(ribbonViews)));
    const byCommand = manifest
      .elements("Action")
      .filter((action) => action.getAttribute("xsi:type") === "ExecuteFunction");
    expect(byCommand).toHaveLength(commands.length);
  });

  it("keeps its texts within what Excel shows", () => {
    const text = (name: string) => manifest.one(name).getAttribute("DefaultValue") ?? "";
    const overrides = manifest.one("VersionOverrides");
    const display = manifest.elements("DisplayName")[0]?.getAttribute("DefaultValue") ?? "";
    const description = manifest.elements("Description").find((element) => !overrides.contains(element));
    expect(display.length).toBeGreaterThan(0);
    expect(display.length).toBeLessThanOrEqual(125);
    expect(description?.getAttribute("DefaultValue")?.length).toBeLessThanOrEqual(250);
    for (const string of manifest.one("ShortStrings").children)
      expect(string.getAttribute("DefaultValue")?.length).toBeLessThanOrEqual(125);
    for (const string of manifest.one("LongStrings").children)
      expect(string.getAttribute("DefaultValue")?.length).toBeLessThanOrEqual(250);
    expect(text("SupportUrl")).toBe(manifest.resource("Help.Url"));
  });

  it("calls the functions as formulas call them, and has an id and a version of the right form", () => {
    expect(manifest.resource("Functions.Namespace")).toBe(namespace);
    expect(namespace).toMatch(/^[A-Z]{2,8}$/);
    expect(manifest.one("Id").textContent).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    const { version } = JSON.parse(readFileSync(path.join(projectFolder, "package.json"), "utf8")) as {
      version: string;
    };
    expect(manifest.one("Version").textContent).toBe(`${version}.0`);
  });

  it("opens no other domain inside the pane, or names it without path and slash", () => {
    for (const domain of manifest.elements("AppDomain")) expect(domain.textContent).toMatch(/^https:\/\/[^/]+$/);
  });
});
