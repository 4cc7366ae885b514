const rootTwoPi = Math.sqrt(2 * Math.PI);

/* Coefficients of Cody (1969), Rational Chebyshev approximations for the error function, arranged for the normal CDF. */
const nearTop = [
  0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249,
];
const nearBottom = [1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956];
const midTop = [
  1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226,
  2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218,
];
const midBottom = [
  1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091,
  34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
];
const farTop = [
  0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807, 0.0014216191932278934,
  2.9112874951168792e-5,
];
const farBottom = [
  1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244, 7.29751555083966205e-5,
];

/* Coefficients of Wichura (1988), algorithm AS 241, PPND16. Highest power first. */
const middleTop = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
  1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const middleBottom = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
  687.1870074920579083, 42.313330701600911252, 1,
];
const outerTop = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const outerBottom = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const tailTop = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const tailBottom = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

/** Height of the standard normal curve at z. */
export function normalPdf(z: number): number {
  return Math.exp(-0.5 * z * z) / rootTwoPi;
}

/** Chance that a standard normal value is at most z. Good to about 15 digits, tails included (Cody 1969). */
export function normalCdf(z: number): number {
  const size = Math.abs(z);
  if (!(size > 0.67448975)) return Number.isNaN(z) ? Number.NaN : 0.5 + z * ratio(nearTop, nearBottom, z * z);
  if (size > 40) return z > 0 ? 1 : 0;
  const tail = size < Math.sqrt(32) ? middleTail(size) : farTail(size);
  return z > 0 ? 1 - tail : tail;
}

function middleTail(size: number): number {
  return exactExp(size) * ratio(midTop, midBottom, size);
}

function farTail(size: number): number {
  const inverse = 1 / (size * size);
  return (exactExp(size) * (1 / rootTwoPi - inverse * ratio(farTop, farBottom, inverse))) / size;
}

/** exp(−z²/2) with the square split in two, so that far tails keep their digits. */
function exactExp(size: number): number {
  const coarse = Math.trunc(size * 16) / 16;
  return Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * (size - coarse) * (size + coarse));
}

/** The z that a standard normal value stays below with chance p (0 to 1). Good to about 16 digits (Wichura 1988). */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity;
  const fromMiddle = p - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) {
    return fromMiddle * ratio(middleTop, middleBottom, 0.180625 - fromMiddle * fromMiddle);
  }
  const root = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const size = root <= 5 ? ratio(outerTop, outerBottom, root - 1.6) : ratio(tailTop, tailBottom, root - 5);
  return fromMiddle < 0 ? -size : size;
}

/** One polynomial over another, highest power first. */
function ratio(top: readonly number[], bottom: readonly number[], x: number): number {
  return polynomial(top, x) / polynomial(bottom, x);
}

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  // Counted by index: this is the innermost loop of every integral.
  for (let index = 0; index < coefficients.length; index++) sum = sum * x + (coefficients[index] ?? 0);
  return sum;
}
