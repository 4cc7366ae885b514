const { TestEnvironment } = require("jest-environment-node");

/** One failure is enough to notice a mutant. */
module.exports = class extends TestEnvironment {
  failed = false;

  async handleTestEvent(event) {
    if (event.name === "test_fn_failure") this.failed = true;
    if (event.name === "test_start" && this.failed) event.test.mode = "skip";
  }
};
