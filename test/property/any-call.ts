import fc from "fast-check";
import type { Argument, ArgumentFacts } from "../../src/functions/frame/arguments";
import type { CellIn, RawArgument } from "../../src/functions/frame/cell";
import type { WorksheetFunction } from "../../src/functions/frame";

/** Whatever a sheet may hand over in place of a good value. */
const strange: fc.Arbitrary<CellIn> = fc.oneof(
  fc.constant(null),
  fc.constant(""),
  fc.constant(0),
  fc.boolean(),
  fc.string({ maxLength: 12 }),
  fc.double({ noNaN: false }),
  fc.constantFrom("#N/A", "#VALUE!", "#DIV/0!").map((code) => ({ code })),
);

/** Values of one argument made from its declaration: inside, at both ends, outside, and strange ones. */
function anyCell(facts: ArgumentFacts): fc.Arbitrary<CellIn> {
  return fc.oneof(
    { weight: 5, arbitrary: insideCell(facts) },
    { weight: 1, arbitrary: edgeCell(facts) },
    { weight: 1, arbitrary: strange },
  );
}

function insideCell({ vocabulary, limit }: ArgumentFacts): fc.Arbitrary<CellIn> {
  if (vocabulary) return fc.constantFrom(...Object.values(vocabulary.words).map(({ label }) => label));
  if (!limit) return fc.string({ maxLength: 12 });
  const { min } = limit;
  const max = Math.min(limit.max, Math.max(min + 1, 1e6));
  return fc.oneof(
    // As a person would type it; a random double is most often all but 0.
    { weight: 3, arbitrary: fc.integer({ min: 0, max: 1000 }).map((step) => min + ((max - min) * step) / 1000) },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
  );
}

function edgeCell({ limit }: ArgumentFacts): fc.Arbitrary<CellIn> {
  if (!limit) return strange;
  const { min, max } = limit;
  return fc.constantFrom(min, max, min - 1, max + 1, max * 100, (min + Math.min(max, 1e4)) / 2);
}

interface Size {
  readonly rows: number;
  readonly columns: number;
}

/** A few cells; now and then, where asked for, up to 1,000 rows or 20 columns. */
function anySize(largeRanges: boolean): fc.Arbitrary<Size> {
  const few = fc.record({ rows: fc.integer({ min: 1, max: 6 }), columns: fc.integer({ min: 1, max: 3 }) });
  const many = fc.record({ rows: fc.integer({ min: 1, max: 1000 }), columns: fc.integer({ min: 1, max: 20 }) });
  return largeRanges ? fc.oneof({ weight: 199, arbitrary: few }, { weight: 1, arbitrary: many }) : few;
}

function rangeOf(cell: fc.Arbitrary<CellIn>, { rows, columns }: Size): fc.Arbitrary<RawArgument> {
  const row = fc.array(cell, { minLength: columns, maxLength: columns });
  return fc.array(row, { minLength: rows, maxLength: rows });
}

/**
 * A random call of a function, from its declaration alone. A third of the calls hold values inside their ranges, with
 * lists of one size; a third are the printed example with anything in one place, so that functions whose arguments must
 * go together get to work at all; the others hold anything.
 */
export function anyCall(
  fn: WorksheetFunction,
  { largeRanges = false }: { largeRanges?: boolean } = {},
): fc.Arbitrary<readonly RawArgument[]> {
  const size = anySize(largeRanges);
  return fc.oneof(
    size.chain((one) => callOf(fn, insideCell, fc.constant(one))),
    nearExample(fn, size),
    callOf(fn, anyCell, size),
  );
}

function nearExample(fn: WorksheetFunction, size: fc.Arbitrary<Size>): fc.Arbitrary<readonly RawArgument[]> {
  const inPlace = fc.record({
    place: fc.nat({ max: Object.keys(fn.args).length - 1 }),
    with: callOf(fn, anyCell, size),
  });
  return inPlace.map(({ place, with: other }) =>
    other.map((anything, index) => (index === place ? anything : fn.example.call[index])),
  );
}

function callOf(
  fn: WorksheetFunction,
  cellFor: (facts: ArgumentFacts) => fc.Arbitrary<CellIn>,
  size: fc.Arbitrary<Size>,
): fc.Arbitrary<readonly RawArgument[]> {
  const slots = Object.values<Argument>(fn.args).map((argument) => {
    const cell = cellFor(argument);
    const many = argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
    const range = size.chain((one) => rangeOf(cell, one));
    const given: fc.Arbitrary<RawArgument> = many
      ? range
      : fc.oneof({ weight: 9, arbitrary: cell as fc.Arbitrary<RawArgument> }, { weight: 1, arbitrary: range });
    return argument.shape === "optional" ? fc.option(given, { nil: undefined }) : given;
  });
  return fc.tuple(...slots);
}
