import { sources } from "../../../src/reference/sources";
import { usualTrial } from "../../../src/reference/trials/usual-trial";

it("a usual trial has four to six blocks, as the publication prints", () => {
  expect([usualTrial.leastBlocks, usualTrial.mostBlocks, usualTrial.mark]).toEqual([4, 6, "V"]);
  expect(sources[usualTrial.source].title).toMatch(/number of replications/);
});
