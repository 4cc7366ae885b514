import { marker } from "../../../hosts/chart/marks";
import { linearScale } from "../../../hosts/chart/scale";
import { fitted } from "../../../hosts/chart/svg-text";
import { words } from "../../words";
import { numberText } from "../number-text";
import { bottomAxis, broad, inks, letters, letterSize, lineAt, pictureFigure } from "./figure";
import type { DriftRow, LedgerReading } from "../tables/ledgers";

const say = words.charts;

const rowHeight = 24;
const keyAt = [0, 52, 140];
const colors = ["var(--clay)", inks.good, inks.bad];

/** One line a field: shapes tell the three apart without colour. */
export function driftChart({ table, trade, drifts }: LedgerReading): HTMLElement {
  const values = linearScale(drifts.flatMap(found), 110, broad - 14, false);
  const top = 26;
  const bottom = top + drifts.length * rowHeight;
  const signs = [say.now, say.byPlan, say.nothingOn].map((name, index) => {
    const x = 4 + (keyAt[index] ?? 0);
    return marker(index, x + 5, 10, colors[index] ?? inks.text) + letters(name, x + 14, 14);
  });
  const lines = drifts.map((drift, row) => {
    const y = top + row * rowHeight + rowHeight / 2;
    const ends = [Math.min(...found(drift)), Math.max(...found(drift))].map(values.at);
    const shapes = testsOf(drift).map((value, index) =>
      value === undefined ? "" : marker(index, values.at(value), y, colors[index] ?? inks.text),
    );
    const line = lineAt(ends[0] ?? 0, y, ends[1] ?? 0, y, { color: inks.edge });
    return letters(fitted(drift.field, 96, letterSize), 4, y + 4) + line + shapes.join("");
  });
  const title = say.drift(say.elements[trade]);
  return pictureFigure({
    id: `drift-${table}`,
    title,
    alt: say.driftAlt(drifts.map(told).join("; ")),
    height: bottom + 36,
    head: title,
    body: [...signs, bottomAxis(values, top, bottom, say.ppm), ...lines].join(""),
  });
}

function testsOf({ now, byPlan, nothingOn }: DriftRow) {
  return [now, byPlan, nothingOn] as const;
}

function found(drift: DriftRow): number[] {
  return testsOf(drift).filter((value) => value !== undefined);
}

function told(drift: DriftRow): string {
  const [now, byPlan, nothingOn] = testsOf(drift).map((value) =>
    value === undefined ? "–" : numberText(Math.round(value * 10) / 10),
  );
  return say.driftOf(drift.field, now ?? "", byPlan ?? "", nothingOn ?? "");
}
