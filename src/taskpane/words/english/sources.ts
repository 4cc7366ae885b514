/** Sources. */
export const sources = {
  title: "Sources",
  lead: "The publications behind the functions.",
  marked: (sentence: string) =>
    `A number held from memory of its bulletin carries the words “${sentence}” wherever it is used.`,
  regional:
    "Recommendations are regional. A guide, its soil test method and its sampling depth belong together; do not mix them.",
  usedBy: "Used by",
};
