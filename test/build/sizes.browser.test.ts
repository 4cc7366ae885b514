import { sizes } from "../bench/sizes";

/** The files as sent to a browser; `npm run bench` prints the same figures. */
it.each(sizes().map((figure) => [figure.what, figure] as const))("%s keeps its budget", (_what, { value, limit }) => {
  expect(value).toBeGreaterThan(1);
  expect(value).toBeLessThanOrEqual(limit);
});
