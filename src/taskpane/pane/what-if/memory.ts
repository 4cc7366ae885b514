import { isRecord } from "../../../hosts/is-record";
import { listIn, recordOf, textIn } from "../parts/remembered";
import { isQuantity, type Quantity } from "./quantities";
import { nothingKept, type CostLine, type Kept, type Scenario } from "./state";

/** Workbooks that the pane remembers what was tried in; the one used longest ago goes first. */
const mostWorkbooks = 30;

/** What is remembered for a workbook; whatever is not of the right kind is left out. */
export function keptOf(remembered: unknown, workbook: string): Kept {
  const kept = recordOf(recordOf(remembered)[workbook]);
  return {
    typed: texts(kept.typed, isQuantity),
    ranges: texts(kept.ranges, (key): key is string => /^[a-zA-Z]+\.(low|high)$/.test(key)),
    lines: listIn(kept.lines).filter(isRecord).map(lineFrom),
    scenarios: listIn(kept.scenarios).filter(isRecord).map(scenarioFrom),
    cells: texts(kept.cells, isQuantity),
    place: textIn(kept, "place") ?? "",
  };
}

/** Everything remembered, with what a workbook has now. */
export function remembering(remembered: unknown, workbook: string, kept: Kept): Record<string, unknown> {
  const others = Object.entries(recordOf(remembered)).filter(([key]) => key !== workbook);
  const mine = JSON.stringify(kept) === JSON.stringify(nothingKept) ? [] : [[workbook, kept] as const];
  return Object.fromEntries([...others, ...mine].slice(-mostWorkbooks));
}

function texts<Key extends string>(value: unknown, isKey: (key: string) => key is Key) {
  const found = Object.entries(recordOf(value)).flatMap(([key, text]) =>
    isKey(key) && typeof text === "string" ? [[key, text] as const] : [],
  );
  return Object.fromEntries(found) as Record<Key, string>; // only some keys, which the places it goes to allow
}

function lineFrom(line: Readonly<Record<string, unknown>>): CostLine {
  const text = (key: string) => textIn(line, key) ?? "";
  return { name: text("name"), planned: text("planned"), low: text("low"), high: text("high") };
}

function scenarioFrom(scenario: Readonly<Record<string, unknown>>): Scenario {
  const values: Partial<Record<Quantity, number>> = {};
  for (const [key, value] of Object.entries(recordOf(scenario.values))) {
    if (isQuantity(key) && typeof value === "number" && Number.isFinite(value)) values[key] = value;
  }
  return { name: textIn(scenario, "name") ?? "", values };
}
