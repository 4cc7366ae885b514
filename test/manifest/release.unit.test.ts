import { developmentUrl, manifestFor } from "../../src/build/manifest";
import { ManifestFile, projectManifest } from "./manifest-file";

const release = new ManifestFile(manifestFor(projectManifest, { url: "https://loam.example.org/sheet/" }));
const development = new ManifestFile(projectManifest);

describe("the manifest of a release", () => {
  it("is the project's own on the developer's machine", () => {
    expect(manifestFor(projectManifest, { url: developmentUrl })).toBe(projectManifest);
    expect(manifestFor(projectManifest, { url: `${developmentUrl}/` })).toBe(projectManifest);
  });

  it("points everywhere to the place of the release", () => {
    const values = release.attributes("DefaultValue").filter((value) => value.includes("://"));
    expect(values.length).toBeGreaterThan(10);
    for (const value of values) expect(value).toMatch(/^https:\/\/loam\.example\.org\/sheet\/[a-z]/);
  });

  it("can be installed beside the one for development: another id, another name", () => {
    expect(release.one("Id").textContent).not.toBe(development.one("Id").textContent);
    expect(release.one("DisplayName").getAttribute("DefaultValue")).toBe("Loamsheet");
    expect(development.one("DisplayName").getAttribute("DefaultValue")).not.toBe("Loamsheet");
  });

  it("keeps the name before the dot in formulas unless another is asked for", () => {
    expect(release.resource("Functions.Namespace")).toBe("LOAM");
    const other = new ManifestFile(
      manifestFor(projectManifest, { url: "https://loam.example.org", namespace: "LOAMTEST" }),
    );
    expect(other.resource("Functions.Namespace")).toBe("LOAMTEST");
    expect(other.resource("GetStarted.Description")).toContain("=LOAMTEST.");
  });

  it.each(["http://loam.example.org", "https://loam.example.org/?a=1", "https://loam.example.org/#top", "nowhere"])(
    "is refused for an address that Excel would refuse: %s",
    (url) => expect(() => manifestFor(projectManifest, { url })).toThrow(),
  );

  it.each(["L", "loam", "LOAM1", "LOAMSHEETS"])("is refused for a namespace that Excel would refuse: %s", (namespace) =>
    expect(() => manifestFor(projectManifest, { url: "https://loam.example.org", namespace })).toThrow(/2 to 8/),
  );
});
