import { words } from "../../words";
import type { Action } from "../action";
import { parted } from "../parts/parted";
import { printPart } from "../parts/print";
import { plain, valuesOf } from "./case";
import { changeKept, changeWhatIf, entry } from "./change-what-if";
import { quantities } from "./quantities";
import { choosePlace, drawPictures, readSheet, takeCell } from "./reading";
import type { CostLine } from "./state";
import { askPut, backToSheet, leaveSheet, putBack, putNow } from "./writing";

const say = words.whatIf;

/** From a number box or a slider; "yield:58". */
export const tryValue = entry("try", (value, { kept }) => {
  const [quantity, text] = parted(value);
  return { typed: { ...kept.typed, [quantity]: text } };
});

/** "yield.low:48". */
export const setRange = entry("range", (value, { kept }) => {
  const [end, text] = parted(value);
  return { ranges: { ...kept.ranges, [end]: text } };
});

/** "2.planned:85". */
export const setLine = entry("line", (value, { kept }) => {
  const [place, text] = parted(value);
  const [index = "", part = ""] = place.split(".");
  return { lines: kept.lines.map((line, at) => (at === Number(index) ? { ...line, [part]: text } : line)) };
});

const emptyLine: CostLine = { name: "", planned: "", low: "", high: "" };

export const addLine: Action = {
  name: "what-if.add-line",
  label: say.addLine,
  allowed: ({ whatIf }) => whatIf.kept.lines.length < 12,
  perform(desk) {
    const { lines } = desk.state().whatIf.kept;
    changeKept(desk, { lines: [...lines, emptyLine] }, {}, lineId(lines.length, "name"));
  },
};

export const removeLine: Action = {
  name: "what-if.remove-line",
  label: say.removeLine,
  perform(desk, index) {
    const { lines } = desk.state().whatIf.kept;
    changeKept(desk, { lines: lines.filter((_, at) => at !== Number(index)) }, {}, "what-if-add-line");
  },
};

export function lineId(index: number, part: keyof CostLine): string {
  return `what-if-line-${index}-${part}`;
}

export const nameScenario: Action = {
  name: "what-if.name",
  perform: (desk, scenarioName) => changeWhatIf(desk, { scenarioName }),
};

/** Keeps what is tried now under its name. */
export const keepScenario: Action = {
  name: "what-if.keep",
  label: say.keep,
  perform(desk) {
    const { kept, scenarioName, ...state } = desk.state().whatIf;
    const name = scenarioName.trim();
    if (name === "") {
      return changeWhatIf(desk, { said: { at: "keep", says: say.nameNeeded, done: false } }, "what-if-name");
    }
    const values = valuesOf({ kept, scenarioName, ...state });
    const isSame = (other: string) => other.toLowerCase() === name.toLowerCase();
    const again = kept.scenarios.some((scenario) => isSame(scenario.name));
    const scenarios = [...kept.scenarios.filter((scenario) => !isSame(scenario.name)), { name, values }];
    const says = again ? say.sameName(name) : say.kept(name);
    changeKept(desk, { scenarios }, { scenarioName: "", said: { at: "keep", says, done: true } });
  },
};

/** Tries a kept scenario again. */
export const useScenario: Action = {
  name: "what-if.use",
  label: say.use,
  perform(desk, index) {
    const scenario = desk.state().whatIf.kept.scenarios[Number(index)];
    if (!scenario) return;
    const typed = Object.fromEntries(
      quantities.flatMap((quantity) => {
        const value = scenario.values[quantity];
        return value === undefined ? [] : [[quantity, plain(value)] as const];
      }),
    );
    changeKept(desk, { typed }, {}, "what-if-result");
  },
};

export const removeScenario: Action = {
  name: "what-if.remove",
  label: say.remove,
  perform(desk, index) {
    const { scenarios } = desk.state().whatIf.kept;
    changeKept(desk, { scenarios: scenarios.filter((_, at) => at !== Number(index)) }, {}, "what-if-name");
  },
};

export const printPictures: Action = {
  name: "what-if.print",
  label: words.charts.print,
  perform: () => printPart("what-if-pictures"),
};

export const whatIfActions: readonly Action[] = [
  readSheet,
  choosePlace,
  takeCell,
  drawPictures,
  tryValue,
  setRange,
  setLine,
  addLine,
  removeLine,
  nameScenario,
  keepScenario,
  useScenario,
  removeScenario,
  printPictures,
  askPut,
  leaveSheet,
  putNow,
  putBack,
  backToSheet,
];
