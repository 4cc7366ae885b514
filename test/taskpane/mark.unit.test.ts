/** @jest-environment jsdom */
import { markSvg } from "../../src/build/icons/mark";
import { mark } from "../../src/taskpane/pane/mark";

const points = (svg: string): string[] => [...svg.matchAll(/points="([^"]+)"/g)].map(([, corners]) => corners ?? "");

it("draws the same shapes as the icons", () => {
  expect(points(mark().outerHTML)).toEqual(points(markSvg()));
});
