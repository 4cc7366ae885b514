/** @jest-environment jsdom */
import { ledgerChart } from "../../src/taskpane/pane/charts/ledger";
import { tenth } from "../../src/taskpane/pane/charts/figure";
import type { LedgerReading } from "../../src/taskpane/pane/tables/ledgers";

it.each([
  [-18.15, "−18.2"],
  [18.15, "18.2"],
  [-0.04, "0.0"],
  [-0.05, "−0.1"],
  [7, "7.0"],
])("%d is shown as a cell shows it", (value, text) => {
  expect(tenth(value)).toBe(text);
});

it("draws a bar to the side its sign says, hatched where the field is drawn down, in the colors of the pane", () => {
  const reading: LedgerReading = {
    table: "PotashLedger",
    trade: "potash",
    balances: [
      { field: "Mill Road", perYear: -30, at: { field: "", perYear: "" } },
      { field: "Creek Bend", perYear: 15, at: { field: "", perYear: "" } },
    ],
    drifts: [],
  };
  const figure = ledgerChart(reading);
  const bars = [...figure.querySelectorAll("svg > rect")].map((bar) => ({
    x: Number(bar.getAttribute("x")),
    width: Number(bar.getAttribute("width")),
    fill: bar.getAttribute("fill"),
  }));
  const [down, up] = bars;
  expect(down?.fill).toBe("url(#ledger-PotashLedger-hatch)");
  expect(up?.fill).toMatch(/^var\(--/);
  expect((down?.x ?? 0) + (down?.width ?? 0)).toBeCloseTo(up?.x ?? 0, 1);
  expect((down?.width ?? 0) / (up?.width ?? 1)).toBeCloseTo(2, 1);
  expect(figure.querySelector("desc")?.textContent).toContain("Mill Road −30.0; Creek Bend +15.0.");
  expect(figure.innerHTML).not.toContain("#ffffff");
});
