import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** A package that what we ship may hold. */
export interface RuntimePackage {
  readonly name: string;
  readonly version: string;
  /** As its maker declares it: "MIT", "Apache-2.0 AND BSL-1.0"; empty where nothing says. */
  readonly license: string;
  readonly author: string;
  /** The text of the license and of notices, as far as the package brings them. */
  readonly texts: readonly string[];
}

interface Lock {
  readonly packages: Readonly<Record<string, { readonly dev?: boolean }>>;
}

interface PackageFile {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
}

/** Every package that is installed for other reasons than building and testing, by name. */
export function runtimePackages(project: string): RuntimePackage[] {
  const { packages } = readJson<Lock>(path.join(project, "package-lock.json"));
  return Object.entries(packages)
    .filter(([place, { dev }]) => place !== "" && dev !== true)
    .map(([place]) => path.join(project, place))
    .filter((folder) => existsSync(folder))
    .map(packageIn)
    .sort((a, b) => a.name.localeCompare(b.name));
}

function packageIn(folder: string): RuntimePackage {
  const { name, version, license, author } = readJson<PackageFile>(path.join(folder, "package.json"));
  const texts = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && /^(licen[cs]e|copying|notice)/i.test(entry.name))
    .map((entry) => readFileSync(path.join(folder, entry.name), "utf8").replaceAll("\r\n", "\n").trim());
  return {
    name,
    version,
    license: license ?? licenseSaidIn(texts),
    author: (typeof author === "object" ? author.name : author) ?? "",
    texts,
  };
}

function licenseSaidIn(texts: readonly string[]): string {
  return texts.some((text) => /^\s*Apache License\s+Version 2\.0/.test(text)) ? "Apache-2.0" : "";
}

function readJson<Content>(file: string): Content {
  return JSON.parse(readFileSync(file, "utf8")) as Content; // the files of npm
}
