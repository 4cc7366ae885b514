const most = 5;

/** The strips without a yield, and what is made of that: "b in block 3; means are as if …". */
export function missingInWords(strips: readonly string[]): string {
  const more = strips.length > most ? ` and ${strips.length - most} more` : "";
  return `${strips.slice(0, most).join(", ")}${more}; means are as if every treatment stood in every block`;
}
