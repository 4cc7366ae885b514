import https from "node:https";
import path from "node:path";
import { build } from "./build.mjs";
import { certificates } from "./excel-certificates.mjs";
import { howToLoad } from "./excel-instructions.mjs";
import { distIsFresh } from "./freshness.mjs";
import { ensureInstalled, projectFolder } from "./install.mjs";
import { answerFromDist, listen } from "./serve.mjs";

/** The port that manifest.xml names. */
const port = 3000;

/**
 * `npm run excel`: installs what is missing, builds what is old, serves the add-in over https on this machine and says
 * how to load it into Excel. A certificate is trusted only after a yes.
 *
 * `-- --trust` gives that yes beforehand; `-- --no-trust` serves with a certificate that nothing trusts, for trying out
 * the server.
 */
ensureInstalled();
const pair = await certificates(process.argv.slice(2));
if (pair === undefined) process.exit(1);
if (!distIsFresh()) {
  console.log("Building Loamsheet …");
  build();
}
await serve(pair);
console.log(howToLoad(path.join(projectFolder, "manifest.xml"), process.platform));

async function serve(pair) {
  // Excel on the web reads the functions' description from its own pages.
  const anyPage = [{ key: "Access-Control-Allow-Origin", value: "*" }];
  const server = https.createServer(pair, await answerFromDist(anyPage));
  try {
    await listen(server, port);
  } catch (problem) {
    console.error(
      problem.code === "EADDRINUSE"
        ? `Port ${port} is in use, and the manifest names that port. Stop the other program, then try again.`
        : `The add-in could not be served on port ${port}: ${problem.message}`,
    );
    process.exit(1);
  }
}
