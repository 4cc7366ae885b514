import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { allFunctions } from "../../src/functions";
import { families } from "../../src/functions/frame/declaration";

const functions = path.resolve(__dirname, "../../src/functions");

/** What each file of a family's folder declares: "soil/lime-need.ts declares LIMENEED of soil". */
const declared = Object.keys(families).flatMap((folder) =>
  readdirSync(path.join(functions, folder)).flatMap((file) =>
    [...readFileSync(path.join(functions, folder, file), "utf8").matchAll(/name: "(\w+)",\s+family: "(\w+)"/g)].map(
      ([, name, family]) => ({ name, family, folder, file: `src/functions/${folder}/${file}` }),
    ),
  ),
);

describe("families of worksheet functions", () => {
  it("are the folders of src/functions, besides frame", () => {
    const folders = readdirSync(functions, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual([...Object.keys(families), "frame"].sort());
  });

  it("hold the functions that name them", () => {
    const strays = declared.filter(({ family, folder }) => family !== folder);
    expect(strays.map(({ name, family, file }) => `${name} of ${family} stands in ${file}`)).toEqual([]);
  });

  it("list every function that their files declare", () => {
    const listed = new Set(allFunctions.map(({ name }) => name));
    const forgotten = declared.filter(({ name }) => name !== undefined && !listed.has(name));
    const advice = forgotten.map(({ name, folder }) => `add ${name} to the list in src/functions/${folder}/index.ts`);
    expect(advice).toEqual([]);
    expect(declared).toHaveLength(listed.size);
  });
});
