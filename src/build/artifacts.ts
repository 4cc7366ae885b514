import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { allFunctions } from "../functions";
import { helpPage, metadataFor } from "../functions/frame/metadata";
import { functionPage } from "./help/function-page";
import { sourcePage } from "./help/source-page";
import { startPage } from "./help/start-page";
import { writeIcons } from "./icons/write-icons";
import { licensePage } from "./licenses/license-page";
import { runtimePackages } from "./licenses/runtime-packages";
import { developmentUrl, manifestFor } from "./manifest";
import { offlineFiles } from "./offline/offline-files";

/** What is made from the declarations, beside the bundles: registration file, help, icons, licenses, manifest. */
const site = (process.env["LOAMSHEET_URL"] ?? developmentUrl).replace(/\/$/, "");
const project = path.resolve(__dirname, "../..");
const dist = path.join(project, "dist");

mkdirSync(path.join(dist, "help"), { recursive: true });
write("help/index.html", startPage());
write(helpPage, functionPage(allFunctions));
write("help/sources.html", sourcePage(allFunctions));
copyFileSync(path.join(__dirname, "help/help.css"), path.join(dist, "help/help.css"));
writeIcons(path.join(dist, "assets"));
write("manifest.xml", manifestFor(readFileSync(path.join(project, "manifest.xml"), "utf8"), { url: site }));
write("licenses.txt", licensePage(readFileSync(path.join(project, "LICENSE"), "utf8"), runtimePackages(project)));
write("offline.json", JSON.stringify(offlineFiles(dist)));
// Last, because its date says that the build is whole.
write("functions.json", JSON.stringify(metadataFor(allFunctions, site)));

function write(name: string, text: string): void {
  writeFileSync(path.join(dist, name), text);
}
