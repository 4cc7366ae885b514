import type { AddIn } from "../../hosts/xlsx/parts/web-extension";

/** Id and version of the add-in, read from its manifest. */
export function addInOfManifest(manifest: string): AddIn {
  return { id: oneElement(manifest, "Id"), version: oneElement(manifest, "Version") };
}

function oneElement(manifest: string, name: string): string {
  const text = new RegExp(`<${name}>([^<]+)</${name}>`).exec(manifest)?.[1]?.trim();
  if (!text) throw new Error(`manifest.xml has no <${name}>.`);
  return text;
}
