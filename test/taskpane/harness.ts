import { mountPane, type PaneEnvironment } from "../../src/taskpane/pane";
import "../../src/taskpane/pane/pane.css";
import { cellsOf, clientRows, head } from "./clients/client-rows";
import { FakeHost } from "./fake-host";

/** The pane with a fake workbook, for the browser tests: ?kind=browser adds what the browser page offers. */
const kind = new URLSearchParams(location.search).get("kind") === "browser" ? "browser" : "excel";

/** Three fields of a potash ledger, with the drift of their soil tests. */
const ledger = Object.fromEntries(
  [
    ["Field", "A year lb/ac", "Test now ppm", "Test after by plan ppm", "Test after nothing on ppm"],
    ["Mill Road", -31.2, 138, 141, 120],
    ["Creek Bend", 11.8, 160, 158, 139],
    ["Home Quarter", -4.5, 121, 130, 104],
  ].flatMap((row, down) => row.map((value, across) => [`Potash!${"ABCDE"[across]}${down + 1}`, { value }])),
);

const host = new FakeHost({
  kind,
  sheets: ["Fields", "Plan", "Quick what if", "Potash"],
  cells: {
    "Fields!A1": { value: "Field" },
    "Fields!C2": { value: "corn" },
    "Fields!D2": { value: 205 },
    "Fields!C3": { value: "barlei" },
    "Fields!D3": { value: 88 },
    "Fields!E2": { formula: '=LOAM.REMOVAL([@Crop],Fields[[#This Row],[Yield]],"K2O")', value: 41 },
    "Fields!E3": {
      formula: '=LOAM.REMOVAL([@Crop],Fields[[#This Row],[Yield]],"K2O")',
      value: "#VALUE!",
      message: 'crop "barlei" is not known here. Nearest: barley.',
    },
    // A column with a number typed over its formula.
    ...{ "Plan!A1": { value: "Field" }, "Plan!B1": { value: "Acres" }, "Plan!C1": { value: "Cost $" } },
    ...{ "Plan!A2": { value: "Mill Road" }, "Plan!B2": { value: 80 }, "Plan!C2": { formula: "=B2*5", value: 400 } },
    ...{ "Plan!A3": { value: "Creek Bend" }, "Plan!B3": { value: 60 }, "Plan!C3": { value: 999 } },
    ...{ "Plan!A4": { value: "Sand Knob" }, "Plan!B4": { value: 61 }, "Plan!C4": { formula: "=B4*5", value: 305 } },
    "Quick what if!B1": { value: "soybean" },
    "Quick what if!B2": { value: 58 },
    "Quick what if!B3": { value: 10.6 },
    "Quick what if!B4": { value: 620 },
    "Quick what if!B5": { value: 0.12 },
    "Quick what if!B6": { value: 0 },
    ...ledger,
    // Three clients, the last of them without a crop on one line.
    ...(kind === "browser" && cellsOf("Clients", [head, ...clientRows(3).slice(0, -1), ["Client 3", "South", "", 43]])),
  },
  areas: {
    "Fields[Crop]": "Fields!C2:C3",
    "Fields[Yield]": "Fields!D2:D3",
    quick_crop: "'Quick what if'!B1",
    quick_yield: "'Quick what if'!B2",
    quick_price: "'Quick what if'!B3",
    quick_cost: "'Quick what if'!B4",
    quick_per_bushel: "'Quick what if'!B5",
    quick_other: "'Quick what if'!B6",
    "PotashLedger[Field]": "Potash!A2:A4",
    "PotashLedger[A year lb/ac]": "Potash!B2:B4",
    "PotashLedger[Test now ppm]": "Potash!C2:C4",
    "PotashLedger[Test after by plan ppm]": "Potash!D2:D4",
    "PotashLedger[Test after nothing on ppm]": "Potash!E2:E4",
  },
});

let loadsWithWorkbook = false;

const environment: PaneEnvironment = {
  kind,
  storage: () => localStorage,
  startup: { isOn: async () => loadsWithWorkbook, set: async (on) => void (loadsWithWorkbook = on) },
  ...(kind === "browser" && {
    saveFile: async () => "windmill-hollow.xlsx",
    files: { make: async () => new File([], "client.xlsx"), handOver: async (_files, name) => name },
    workbooks: {
      list: async () => [
        { id: "a", title: "Windmill Hollow Farm", changed: Date.UTC(2026, 0, 12, 15), isOpen: true },
        { id: "b", title: "A landlord's half of Mill Road", changed: Date.UTC(2026, 0, 9, 15), isOpen: false },
      ],
      open: async () => undefined,
      add: async () => undefined,
      rename: async () => undefined,
      remove: async () => undefined,
      openFile: async (file) => ({ title: file.name, leftOut: [] }),
    },
  }),
};

window.host = host;
// Beside a grid the page brings the main part.
if (kind === "browser") {
  document.body.innerHTML = `<main><aside id="pane" aria-label="Tools"></aside></main>`;
  document.body.style.margin = "0";
}
const root = document.getElementById("pane");
if (root) mountPane(root, host, environment);
