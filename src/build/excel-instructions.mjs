/** How to hand the manifest to each Excel; this machine's own first. */
const ways = {
  win32: {
    title: "Excel on Windows",
    steps: (manifest) => [
      `Share a folder of this machine with yourself and copy ${manifest} into it.`,
      "In Excel: File > Options > Trust Center > Trust Center Settings > Trusted Add-in Catalogs.",
      "Type the network path of the folder, choose Add catalog, tick Show in Menu, and start Excel again.",
      "Home > Add-ins > Advanced > Shared Folder > Loamsheet (this computer) > Add.",
    ],
  },
  darwin: {
    title: "Excel on a Mac",
    steps: (manifest) => [
      "In a terminal:",
      "  mkdir -p ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef",
      `  cp "${manifest}" ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/loamsheet.xml`,
      "Start Excel again, then Home > Add-ins > Loamsheet (this computer).",
    ],
  },
  web: {
    title: "Excel on the web, in a browser on this machine",
    steps: (manifest) => [
      "Open a workbook, then Home > Add-ins > More Settings > Upload My Add-in.",
      `Choose ${manifest}. It holds for this browser.`,
    ],
  },
};

/**
 * What to do next, in words for a terminal.
 *
 * @param {string} manifest path of the manifest
 * @param {string} platform as Node names it
 */
export function howToLoad(manifest, platform) {
  const own = platform in ways ? platform : "web";
  const order = [own, ...Object.keys(ways).filter((way) => way !== own)];
  const parts = order.map((way) => {
    const { title, steps } = ways[way];
    return `${title}\n${steps(manifest)
      .map((step) => `  ${step}`)
      .join("\n")}`;
  });
  return `
The add-in is served at https://localhost:3000. Load it once; afterwards keep this running while you use it.

${parts.join("\n\n")}

Then choose Loamsheet on the Home tab, or type =LOAM. in a cell. Desktop Excel can also be opened on it with:
  npx office-addin-debugging start manifest.xml

Stop with Ctrl+C.`;
}
