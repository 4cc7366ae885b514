import fc from "fast-check";
import { programGroups, type ProgramUse } from "../../../src/core/protection/program-groups";
import { herbicides, type HerbicideKey } from "../../../src/reference/protection/herbicides";
import { faultOf } from "../fault-of";

const keys = Object.keys(herbicides) as HerbicideKey[]; // the keys of a closed record
const use: fc.Arbitrary<ProgramUse> = fc.record({
  pass: fc.constantFrom("pre", "post", "late"),
  herbicide: fc.constantFrom(...keys).map((active) => ({ active })),
  isEffective: fc.constantFrom(true, false, null),
});
const uses = fc.array(use, { minLength: 1, maxLength: 8 });

describe("program groups, as laws", () => {
  it("effective groups are among the groups; a season holds its passes' groups and no others", () => {
    fc.assert(
      fc.property(uses, (program) => {
        const { season, passes } = programGroups({ uses: program, lastSeason: null });
        for (const site of season.effective ?? []) expect(season.sites).toContain(site);
        expect(new Set(passes.flatMap(({ sites }) => sites))).toEqual(new Set(season.sites));
      }),
    );
  });
  it("naming an ingredient twice adds no group", () => {
    fc.assert(
      fc.property(uses, (program) => {
        const once = programGroups({ uses: program, lastSeason: null });
        const twice = programGroups({ uses: [...program, ...program], lastSeason: null });
        expect(twice.season.sites).toEqual(once.season.sites);
        expect(twice.season.effective).toEqual(once.season.effective);
        expect(twice.passes.map(({ isShort }) => isShort)).toEqual(once.passes.map(({ isShort }) => isShort));
      }),
    );
  });
  it("the order of the rows does not matter to the season", () => {
    fc.assert(
      fc.property(uses, (program) => {
        const back = programGroups({ uses: [...program].reverse(), lastSeason: null });
        expect(back.season.sites).toEqual(programGroups({ uses: program, lastSeason: null }).season.sites);
      }),
    );
  });
  it("the same season again repeats every group", () => {
    fc.assert(
      fc.property(uses, (program) => {
        const again = programGroups({ uses: program, lastSeason: program.map(({ herbicide }) => herbicide) });
        expect(again.repeated).toEqual(again.season.sites);
      }),
    );
  });
});

it("takes a thousand uses in a season and refuses more, with their number", () => {
  const season = (uses: number) => () =>
    programGroups({
      uses: Array.from({ length: uses }, () => ({ pass: "pre", herbicide: { siteNumber: 15 }, isEffective: true })),
      lastSeason: null,
    });
  expect(season(1000)().uses).toBe(1000);
  expect(faultOf(season(1001))).toMatchObject({
    argument: "activeIngredients",
    because: "at most 1,000 uses in a season; got 1,001.",
  });
});
