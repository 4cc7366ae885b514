import { guides } from "../../../src/reference/guides";
import { start } from "../../../src/taskpane/words/english/start";

describe("the list of guides", () => {
  it("names every region in words", () => {
    for (const key of Object.keys(guides)) {
      const code = key.replace(/-/g, "\u2011");
      expect(start.guideLabel(key)).toMatch(new RegExp(`^[A-Z][a-z].* \\(${code}\\)$`));
    }
  });
  it("tells editions of a region apart by their year", () => {
    expect(start.guideLabel("MN-2018")).toMatch(/^Minnesota, 2018 \(/);
    expect(start.guideLabel("IN-MI-OH-1995")).toMatch(/^Indiana, Michigan, Ohio, 1995 \(/);
  });
});
