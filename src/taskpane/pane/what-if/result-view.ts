import { words } from "../../words";
import { element, type Child } from "../element";
import { moneyText, withUnit } from "../number-text";
import { broadTable, columnHead } from "../parts/broad-table";
import { section } from "../parts/text";
import { intoWorkbook } from "../pictures/view";
import type { PaneState } from "../state";
import { caseFrom, valuesOf, type Case } from "./case";
import { gridOf, headings, oddsOf, priceToCover, profitOf, yieldToCover, type Answer, type Grid } from "./profit";
import type { WhatIfState } from "./state";
import { rangesOf } from "./swings";

const say = words.whatIf;

/** What an acre leaves with the figures tried: a sentence, the numbers behind it, the grid around it. */
export function resultView(state: PaneState): Child {
  const { whatIf } = state;
  const one = caseFrom(valuesOf(whatIf));
  return [
    section(
      "what-if-result-head",
      say.resultHead,
      element(
        "div",
        { role: "status" },
        element("p", { id: "what-if-result", tabindex: -1, class: "verdict" }, one ? verdict(one) : say.waiting),
      ),
      one && figures(one),
    ),
    one && odds(one, whatIf),
    one && gridView(one, state),
  ];
}

function verdict(one: Case): string {
  const profit = profitOf(one);
  return profit >= 0 ? say.leaves(moneyText(profit)) : say.short(moneyText(-profit));
}

function figures(one: Case): HTMLElement {
  const profit = profitOf(one);
  const gross = one.yieldBuPerAc * one.priceUsdPerBu + one.otherIncomeUsdPerAc;
  const rows: [string, string][] = [
    [say.profit, moneyText(profit, "/ac")],
    ...(one.acres === null
      ? []
      : [[say.allAcres(withUnit(one.acres, "")), moneyText(profit * one.acres)] as [string, string]]),
    [say.grossPerAcre, moneyText(gross, "/ac")],
    [say.breakEvenPrice, answerText(priceToCover(one), (usd) => moneyText(usd, "/bu"))],
    [say.breakEvenYield, answerText(yieldToCover(one), (bushels) => withUnit(Number(bushels.toFixed(1)), "bu/ac"))],
  ];
  return element(
    "table",
    { class: "figures" },
    element(
      "tbody",
      {},
      rows.map(([label, value]) =>
        element("tr", {}, element("th", { scope: "row" }, label), element("td", { class: "number" }, value)),
      ),
    ),
  );
}

function answerText(answer: Answer, write: (value: number) => string): string {
  return "value" in answer ? write(answer.value) : answer.because;
}

function odds(one: Case, state: WhatIfState): Child {
  const found = oddsOf(one, rangesOf(state));
  if (!found) return undefined;
  return section(
    "what-if-odds",
    say.oddsHead,
    element("p", {}, say.odds(chanceText(found.chance))),
    element("p", {}, say.worstBest(moneyText(found.worstUsdPerAc, "/ac"), moneyText(found.bestUsdPerAc, "/ac"))),
    element("p", { class: "hint" }, say.oddsMind),
  );
}

/** No range makes anything certain. */
function chanceText(chance: number): string {
  const pct = Math.round(chance * 100);
  return pct > 99 ? "over 99" : pct < 1 ? "under 1" : String(pct);
}

function gridView(one: Case, state: PaneState): HTMLElement {
  const { yields, prices } = headings(one, rangesOf(state.whatIf));
  return section(
    "what-if-grid",
    say.gridHead,
    gridTable(gridOf(one, yields, prices), one),
    element("p", { class: "hint" }, say.gridMind),
    intoWorkbook("grid", words.pictures.names.grid, state),
  );
}

function gridTable({ yields, prices, profits }: Grid, one: Case): HTMLElement {
  const most = Math.max(1, ...profits.flat().map(Math.abs));
  const now = (value: number, tried: number) => (value === tried ? "true" : undefined);
  const heads = prices.map((price) =>
    element("th", { scope: "col", "data-now": now(price, one.priceUsdPerBu) }, price.toFixed(2)),
  );
  const rows = yields.map((bushels, row) =>
    element(
      "tr",
      {},
      element("th", { scope: "row", "data-now": now(bushels, one.yieldBuPerAc) }, String(Number(bushels.toFixed(1)))),
      profits[row]?.map((profit, column) =>
        element(
          "td",
          { class: cellClass(profit, most, profits[row - 1]?.[column], profits[row]?.[column - 1]) },
          `${profit >= 0 ? "" : "−"}${Math.round(Math.abs(profit)).toLocaleString("en-US")}`,
        ),
      ),
    ),
  );
  return broadTable({
    label: say.gridGroup,
    look: "profit-grid",
    caption: say.gridCaption,
    head: [columnHead(say.gridCorner), ...heads],
    rows,
  });
}

/** Three depths of gain and of loss; a heavy edge where a cell and the one above or before it differ in sign. */
function cellClass(profit: number, most: number, above: number | undefined, before: number | undefined): string {
  const depth = Math.min(3, Math.floor((Math.abs(profit) / most) * 3) + 1);
  const gains = profit >= 0;
  const edges = [
    above !== undefined && above >= 0 !== gains && "edge-above",
    before !== undefined && before >= 0 !== gains && "edge-before",
  ];
  return [`${gains ? "gain" : "loss"}-${depth}`, ...edges.filter((edge) => edge !== false)].join(" ");
}
