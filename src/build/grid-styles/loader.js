const path = require("path");

/**
 * The grid writes rules into style elements, which a content policy without inline code refuses. Its four places are
 * rewritten while it is bundled; a place that is no longer found stops the build.
 */
const places = [
  {
    // The colours of its theme.
    file: "@univerjs/ui/lib/es/index.js",
    from: /const existingStyleElement = [\s\S]*?styleElement\.textContent = (`[^`]*`);\s*document\.head\.appendChild\(styleElement\);/,
    to: "if (this._adopted) drop(this._adopted);\nthis._adopted = adopt($1);",
  },
  {
    // The rules that come with cells pasted from another spreadsheet, which it only reads.
    file: "@univerjs/sheets-ui/lib/es/index.js",
    from: /const shadowHost = [\s\S]*?for \(const rule of style\.sheet\.cssRules\) (\{[\s\S]*?\n\t\t\t\})\s*style\.remove\(\);\s*shadowHost\.remove\(\);/,
    to: "for (const rule of sheetOf(style.textContent).cssRules) $1\nstyle.remove();",
  },
  {
    // Its short messages.
    file: "sonner/dist/index.mjs",
    from: /let head = document\.head[\s\S]*?createTextNode\(code\)\)/,
    to: "adopt(code);",
  },
  {
    // A page that stands still behind a dialog.
    file: "react-style-singleton/dist/es2015/singleton.js",
    from: /if \(\(stylesheet = makeStyleTag\(\)\)\) \{[\s\S]*?insertStyleTag\(stylesheet\);\s*\}([\s\S]*?)stylesheet\.parentNode && stylesheet\.parentNode\.removeChild\(stylesheet\);/,
    to: "stylesheet = adopt(style);$1drop(stylesheet);",
  },
];

module.exports = function withoutStyleElements(source) {
  const file = this.resourcePath.replaceAll(path.sep, "/");
  const { from, to } = places.find((place) => file.endsWith(place.file));
  if (!from.test(source)) throw new Error(`The grid writes its rules in another way now: look at ${file}.`);
  const sheets = JSON.stringify(path.join(__dirname, "sheets.mjs"));
  return `import { adopt, drop, sheetOf } from ${sheets};\n${source.replace(from, to)}`;
};

/** What a bundler needs to know of it. */
module.exports.rule = {
  include: places.map(({ file }) => path.resolve(__dirname, "../../../node_modules", file)),
  loader: __filename,
};
