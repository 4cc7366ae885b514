const points = 16;
const chebyshev = Array.from({ length: points }, (_, index) => Math.cos((Math.PI * index) / (points - 1)));

/**
 * A smooth function that is dear to work out, for when it is asked for many times: within pieces of one width it is
 * read off the polynomial through 16 Chebyshev points, each piece worked out when first needed. From `end` on it is
 * taken to stay level.
 */
export function inPieces(f: (x: number) => number, pieceWidth: number, end: number): (x: number) => number {
  const pieces: Float64Array[] = [];
  return (x) => {
    const piece = Math.floor(Math.min(x, end) / pieceWidth);
    const middle = (piece + 0.5) * pieceWidth;
    const known = (pieces[piece] ??= Float64Array.from(chebyshev, (at) => f(middle + (at * pieceWidth) / 2)));
    return barycentric(known, (2 * (Math.min(x, end) - middle)) / pieceWidth);
  };
}

/** Berrut and Trefethen (2004): weights 1, −1, 1, …, the first and the last halved. */
function barycentric(values: Float64Array, at: number): number {
  let above = 0;
  let below = 0;
  for (let index = 0; index < points; index++) {
    const apart = at - (chebyshev[index] ?? 0);
    const value = values[index] ?? 0;
    if (apart === 0) return value;
    const half = index === 0 || index === points - 1 ? 0.5 : 1;
    const weight = (index % 2 === 0 ? half : -half) / apart;
    above += weight * value;
    below += weight;
  }
  return above / below;
}
