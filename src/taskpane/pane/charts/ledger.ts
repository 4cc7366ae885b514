import { linearScale } from "../../../hosts/chart/scale";
import { fitted } from "../../../hosts/chart/svg-text";
import { words } from "../../words";
import { box, bottomAxis, broad, hatched, inks, letters, letterSize, pictureFigure, tenth } from "./figure";
import type { LedgerReading } from "../tables/ledgers";

const say = words.charts;

const rowHeight = 24;
const numbersRoom = 40;

/** A bar a field of what is put on less what the crops take; drawn down is hatched, so that it shows without colour. */
export function ledgerChart({ table, trade, balances }: LedgerReading): HTMLElement {
  const id = `ledger-${table}`;
  const amounts = balances.map(({ perYear }) => perYear);
  const values = linearScale([0, ...amounts], 112, broad - numbersRoom - 6, false);
  const bottom = 4 + balances.length * rowHeight;
  const bars = balances.map(({ field, perYear }, row) => {
    const top = 4 + row * rowHeight;
    const [from, to] = [values.at(Math.min(perYear, 0)), values.at(Math.max(perYear, 0))];
    return (
      letters(fitted(field, 100, letterSize), 4, top + 16) +
      box(from, top + 5, to - from, rowHeight - 10, perYear < 0 ? hatched(id) : inks.solid) +
      letters(signed(perYear), broad - 4, top + 16, "end")
    );
  });
  return pictureFigure({
    id,
    title: say.ledger(say.trades[trade]),
    alt: say.ledgerAlt(trade, balances.map(({ field, perYear }) => say.perYear(field, signed(perYear))).join("; ")),
    height: bottom + 36,
    head: say.ledger(say.trades[trade]),
    key: say.ledgerKey,
    body: [bottomAxis(values, 4, bottom, say.perYearAxis), ...bars].join(""),
  });
}

function signed(value: number): string {
  return value > 0.05 ? `+${tenth(value)}` : tenth(value);
}
