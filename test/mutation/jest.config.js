const path = require("node:path");
const { projects, rootDir } = require("../jest.config");

/** All tests of a family as one file, so that the modules are loaded once for each mutant. */
module.exports = {
  ...projects.find(({ displayName }) => displayName === "unit"),
  rootDir,
  testMatch: ["<rootDir>/test/mutation/family.ts"],
  testEnvironment: path.join(__dirname, "stop-at-failure.js"),
  testTimeout: 60_000,
};
