/** Jest projects by suffix: what a test may touch is said in its file name. */
const shared = {
  rootDir: "..",
  testEnvironment: "node",
  transform: {
    "^.+\\.tsx?$": [
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
  moduleNameMapper: { "\\.css$": "<rootDir>/test/no-style.js" },
};

module.exports = {
  rootDir: "..",
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
