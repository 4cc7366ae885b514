import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { allFunctions } from "../functions";
import { metadataFor } from "../functions/frame/metadata";
import { functionPage } from "./help/function-page";
import { sourcePage } from "./help/source-page";
import { startPage } from "./help/start-page";

/** What is made from the declarations, beside the bundles: registration file, help, icons, manifest. */
const site = (process.env["LOAMSHEET_URL"] ?? "https://localhost:3000").replace(/\/$/, "");
const dist = path.resolve(__dirname, "../../dist");

mkdirSync(path.join(dist, "help"), { recursive: true });
write("help/index.html", startPage());
write("help/functions.html", functionPage(allFunctions));
write("help/sources.html", sourcePage(allFunctions));
copyFileSync(path.join(__dirname, "help/help.css"), path.join(dist, "help/help.css"));
// Last, because its date says that the build is whole.
write("functions.json", JSON.stringify(metadataFor(allFunctions, site)));

function write(name: string, text: string): void {
  writeFileSync(path.join(dist, name), text);
}
