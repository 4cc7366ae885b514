/** The words of a text: lower case, letters and digits. Joined names such as yieldGoal come apart. */
export function wordsIn(text: string): string[] {
  const apart = text.replace(/([a-z])([A-Z])/g, "$1 $2");
  return (
    apart
      .normalize("NFKD")
      .toLowerCase()
      .match(/[a-z0-9]+/g) ?? []
  );
}

/** A word without its ending, so that drying, dries and dried meet dry: short words stay as they are. */
export function stem(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  const singular = word
    .replace(/ie[sd]$/, "y")
    .replace(/(ss|x|ch|sh|z)es$/, "$1")
    .replace(/(?<![suio])s$/, "");
  const bare = /^(.*[aeiouy].*)(?<!e)(?:ing|ed)$/.exec(singular)?.[1];
  if (bare === undefined || bare.length < 3) return singular;
  return bare.replace(/([bdgmnprt])\1$/, "$1");
}
