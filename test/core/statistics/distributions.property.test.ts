import fc from "fast-check";
import { fCdf, fQuantile } from "../../../src/core/statistics/f-distribution";
import { noncentralFCdf } from "../../../src/core/statistics/noncentral-f";
import { noncentralTCdf } from "../../../src/core/statistics/noncentral-t";
import { normalCdf, normalQuantile } from "../../../src/core/statistics/normal";
import { studentTCdf, studentTQuantile } from "../../../src/core/statistics/student-t";
import { studentizedRangeQuantile } from "../../../src/core/statistics/studentized-range";

// Chances a trial asks for; degrees of freedom of two to a thousand strips.
const chance = fc.double({ min: 0.0005, max: 0.9995, noNaN: true });
const freedom = fc.integer({ min: 1, max: 1000 });

test("a quantile undoes its distribution", () => {
  fc.assert(
    fc.property(chance, freedom, freedom, (p, df, other) => {
      expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 13);
      expect(studentTCdf(studentTQuantile(p, df), df)).toBeCloseTo(p, 11);
      expect(fCdf(fQuantile(p, df, other), df, other)).toBeCloseTo(p, 10);
    }),
  );
});

test("t squared is F with one degree of freedom above, also when noncentral", () => {
  const t = fc.double({ min: 0.05, max: 12, noNaN: true });
  fc.assert(
    fc.property(t, fc.integer({ min: 1, max: 60 }), fc.double({ min: 0, max: 8, noNaN: true }), (size, df, delta) => {
      const between = noncentralTCdf(size, df, delta) - noncentralTCdf(-size, df, delta);
      expect(between).toBeCloseTo(noncentralFCdf(size * size, 1, df, delta * delta), 10);
    }),
    { numRuns: 60 },
  );
});

test("the range of two means is a t in other units: P(Q ≤ q) = P(|t| ≤ q/√2)", () => {
  fc.assert(
    fc.property(chance, fc.integer({ min: 1, max: 200 }), (p, df) => {
      const q = studentizedRangeQuantile(p, 2, df);
      expect(2 * studentTCdf(q / Math.SQRT2, df) - 1).toBeCloseTo(p, 7);
    }),
    { numRuns: 40 },
  );
});
