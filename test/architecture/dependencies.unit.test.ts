import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { licensePage } from "../../src/build/licenses/license-page";
import { runtimePackages } from "../../src/build/licenses/runtime-packages";
import packageFile from "../../package.json";

const project = path.resolve(__dirname, "../..");
const packages = runtimePackages(project);

/** Licenses that let anyone use, change and pass on, and ask no more than that their text comes along. */
const permissive = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "BSL-1.0", "CC0-1.0"].concat(
  "Unlicense",
  "BlueOak-1.0.0",
  "Zlib",
);

const isPermissive = (license: string) =>
  license.split(/\s+AND\s+/).every((one) => one.split(/\s+OR\s+/).some((either) => permissive.includes(either)));

function sourceUnder(folder: string): string {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => readFileSync(path.join(entry.parentPath, entry.name), "utf8"))
    .join("\n");
}

describe("what is installed to run", () => {
  it("is seen, with what it brings in turn", () => {
    const names = packages.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...Object.keys(packageFile.dependencies), "@univerjs/ui", "heap"]));
    expect(names).not.toContain("jest");
  });

  it("is under permissive licenses only", () => {
    const others = packages.filter(({ license }) => !isPermissive(license.replace(/^\((.*)\)$/, "$1")));
    expect(others.map(({ name, license }) => `${name}: ${license || "no license"}`)).toEqual([]);
  });

  it("is imported by the source, or asked for by a package that is", () => {
    const source = sourceUnder(path.join(project, "src"));
    const direct = Object.keys(packageFile.dependencies);
    const isImported = (name: string) => new RegExp(`(?:from|import|import\\()\\s*"${name}(?:/[^"]*)?"`).test(source);
    const askedFor = direct.filter(isImported).flatMap((name) => {
      const file = readFileSync(path.join(project, "node_modules", name, "package.json"), "utf8");
      const { peerDependencies } = JSON.parse(file) as { peerDependencies?: Record<string, string> };
      return Object.keys(peerDependencies ?? {});
    });
    expect(direct.filter((name) => !isImported(name) && !askedFor.includes(name))).toEqual([]);
  });
});

describe("the page of licenses", () => {
  const page = licensePage(readFileSync(path.join(project, "LICENSE"), "utf8"), packages);

  it("names every package with its license", () => {
    const missing = packages.filter(({ name, version, license }) => !page.includes(`${name} ${version}, ${license}`));
    expect(missing).toEqual([]);
  });
  it("holds each text once", () => {
    const ends = page.split(/\n\n-{72}\n\n/).map((section) => section.slice(section.indexOf("\n\n") + 2));
    for (const text of new Set(packages.flatMap(({ texts }) => texts))) {
      expect(ends.filter((end) => end === text)).toHaveLength(1);
    }
  });
});
