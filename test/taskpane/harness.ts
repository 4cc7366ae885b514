import { mountPane, type PaneEnvironment } from "../../src/taskpane/pane";
import "../../src/taskpane/pane/pane.css";
import { FakeHost } from "./fake-host";

/** The pane with a fake workbook, for the browser tests: ?kind=browser adds what the browser page offers. */
const kind = new URLSearchParams(location.search).get("kind") === "browser" ? "browser" : "excel";

const host = new FakeHost({
  kind,
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
  },
  areas: { "Fields[Crop]": "Fields!C2:C3", "Fields[Yield]": "Fields!D2:D3" },
});

const environment: PaneEnvironment = {
  kind,
  storage: () => localStorage,
  ...(kind === "browser" && {
    saveFile: async () => "windmill-hollow.xlsx",
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
const root = document.getElementById("pane");
if (root) mountPane(root, host, environment);
