import { existsSync, mkdtempSync, readdirSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import os from "node:os";
import path from "node:path";
import webpack, { type Configuration } from "webpack";

const project = path.resolve(__dirname, "../../..");
const built = path.join(project, "dist/functions.js");

/** The script that Excel loads for the functions: the built one, or one built now when that is missing or old. */
export async function functionsBundle(): Promise<string> {
  const fresh = existsSync(built) && statSync(built).mtimeMs >= newest(path.join(project, "src"));
  return readFileSync(fresh ? built : await buildNow(), "utf8");
}

async function buildNow(): Promise<string> {
  const configurations = createRequire(__filename)(path.join(project, "webpack.config.js")) as (
    environment: object,
    options: { mode: string },
  ) => Configuration[]; // a script of the project, without types
  const [addIn] = configurations({}, { mode: "development" });
  const folder = mkdtempSync(path.join(os.tmpdir(), "loamsheet-functions-"));
  const compiler = webpack({
    ...addIn,
    context: project,
    entry: { functions: "./src/hosts/excel/functions-entry.ts" },
    output: { path: folder, filename: "[name].js" },
    plugins: [],
    devtool: false,
    cache: false,
  });
  const stats = await new Promise<webpack.Stats | undefined>((resolve, reject) =>
    compiler?.run((problem, result) => (problem ? reject(problem) : resolve(result))),
  );
  if (stats?.hasErrors()) throw new Error(stats.toString("errors-only"));
  return path.join(folder, "functions.js");
}

function newest(place: string): number {
  const facts = statSync(place);
  if (!facts.isDirectory()) return facts.mtimeMs;
  return Math.max(...readdirSync(place).map((name) => newest(path.join(place, name))));
}
