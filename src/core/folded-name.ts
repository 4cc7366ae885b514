/** A name as people compare it: capitals and blanks around it do not count. */
export function foldedName(name: string): string {
  return name.trim().toLowerCase();
}
