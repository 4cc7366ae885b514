/** Text made safe for a page. */
export function escape(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}

/** A whole page in the project's look. */
export function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'">
<title>${escape(title)} · Loamsheet</title>
<link rel="icon" href="../assets/favicon.svg">
<link rel="stylesheet" href="help.css">
</head>
<body>
<header><a href="index.html">Loamsheet</a> <a href="functions.html">Functions</a> <a href="sources.html">Sources</a></header>
<main>
${body}
</main>
</body>
</html>
`;
}

/** A table with a header row; cells may hold markup and must be escaped by the caller. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const headRow = head.map((cell) => `<th scope="col">${cell}</th>`).join("");
  const bodyRows = rows.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`).join("\n");
  return `<div class="scroll"><table><thead><tr>${headRow}</tr></thead><tbody>\n${bodyRows}\n</tbody></table></div>`;
}
