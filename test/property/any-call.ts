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
function cellFor(facts: ArgumentFacts): fc.Arbitrary<CellIn> {
  return fc.oneof({ weight: 6, arbitrary: goodCell(facts) }, { weight: 1, arbitrary: strange });
}

function goodCell({ vocabulary, limit }: ArgumentFacts): fc.Arbitrary<CellIn> {
  if (vocabulary) return fc.constantFrom(...Object.values(vocabulary.words).map(({ label }) => label));
  if (!limit) return fc.string({ maxLength: 12 });
  const { min, max } = limit;
  return fc.oneof(
    { weight: 8, arbitrary: fc.double({ min, max: Math.min(max, Math.max(min + 1, 1e6)), noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max, min - 1, max + 1, max * 100, (min + Math.min(max, 1e4)) / 2) },
  );
}

function rangeOf(cell: fc.Arbitrary<CellIn>): fc.Arbitrary<RawArgument> {
  return fc
    .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 3 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
    );
}

/** A random call of a function, from its declaration alone. */
export function anyCall(fn: WorksheetFunction): fc.Arbitrary<readonly RawArgument[]> {
  const slots = Object.values<Argument>(fn.args).map((argument) => {
    const cell = cellFor(argument);
    const many = argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
    const given: fc.Arbitrary<RawArgument> = many
      ? rangeOf(cell)
      : fc.oneof({ weight: 5, arbitrary: cell as fc.Arbitrary<RawArgument> }, { weight: 1, arbitrary: rangeOf(cell) });
    return argument.shape === "optional" ? fc.option(given, { nil: undefined }) : given;
  });
  return fc.tuple(...slots);
}
