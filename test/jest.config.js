const path = require("path");

/** Jest projects by suffix: what a test may touch is said in its file name. */
const root = path.resolve(__dirname, "..");
/** Packages that come as ECMAScript modules only, which jest has to translate. */
const modulesOnly = [
  "hucre",
  "ml-levenberg-marquardt",
  "is-any-array",
  "ml-array-[^/]+",
  ..."lodash-es nanoid kdbush rbush quickselect franc-min trigram-utils n-gram collapse-white-space cjk-regex".split(
    " ",
  ),
  ..."unicode-regex regexp-util @exodus/bytes @asamuzakjp/[^/]+ @csstools/[^/]+ parse5 entities".split(" "),
];
const shared = {
  rootDir: root,
  testEnvironment: "node",
  // Looking these up in the sandbox of a test is slow, and the engine and the statistics do it by the million.
  sandboxInjectedGlobals: ["Math", "Object", "Array", "Map", "Set", "isNaN"],
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
  transformIgnorePatterns: [`/node_modules/(?!(${modulesOnly.join("|")})/)`],
  moduleNameMapper: { "\\.css$": "<rootDir>/test/no-style.js" },
};

module.exports = {
  rootDir: root,
  // A whole farm plan is calculated in a second or two, and in ten times that on a machine that is busy besides.
  testTimeout: 60_000,
  // All cores: tests in a browser wait more than they work.
  maxWorkers: "100%",
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
