/** Spreadsheets measure columns in digits of the default font: 7 pixels each, and 5 around them. */
export const digitPixels = 7;
const paddingPixels = 5;

export function columnPixels(characters: number): number {
  return characters * digitPixels + paddingPixels;
}

export function columnCharacters(pixels: number): number {
  return (pixels - paddingPixels) / digitPixels;
}

export function pixelsOf(points: number): number {
  return (points * 96) / 72;
}

export function pointsOf(pixels: number): number {
  return (pixels * 72) / 96;
}
