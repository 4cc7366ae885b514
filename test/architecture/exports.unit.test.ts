import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const root = path.resolve(__dirname, "../..");

const files = ["src", "test"].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(?:ts|tsx|mjs)$/.test(name))
    .map((name) => path.join(folder, name)),
);
const texts = new Map(files.map((file) => [file, readFileSync(path.join(root, file), "utf8")]));

/** In how many files each word stands. */
const standsIn = new Map<string, number>();
for (const text of texts.values()) {
  for (const word of new Set(text.match(/\w+/g))) standsIn.set(word, (standsIn.get(word) ?? 0) + 1);
}

/** Constants and functions that a file offers to others. Programs (.mjs) answer to their own callers. */
function offers(file: string, text: string): string[] {
  if (file.endsWith(".mjs")) return [];
  return [...text.matchAll(/^export (?:async )?(?:const|function) (\w+)/gm)].map(([, name]) => name ?? "");
}

describe("what a file exports", () => {
  it("is named in another file; where it is not, take away the word export, or the whole when nothing uses it", () => {
    const unused = [...texts].flatMap(([file, text]) =>
      offers(file, text)
        .filter((name) => standsIn.get(name) === 1)
        .map((name) => `${name} in ${file}`),
    );
    expect(unused).toEqual([]);
  });
});
