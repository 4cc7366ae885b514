/** Where manifest.xml in the project says the pages are: a server on the developer's own machine. */
export const developmentUrl = "https://localhost:3000";

/** Two installations side by side need two ids; the released one never changes. */
const developmentId = "58941afa-4f58-46c8-8a44-31b45b880f23";
const releaseId = "a04d2e9c-81ee-478b-a2d9-55267e4aeff0";
const developmentName = "Loamsheet (this computer)";
const developmentNamespace = "LOAM";

export interface Release {
  /** Address the pages are served from: https, with no slash at the end. */
  readonly url: string;
  /** What stands before the dot in formulas. Starter workbooks and saved files are written with LOAM. */
  readonly namespace?: string;
}

/**
 * The project's manifest for one place of use: unchanged for the developer's own machine, else with the address, id,
 * name and namespace of the release.
 *
 * @throws when the address is not https or the namespace is not 2 to 8 letters
 */
export function manifestFor(projectManifest: string, { url, namespace = developmentNamespace }: Release): string {
  const site = siteOf(url);
  if (!/^[A-Z]{2,8}$/.test(namespace))
    throw new Error(`The namespace must be 2 to 8 capital letters; got "${namespace}".`);
  if (site === developmentUrl && namespace === developmentNamespace) return projectManifest;
  return projectManifest
    .replaceAll(developmentUrl, site)
    .replace(developmentId, releaseId)
    .replace(`DefaultValue="${developmentName}"`, 'DefaultValue="Loamsheet"')
    .replace(
      `id="Functions.Namespace" DefaultValue="${developmentNamespace}"`,
      `id="Functions.Namespace" DefaultValue="${namespace}"`,
    )
    .replaceAll(`=${developmentNamespace}.`, `=${namespace}.`);
}

/** An address fit for an attribute: https, nothing behind its path, no slash at the end. */
function siteOf(url: string): string {
  const { protocol, host, pathname, search, hash } = new URL(url);
  if (protocol !== "https:") throw new Error(`Excel loads add-ins over https only; got ${url}`);
  if (search || hash) throw new Error(`The address must end with its path; got ${url}`);
  return `https://${host}${pathname.replace(/\/+$/, "")}`.replaceAll("&", "&amp;");
}
