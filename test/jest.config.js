const path = require("path");

/** Jest projects by suffix: what a test may touch is said in its file name. */
const root = path.resolve(__dirname, "..");
const modulesOnly = [
  "hucre",
  "@exodus/bytes",
  "lodash-es",
  "nanoid",
  "kdbush",
  "rbush",
  "quickselect",
  "franc-min",
].concat("trigram-utils n-gram collapse-white-space cjk-regex unicode-regex regexp-util".split(" "));
const shared = {
  rootDir: root,
  testEnvironment: "node",
  transform: {
    "^.+\\.(tsx?|m?js)$": [
      "@swc/jest",
      {
        jsc: {
          parser: { syntax: "typescript", tsx: true },
          target: "es2022",
          transform: { react: { runtime: "automatic" } },
        },
      },
    ],
  },
  // Packages that come as ECMAScript modules only, which jest has to translate: the file writer, what jsdom and the
  // formula engine stand on.
  transformIgnorePatterns: [`/node_modules/(?!(${modulesOnly.join("|")})/)`],
  moduleNameMapper: { "\\.css$": "<rootDir>/test/no-style.js" },
};

module.exports = {
  rootDir: root,
  projects: [
    {
      ...shared,
      displayName: "unit",
      testMatch: ["<rootDir>/test/**/*.{unit,golden,property}.test.ts"],
    },
    { ...shared, displayName: "contract", testMatch: ["<rootDir>/test/**/*.contract.test.ts"] },
    { ...shared, displayName: "browser", testMatch: ["<rootDir>/test/**/*.browser.test.ts"] },
  ],
};
