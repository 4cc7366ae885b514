/**
 * The grid counts what is scrolled away from the very first row or column on, whether that stays or not: this is the one
 * it has to begin with, and how far into it, so that those between the ones that stay and the wanted one are gone.
 */
export function firstShown(
  staying: number,
  wanted: number,
  sizeOf: (index: number) => number,
): { readonly index: number; readonly offset: number } {
  let offset = 0;
  for (let index = Math.max(staying, 0); index < wanted; index++) offset += sizeOf(index);
  let index = 0;
  while (offset >= sizeOf(index) && index < wanted) offset -= sizeOf(index++);
  return { index, offset };
}
