/** Stryker on one family of src/core; run.mjs starts it once for each. */
const family = process.env.MUTATE_FAMILY;

export default {
  mutate: [family === "shared" ? "src/core/*.ts" : `src/core/${family}/**/*.ts`],
  ignorePatterns: ["/*", "!/src", "!/src/**", "!/test", "!/test/**"],
  plugins: ["@stryker-mutator/jest-runner", "./test/mutation/stryker-plugins.mjs"],
  ignorers: ["sentences"],
  checkers: ["sample"],
  testRunner: "jest",
  jest: { configFile: "test/mutation/jest.config.js", enableFindRelatedTests: false },
  coverageAnalysis: "perTest",
  concurrency: 2,
  timeoutMS: 30_000,
  reporters: ["json"],
  jsonReporter: { fileName: `.cache/mutation/${family}.json` },
  tempDirName: ".cache/stryker",
  cleanTempDir: "always",
  allowConsoleColors: false,
};
