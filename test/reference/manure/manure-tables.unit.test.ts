import { iowaKept, iowaNitrogen, manures, newYorkRelease, type Manure } from "../../../src/reference/manure";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** Counts and sums added by hand from the printed rows. */
describe("manure tables", () => {
  const rows: readonly Manure[] = Object.values(manures);

  it("keep 16 manures with contents and 2 that need an analysis", () => {
    expect(rows).toHaveLength(18);
    expect(rows.filter(({ N }) => N === undefined).map(({ label }) => label)).toEqual(["swine, bedded", "sheep"]);
  });

  it("keep the column sums of nitrogen, ammonium, phosphate and potash", () => {
    // 50+75+25+28+4+31+32+29+9+11+59+27+35+9+46+40
    expect(sum(rows.map(({ N }) => N ?? 0))).toBe(510);
    // 33+50+14+16+3+6+6+8+2+4+12+16
    expect(sum(rows.map(({ ammoniumN }) => ammoniumN ?? 0))).toBe(170);
    // 42+54+19+24+3+15+14+18+4+7+63+25+42+6+53+50
    expect(sum(rows.map(({ P2O5 }) => P2O5 ?? 0))).toBe(439);
    // 30+40+22+23+4+19+28+26+7+11+40+12+28+11+36+30
    expect(sum(rows.map(({ K2O }) => K2O ?? 0))).toBe(367);
  });

  it("keep the availability of Iowa and of New York, ends added up", () => {
    // cattle 30+50+10+10+5+5, pit 90+100+0+10, bedded 30+50, poultry 50+60+0+10
    expect(iowaNitrogen.map(({ seasons }) => sum(seasons.flat()))).toEqual([110, 200, 80, 120]);
    const { injected, incorporated, surfaceLiquid, surfaceSolid, sprinkler } = iowaKept;
    expect(sum([injected, incorporated, surfaceLiquid, surfaceSolid, sprinkler].flat())).toBe(847);
    // 35+25 three times, 30+25, 55+55; 12 and 5
    expect(sum(Object.values(newYorkRelease.first).flat())).toBe(345);
    expect(newYorkRelease.later).toEqual([12, 5]);
  });
});
