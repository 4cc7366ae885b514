/** "1 cell", "3 cells". */
export function countInWords(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}
