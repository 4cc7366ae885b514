import { existsSync, mkdirSync, readFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { createInterface } from "node:readline/promises";
import { projectFolder } from "./install.mjs";

const daysValid = 30;
const homeFolder = path.join(os.homedir(), ".office-addin-dev-certs");

const explanation = `
Excel loads add-ins over https only, from this machine too. That takes a certificate for https://localhost:

  · It is made here, on this machine, and works for ${daysValid} days. Nothing is sent anywhere.
  · For Excel to accept it, this machine has to trust its maker, an authority called
    "Developer CA for Microsoft Office Add-ins" that exists on this machine only. Your system will ask you to
    confirm that, on Linux with sudo.
  · The key lies in ${homeFolder}. Whoever has that folder could pretend to be localhost
    to you, so keep it to yourself.
  · To take it all back: npx office-addin-dev-certs uninstall
`;

/**
 * Key and certificate for https://localhost, trusted by this machine if the person agrees; nothing when they do not.
 *
 * @param {string[]} words from the command line: --trust agrees beforehand, --no-trust serves without being trusted
 */
export async function certificates(words) {
  const makers = await import("office-addin-dev-certs");
  if (words.includes("--no-trust")) return untrusted(makers);
  if (makers.verifyCertificates()) return pairIn(homeFolder);
  console.log(explanation);
  if (!(await agreed(words))) {
    console.log("Nothing was changed. Without a trusted certificate Excel cannot load the add-in from this machine.");
    return undefined;
  }
  await makers.ensureCertificatesAreInstalled(daysValid);
  return pairIn(homeFolder);
}

/** Asks; where nobody can answer the answer is no. */
async function agreed(words) {
  if (words.includes("--trust")) return true;
  if (!process.stdin.isTTY) {
    console.log("Nobody can answer here. Run it in a terminal, or agree with: npm run excel -- --trust\n");
    return false;
  }
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const answer = await terminal.question("Make the certificate and trust it on this machine? Type yes: ");
  terminal.close();
  return answer.trim().toLowerCase() === "yes";
}

/** A certificate in the project's own folder that no program is told to trust. */
async function untrusted({ generateCertificates }) {
  const folder = path.join(projectFolder, ".cache/localhost-certificate");
  mkdirSync(folder, { recursive: true });
  const files = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => path.join(folder, name));
  if (!files.every((file) => existsSync(file))) await generateCertificates(...files, daysValid);
  console.log("Serving with a certificate that nothing trusts: Excel will not load the add-in from it.");
  return pairIn(folder);
}

function pairIn(folder) {
  return {
    cert: readFileSync(path.join(folder, "localhost.crt")),
    key: readFileSync(path.join(folder, "localhost.key")),
  };
}
