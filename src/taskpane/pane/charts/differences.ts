import { marker } from "../../../hosts/chart/marks";
import { words } from "../../words";
import { textWidth } from "../../../hosts/chart/svg-text";
import { acrossScale, bottomAxis, inks, letters, letterSize, lineAt, overLines, pictureFigure, tenth } from "./figure";

const say = words.trial.differences;

interface Gain {
  readonly name: string;
  readonly gain: number;
  readonly low: number;
  readonly high: number;
  readonly paysFrom?: number | undefined;
}

interface Differences {
  readonly gains: readonly Gain[];
  /** The gain of each pair; none where several treatments are compared. */
  readonly pairs: readonly { readonly name: string; readonly gain: number }[];
}

const dotHeight = 20;
const barHeight = 40;

/** Gains over the check: a dot a pair, a bar for the likely range, the line of no gain and that of breaking even. */
export function differences({ gains, pairs }: Differences): HTMLElement {
  const all = [
    0,
    ...pairs.map(({ gain }) => gain),
    ...gains.flatMap(({ low, high, paysFrom = 0 }) => [low, high, paysFrom]),
  ];
  const namesEnd = Math.max(0, ...pairs.map(({ name }) => textWidth(name, letterSize)));
  const values = acrossScale(all, 18 + namesEnd);
  const barsTop = 6 + pairs.length * dotHeight;
  const bottom = barsTop + gains.length * barHeight;
  const dots = pairs.map(({ name, gain }, index) => {
    const y = 6 + index * dotHeight + dotHeight / 2;
    return letters(name, 4, y + 4, "start", inks.quiet) + marker(0, values.at(gain), y, inks.solid);
  });
  const bars = gains.map((gain, index) => {
    const top = barsTop + index * barHeight;
    const y = top + 26;
    return (
      overLines(letters(say.range(gain.name, tenth(gain.gain), tenth(gain.low), tenth(gain.high)), 4, top + 13)) +
      lineAt(values.at(gain.low), y, values.at(gain.high), y, { width: 3, color: inks.solid }) +
      [gain.low, gain.high]
        .map((end) => lineAt(values.at(end), y - 6, values.at(end), y + 6, { width: 2, color: inks.solid }))
        .join("") +
      marker(3, values.at(gain.gain), y, inks.text)
    );
  });
  return pictureFigure({
    id: "differences",
    title: say.title,
    alt: altOf(gains, pairs),
    height: bottom + 36,
    body: [bottomAxis(values, 4, bottom, say.axis), payLines(gains, values.at, barsTop, bottom), ...dots, ...bars].join(
      "",
    ),
    key: keyOf(gains),
  });
}

/** One line through everything where one gain is judged; a short one at each bar where several are. */
function payLines(gains: readonly Gain[], at: (value: number) => number, barsTop: number, bottom: number): string {
  return gains
    .map(({ paysFrom }, index) => {
      if (paysFrom === undefined) return "";
      const x = at(paysFrom);
      const [from, to] =
        gains.length === 1 ? [4, bottom] : [barsTop + index * barHeight + 16, barsTop + (index + 1) * barHeight - 2];
      return lineAt(x, from, x, to, { dash: "4 3", width: 2, color: inks.bad });
    })
    .join("");
}

function keyOf(gains: readonly Gain[]): string {
  const [first, second] = gains;
  if (first?.paysFrom === undefined && second?.paysFrom === undefined) return say.key;
  return `${say.key} ${second ? say.keyPaysEach : say.keyPays(tenth(first?.paysFrom ?? 0))}`;
}

function altOf(gains: Differences["gains"], pairs: Differences["pairs"]): string {
  const bars = gains
    .map(({ name, gain, low, high }) => say.range(name, tenth(gain), tenth(low), tenth(high)))
    .join("; ");
  const dots = pairs.map(({ name, gain }) => say.row(name, tenth(gain))).join("; ");
  return pairs.length > 0 ? say.altPairs(dots, `${bars}.`) : say.altBlocks(`${bars}.`);
}
