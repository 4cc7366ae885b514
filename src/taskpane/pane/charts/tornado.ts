import { words } from "../../words";
import type { SwingRange } from "../../../workbook/pictures/picture";
import { amountText, moneyText } from "../number-text";
import { acrossScale, bottomAxis, box, hatched, letters, lineAt, overLines, pictureFigure } from "./figure";

const say = words.whatIf;

/** Profit of an acre at the lowest and at the highest of one figure. */
export interface Swing extends SwingRange {
  readonly unit: string;
  readonly atLow: number;
  readonly atHigh: number;
}

const rowHeight = 42;

/** What moves profit most: a bar for each figure from its lowest to its highest, the longest on top. */
export function tornado(swings: readonly Swing[], profit: number): HTMLElement {
  const id = "tornado";
  const values = acrossScale([profit, ...swings.flatMap(({ atLow, atHigh }) => [atLow, atHigh])]);
  const bottom = 6 + swings.length * rowHeight;
  const now = values.at(profit);
  const bars = swings.map(({ atLow, atHigh }, index) => {
    const top = 6 + index * rowHeight;
    const end = (value: number, fill: string) =>
      box(Math.min(now, values.at(value)), top + 17, Math.abs(values.at(value) - now), 16, fill);
    return end(atLow, hatched(id)) + end(atHigh, "var(--subsoil)");
  });
  const names = swings.map((swing, index) =>
    overLines(letters(say.tornadoName(swing.name, ...endsOf(swing)), 4, 6 + index * rowHeight + 12)),
  );
  return pictureFigure({
    id,
    title: say.tornadoHead,
    alt: say.tornadoAlt(
      swings
        .map((swing) => {
          const [low, high] = endsOf(swing);
          return say.tornadoBar(swing.name, low, moneyText(swing.atLow, "/ac"), high, moneyText(swing.atHigh, "/ac"));
        })
        .join(" "),
    ),
    height: bottom + 36,
    body: [
      bottomAxis(values, 4, bottom, say.tornadoAxis),
      ...bars,
      lineAt(now, 4, now, bottom, { dash: "4 3" }),
      ...names,
    ].join(""),
    key: say.tornadoKey,
  });
}

function endsOf({ low, high, unit }: Swing): [string, string] {
  return [amountText(low, unit), amountText(high, unit)];
}
