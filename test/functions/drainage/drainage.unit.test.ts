import { pipeCapacity, pipeSize } from "../../../src/functions/drainage/pipes";
import { drainCoefficient, soilSpacing, tileSpacing } from "../../../src/functions/drainage/spacing";
import { tileCost } from "../../../src/functions/drainage/tile";
import { drainageFunctions } from "../../../src/functions/drainage";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("TILESPACING on a sheet", () => {
  it("takes a texture for the conductivity and fills a column of rates, wider for the smaller rate", () => {
    const cells = runFunction(tileSpacing, [4, 1.5, "loam", [[0.375], [0.5]], 10]).map(([cell]) => Number(cell));
    expect(cells[0]).toBeCloseTo(82.37, 1);
    expect(cells[1]).toBeLessThan(Number(cells[0]));
  });
  it("uses the slower soil below where it is given", () => {
    const [[even], [slower]] = [[null], ["clay"]].map(([below]) =>
      runFunction(tileSpacing, [4, 1.5, 1.97, 0.375, 10, null, below ?? null]).flat(),
    ) as [number[], number[]];
    expect(Number(slower)).toBeLessThan(Number(even));
  });
  it("shows entry loss and what half and twice the conductivity do, and what to check", () => {
    const shown = JSON.stringify(explain(tileSpacing, [4, 1.5, "loam", 0.375, 10]));
    for (const words of ["entry loss", "half as fast", "twice as fast", "Check against the current bulletin."]) {
      expect(shown).toContain(words);
    }
  });
  it("says what is wrong", () => {
    expect(messageOf(runFunction(tileSpacing, [4, 5, 1.97, 0.375, 10]))).toBe(
      "midwayTable: the water table midway has to lie above the drains: less deep than depth.",
    );
    expect(messageOf(runFunction(tileSpacing, [4, 1.5, "gravel pit", 0.375, 10]))).toContain("conductivity");
    expect(messageOf(runFunction(tileSpacing, [4, 1.5, 1.97, null, 10]))).toBe("waiting for drainRate");
  });
});

describe("pipes on a sheet", () => {
  it("PIPECAPACITY reads the kind of pipe: smooth inside carries 0.015 / 0.012 = 1.25 times as much", () => {
    const [[rough]] = runFunction(pipeCapacity, [6, 0.2, 0.375]) as [[number]];
    const [[smooth]] = runFunction(pipeCapacity, [6, 0.2, 0.375, "dual wall"]) as [[number]];
    expect(smooth / rough).toBeCloseTo(1.25, 10);
  });
  it("PIPESIZE shows the least grade and the speed", () => {
    const shown = JSON.stringify(explain(pipeSize, [40, 0.2, 0.375]));
    expect(shown).toContain("Least grade");
    expect(shown).toContain("ft/s");
  });
});

describe("published rules on a sheet", () => {
  it("SOILSPACING reads words or the rate: silt loam, 90 ft for 3/8 in", () => {
    expect(runFunction(soilSpacing, ["silt loam", [["good", "3/8", 0.375, 0.25]]])).toEqual([[90, 90, 90, 130]]);
  });
  it("DRAINCOEFFICIENT spills low and high: organic soil, vegetables, open inlets 2 to 4", () => {
    expect(runFunction(drainCoefficient, ["muck", "vegetables", "open"])[1]).toEqual([2, 4]);
    for (const [call, isSaid] of [
      [["mineral", "corn", "none"], true],
      [["mineral", "corn", "open"], false],
      [["mineral", "truck", "none"], false],
      [["muck", "corn", "none"], false],
    ] as const) {
      expect([call, JSON.stringify(explain(drainCoefficient, call)).includes("Illinois")]).toEqual([call, isSaid]);
    }
    expect(explain(drainCoefficient, ["mineral", "corn", "none"])).toMatchObject({
      cites: [{ source: "umn-drainage-2001" }, { source: "cooke-illinois-2019" }],
    });
  });
});

describe("TILECOST on a sheet", () => {
  it("waits for the acres that share a main", () => {
    expect(messageOf(runFunction(tileCost, [50, 1.1, null, 500, 4]))).toBe("waiting for acres");
  });
});

describe("the drainage family", () => {
  it("warns about digging or design wherever work follows, and asks in a grower's words", () => {
    for (const fn of drainageFunctions) {
      expect([fn.name, fn.asks?.length ?? 0]).not.toEqual([fn.name, 0]);
      if (fn.name !== "TILELENGTH") expect([fn.name, fn.cautions?.length ?? 0]).not.toEqual([fn.name, 0]);
    }
    const said = drainageFunctions.flatMap(({ cautions }) => cautions ?? []).join(" ");
    for (const words of ["Call before you dig", "shoring", "wetland", "licensed"]) expect(said).toContain(words);
  });
});
