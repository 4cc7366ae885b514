import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";

/** Arrows point down only: each layer may import from itself and from those after it. */
const layers = ["taskpane", "hosts", "workbook", "functions", "core", "reference"];
const src = path.resolve(__dirname, "../../src");

function filesUnder(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const place = path.join(folder, name);
    if (statSync(place).isDirectory()) return filesUnder(place);
    return /\.tsx?$/.test(name) ? [place] : [];
  });
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, "utf8");
  return [...text.matchAll(/(?:from|import)\s*\(?["'](\.[^"']+)["']/g)].map(([, target = ""]) =>
    path.resolve(path.dirname(file), target),
  );
}

const layerOf = (place: string) => layers.indexOf(path.relative(src, place).split(path.sep)[0] ?? "");

describe("the layers", () => {
  const edges = layers.flatMap((layer) =>
    filesUnder(path.join(src, layer)).flatMap((file) => importsOf(file).map((target) => ({ file, target }))),
  );

  it("sees the imports it is meant to judge", () => {
    expect(edges.length).toBeGreaterThan(50);
  });
  it("import downwards only", () => {
    const upward = edges.filter(({ file, target }) => target.startsWith(src) && layerOf(target) < layerOf(file));
    expect(upward.map(({ file, target }) => `${path.relative(src, file)} → ${path.relative(src, target)}`)).toEqual([]);
  });
  it("keep Office out of everything but its host and the pane's entry", () => {
    const touches = layers
      .flatMap((layer) => filesUnder(path.join(src, layer)))
      .filter((file) => !/hosts[/\\]excel[/\\]|excel-entry\.ts$/.test(file))
      .filter((file) =>
        /\b(Office|Excel|CustomFunctions)\.[a-zA-Z]/.test(
          readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$|"[^"]*"|`[^`]*`/gm, ""),
        ),
      );
    expect(touches).toEqual([]);
  });
});
