import fc from "fast-check";
import type { Picture, TriedAcre } from "../../../src/workbook/pictures/picture";
import { planPicture } from "../../../src/workbook/pictures/plan-picture";

/** Names a person may give a sheet: signs that need quotes in a formula, and names that our own sheets would take. */
const sheetName = fc.oneof(
  fc.constantFrom("Profit grid", "profit grid 2", "Potash by field", "Strip differences", "What moves profit"),
  fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9 '&,.()-]{0,20}[A-Za-z0-9]$/),
);
const words = fc.string({ maxLength: 30 });
const amount = fc.double({ min: 0, max: 1000, noNaN: true });
const yieldBuPerAc = fc.option(amount);

function cellOn(sheet: string) {
  return fc.record({ sheet: fc.constant(sheet), row: fc.nat(2000), column: fc.nat(200) });
}

function acreOn(sheet: string): fc.Arbitrary<TriedAcre> {
  const tried = fc.oneof(
    cellOn(sheet).map((follows) => ({ follows })),
    amount.map((value) => ({ value })),
  );
  return fc.record({ yield: tried, price: tried, cost: tried, perBushel: tried, other: tried });
}

function pictureFrom(sheet: string): fc.Arbitrary<Picture> {
  const cell = cellOn(sheet);
  const trade = fc.constantFrom("potash" as const, "phosphate" as const);
  const some = { minLength: 1, maxLength: 60 };
  const trial = {
    name: words,
    design: fc.constantFrom("blocks" as const, "pairs" as const, "splitPlanter" as const),
    confidencePct: fc.integer({ min: 50, max: 99 }),
  };
  const moves = fc.oneof(
    fc.constantFrom("yield" as const, "price" as const, "cost" as const, "perBushel" as const, "other" as const),
    amount.map((planned) => ({ planned })),
  );
  return fc.oneof(
    fc.record({
      kind: fc.constant("ledger" as const),
      trade,
      rows: fc.array(fc.record({ field: cell, perYear: cell }), some),
    }),
    fc.record({
      kind: fc.constant("drift" as const),
      trade,
      rows: fc.array(fc.record({ field: cell, now: cell, byPlan: cell, nothingOn: cell }), some),
    }),
    fc.record({
      kind: fc.constant("grid" as const),
      crop: words,
      tried: acreOn(sheet),
      yieldStep: amount,
      priceStep: amount,
    }),
    fc.record({
      kind: fc.constant("tornado" as const),
      crop: words,
      tried: acreOn(sheet),
      swings: fc.array(fc.record({ name: words, moves, low: amount, high: amount }), { minLength: 1, maxLength: 17 }),
    }),
    fc.record({
      ...trial,
      kind: fc.constant("pairs" as const),
      treatments: fc.record({ check: words, treated: words }),
      pairs: fc.array(fc.record({ block: fc.nat(99), check: yieldBuPerAc, treated: yieldBuPerAc }), some),
    }),
    fc.record({
      ...trial,
      kind: fc.constant("blocks" as const),
      check: words,
      strips: fc.array(fc.record({ strip: fc.nat(99), block: fc.nat(99), treatment: words, yieldBuPerAc }), some),
    }),
  );
}

const case_ = fc
  .array(sheetName, { minLength: 1, maxLength: 5 })
  .chain((sheets) => fc.tuple(fc.constant(sheets), pictureFrom(sheets[0] ?? "")));

it("every picture makes one sheet that holds together, under a name that is free, whatever is called what", () => {
  fc.assert(
    fc.property(case_, ([sheets, picture]) => {
      // Refuses by itself what does not hold together.
      const { sheets: made, names } = planPicture(picture, "January 15, 2027", { sheets, names: [], tables: [] });
      expect([made.length, names]).toEqual([1, []]);
      expect(sheets.map((name) => name.toLowerCase())).not.toContain(made[0]?.name.toLowerCase());
    }),
    { numRuns: 150 },
  );
});

it("no chart lies on a cell, and every one is drawn from cells of its own sheet that hold something", () => {
  fc.assert(
    fc.property(case_, ([sheets, picture]) => {
      const [sheet] = planPicture(picture, "January 15, 2027", { sheets, names: [], tables: [] }).sheets;
      const cells = sheet?.cells ?? [];
      for (const { at, categories, series } of sheet?.charts ?? []) {
        const under = cells.filter(({ row, column }) => row >= at.top && row <= at.bottom && column <= at.right);
        expect(under).toEqual([]);
        for (const { sheet: on, area } of [categories, ...series.map(({ values }) => values)]) {
          expect([on, area.left]).toEqual([sheet?.name, area.right]);
          const held = cells.filter(
            ({ row, column, content }) =>
              column === area.left && row >= area.top && row <= area.bottom && content !== undefined,
          );
          expect(held).toHaveLength(area.bottom - area.top + 1);
        }
      }
    }),
    { numRuns: 100 },
  );
});
