const path = require("path");

/** Jest projects by suffix: what a test may touch is said in its file name. */
const root = path.resolve(__dirname, "..");
const shared = {
  rootDir: root,
  testEnvironment: "node",
  transform: {
    "^.+\\.(tsx?|mjs)$": [
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
  // hucre comes as ECMAScript modules only, which jest has to translate.
  transformIgnorePatterns: ["/node_modules/(?!hucre/)"],
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
