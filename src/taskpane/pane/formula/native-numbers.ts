import { isBlank, type RawArgument } from "../../../functions/frame/cell";
import { cellsIn, numbersIn, type Evaluate, type NativeCall, type NativeCalls, type Node } from "./native-call";
import { numberOf, singleCell } from "./operators";

/** Sums, averages and rounding as spreadsheets do them. */
export const nativeNumbers: NativeCalls = {
  COUNT: ofNumbers((numbers) => numbers.length),
  COUNTA: async (nodes, evaluate) => (await cellsIn(nodes, evaluate)).filter((cell) => !isBlank(cell)).length,
  SUM: ofNumbers(sumOf),
  PRODUCT: ofNumbers((numbers) => numbers.reduce((product, value) => product * value, 1)),
  AVERAGE: ofNumbers((numbers) => (numbers.length === 0 ? { code: "#DIV/0!" } : sumOf(numbers) / numbers.length)),
  MAX: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.max(...numbers))),
  MIN: ofNumbers((numbers) => (numbers.length === 0 ? 0 : Math.min(...numbers))),
  MEDIAN: ofNumbers(median),
  ABS: ofOne(Math.abs),
  INT: ofOne(Math.floor),
  SQRT: ofOne((value) => (value < 0 ? { code: "#NUM!" } : Math.sqrt(value))),
  ROUND: rounded((value) => Math.sign(value) * Math.round(Math.abs(value))),
  ROUNDUP: rounded((value) => Math.sign(value) * Math.ceil(Math.abs(value))),
  ROUNDDOWN: rounded(Math.trunc),
  MOD: async ([value, by], evaluate) => {
    const [a, b] = [numberOf(await evaluate(value)), numberOf(await evaluate(by))];
    return b === 0 ? { code: "#DIV/0!" } : a - b * Math.floor(a / b);
  },
  N: async ([value], evaluate) => {
    const cell = singleCell(await evaluate(value));
    return typeof cell === "number" ? cell : cell === true ? 1 : 0;
  },
  DATE: async (nodes, evaluate) => {
    const [year = 0, month = 0, day = 0] = await Promise.all(nodes.map(async (node) => numberOf(await evaluate(node))));
    return Math.round((Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000);
  },
};

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, value) => sum + value, 0);
}

function median(numbers: readonly number[]): RawArgument {
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? { code: "#NUM!" } : (upper + lower) / 2;
}

function ofNumbers(work: (numbers: readonly number[]) => RawArgument): NativeCall {
  return async (nodes, evaluate) => work(await numbersIn(nodes, evaluate));
}

function ofOne(work: (value: number) => RawArgument): NativeCall {
  return async ([value], evaluate) => work(numberOf(await evaluate(value)));
}

/** To a number of decimals; the binary dust of the scaling (1.005 × 100 is 100.499…) is wiped off first. */
function rounded(work: (value: number) => number): NativeCall {
  return async ([value, digits]: readonly Node[], evaluate: Evaluate) => {
    const scale = 10 ** numberOf(await evaluate(digits));
    const scaled = numberOf(await evaluate(value)) * scale;
    return work(Number(scaled.toPrecision(14))) / scale;
  };
}
