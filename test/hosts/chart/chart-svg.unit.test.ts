import { chartSvg, type ReadRange } from "../../../src/hosts/chart/chart-svg";
import { axisNumber } from "../../../src/hosts/chart/axis-number";
import { bandScale, linearScale } from "../../../src/hosts/chart/scale";
import type { HostValue } from "../../../src/hosts/port";
import type { ChartPlan } from "../../../src/workbook/plan";

const column = (number: number) => ({ sheet: "S", area: { top: 0, left: number, bottom: 2, right: number } });

function chart(kind: ChartPlan["kind"], series: number, rest: Partial<ChartPlan> = {}): ChartPlan {
  return {
    kind,
    title: "Income <by> field",
    alt: "Columns of income & cost.",
    categories: column(0),
    series: Array.from({ length: series }, (_, index) => ({
      name: `Series ${index + 1}`,
      values: column(index + 1),
      color: ["#2f4f6f", "#a8501f"][index] ?? "#000000",
    })),
    at: { top: 0, left: 0, bottom: 9, right: 5 },
    ...rest,
  };
}

function reader(columns: readonly (readonly HostValue[])[]): ReadRange {
  return ({ area }) => columns[area.left] ?? [];
}

function count(svg: string, sign: RegExp): number {
  return [...svg.matchAll(sign)].length;
}

describe("chartSvg", () => {
  it("is one image with a name and a description, every text escaped", () => {
    const svg = chartSvg(
      chart("column", 1),
      reader([
        ["a", "b", "c"],
        [1, 2, 3],
      ]),
    );
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toContain("<title>Income &#60;by&#62; field</title><desc>Columns of income &#38; cost.</desc>");
  });

  it("draws a column a value, none where there is no number", () => {
    const svg = chartSvg(
      chart("column", 1),
      reader([
        ["a", "b", "c"],
        [1, "#N/A", 3],
      ]),
    );
    expect(count(svg, /<rect [^>]*fill="#2f4f6f"/g)).toBe(2);
  });

  it("makes heights follow values: twice the value is twice the height", () => {
    const svg = chartSvg(
      chart("column", 1),
      reader([
        ["a", "b"],
        [10, 20],
      ]),
    );
    const [low = 0, high = 0] = [...svg.matchAll(/height="([\d.]+)" fill="#2f4f6f"/g)].map((match) => Number(match[1]));
    expect(high / low).toBeCloseTo(2, 1);
  });

  it("lets bars below zero run the other way", () => {
    const svg = chartSvg(
      chart("bar", 1),
      reader([
        ["a", "b"],
        [-10, 10],
      ]),
    );
    const bars = [...svg.matchAll(/<rect x="([\d.]+)"[^>]*width="([\d.]+)"[^>]*fill="#2f4f6f"/g)];
    const [below, above] = bars.map((match) => ({ start: Number(match[1]), end: Number(match[1]) + Number(match[2]) }));
    expect(below?.end).toBeCloseTo(above?.start ?? 0, 0);
  });

  it("lays the bars of a category on one line where they are the ends of one range, beside it where not", () => {
    const cells = reader([["a"], [-10], [10]]);
    const placesOf = (plan: ChartPlan) =>
      [...chartSvg(plan, cells).matchAll(/<rect x="[\d.]+" y="([\d.]+)"[^>]*fill="#(?:2f4f6f|a8501f)"/g)]
        .map(([, y]) => y)
        .slice(-2);
    const [low, high] = placesOf(chart("bar", 2, { onOneLine: true }));
    expect(low).toBeDefined();
    expect(high).toBe(low);
    expect(new Set(placesOf(chart("bar", 2))).size).toBe(2);
  });

  it("breaks a line where a value is missing", () => {
    const svg = chartSvg(
      chart("line", 1),
      reader([
        ["a", "b", "c"],
        [1, null, 3],
      ]),
    );
    expect(svg).toMatch(/<path d="M[\d. ]+M[\d. ]+" fill="none"/);
  });

  it("places points by both numbers and leaves out a point without one", () => {
    const svg = chartSvg(
      chart("scatter", 1),
      reader([
        [1, "x", 3],
        [5, 6, 7],
      ]),
    );
    expect(count(svg, /<path d="[^"]+" fill="#2f4f6f"/g)).toBe(2);
  });

  it("tells series apart by legend, shape and dash, not by colour alone", () => {
    const svg = chartSvg(
      chart("line", 2),
      reader([
        ["a", "b"],
        [1, 2],
        [3, 4],
      ]),
    );
    expect(svg).toContain("Series 1</text>");
    expect(svg).toContain("Series 2</text>");
    expect(svg).toMatch(/stroke="#a8501f" stroke-width="2" stroke-dasharray/);
  });

  it("draws points without a line, and level lines without markers, each broken its own way", () => {
    const plan = chart("line", 2);
    const [points, level] = plan.series;
    if (!points || !level) throw new Error("two series");
    const svg = chartSvg(
      {
        ...plan,
        series: [
          { ...points, look: "points" },
          { ...level, look: "dotted" },
        ],
      },
      reader([
        ["1", "2", "3"],
        [4, "#N/A", 6],
        [3, 3, 3],
      ]),
    );
    // Two of three points, and one in the legend; the dotted line, and its stretch in the legend.
    expect(count(svg, /<path d="[^"]+" fill="#2f4f6f"/g)).toBe(3);
    expect(count(svg, /fill="none" stroke="#2f4f6f"/g)).toBe(0);
    expect(count(svg, /fill="#a8501f"/g)).toBe(0);
    expect(count(svg, /fill="none" stroke="#a8501f" stroke-width="2" stroke-dasharray="2 3"/g)).toBe(2);
  });

  it("keeps zero in sight of a line unless its values lie close together far from it", () => {
    const ticks = (values: readonly number[]) =>
      [...chartSvg(chart("line", 1), reader([["a", "b"], values])).matchAll(/text-anchor="end"[^>]*>([\d.−]+)</g)].map(
        ([, tick]) => tick,
      );
    expect(ticks([4, 7])).toContain("0");
    expect(ticks([-7, -4])).toContain("0");
    expect(ticks([180, 200])).not.toContain("0");
  });

  it("leaves out rows that hold nothing yet", () => {
    const svg = chartSvg(
      chart("column", 1),
      reader([
        ["a", "", null],
        [1, null, ""],
      ]),
    );
    const width = Number(/<rect x="[\d.]+" y="[\d.]+" width="([\d.]+)"[^>]*fill="#2f4f6f"/.exec(svg)?.[1]);
    expect(width).toBeGreaterThan(300);
  });

  it("cuts a title that is wider than the chart, with nothing to draw as well", () => {
    const wide = chart("column", 1, { title: "Income over costs ".repeat(12) });
    for (const values of [[1, 2, 3], []]) {
      const [, shown = ""] = /<text[^>]*>([^<]*)</.exec(chartSvg(wide, reader([["a", "b", "c"], values]))) ?? [];
      expect(shown).toMatch(/^Income over costs .*…$/);
      expect(shown.length).toBeLessThan(wide.title.length / 2);
    }
  });

  it("says so when there is nothing to draw", () => {
    expect(chartSvg(chart("column", 1), reader([["a"], [null]]))).toContain("its cells hold no numbers");
  });
});

describe("linearScale", () => {
  it("ends on round values that hold everything", () => {
    // 0 to 126,280 in about five steps: 50,000 each.
    expect(linearScale([126280, 40260], 0, 100, true).ticks).toEqual([0, 50000, 100000, 150000]);
    expect(linearScale([-31, 44], 0, 100, true).ticks).toEqual([-40, -20, 0, 20, 40, 60]);
    expect(linearScale([0.1, 0.3], 0, 100, false).ticks).toEqual([0.1, 0.15, 0.2, 0.25, 0.3]);
  });

  it("holds one value, equal values and none", () => {
    expect(linearScale([5], 0, 100, false).at(5)).toBeGreaterThanOrEqual(0);
    expect(linearScale([0, 0], 0, 100, true).ticks.length).toBeGreaterThan(1);
    expect(linearScale([], 0, 100, true).ticks.every(Number.isFinite)).toBe(true);
  });

  it("puts the ends at the ends", () => {
    const scale = linearScale([0, 10], 200, 0, true);
    expect([scale.at(0), scale.at(10)]).toEqual([200, 0]);
  });
});

describe("bandScale", () => {
  it("shares the room out evenly", () => {
    const bands = bandScale(4, 100, 300);
    expect([bands.width, bands.at(0), bands.at(3)]).toEqual([50, 100, 250]);
  });
});

describe("axisNumber", () => {
  it.each([
    ["$#,##0", 126280, "$126,280"],
    ["$#,##0", -20, "−$20"],
    ["#,##0.0", 1234.56, "1,234.6"],
    ["0%", 0.125, "13%"],
    ['0.0" bu/ac"', 62, "62.0 bu/ac"],
    ["0.00;[Red]-0.00", 1.5, "1.50"],
    [undefined, 2.5, "2.5"],
  ])("writes %s of %d as %s", (format, value, written) => {
    expect(axisNumber(format)(value)).toBe(written);
  });
});
