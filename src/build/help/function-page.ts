import { accepted } from "../../functions/frame/accepted";
import type { Argument } from "../../functions/frame/arguments";
import { isBlank, type CellIn } from "../../functions/frame/cell";
import { families, type Family, type WorksheetFunction } from "../../functions/frame/declaration";
import { exampleFormula, namespace, signature } from "../../functions/frame/formula-text";
import { sources, type SourceKey } from "../../reference/sources";
import { escape, page, table } from "./html";

/** The reference of every function on one page, one anchor per function. */
export function functionPage(functions: readonly WorksheetFunction[]): string {
  const groups = (Object.keys(families) as Family[])
    .map((family) => ({ family, members: functions.filter((fn) => fn.family === family) }))
    .filter(({ members }) => members.length > 0);
  const contents = groups
    .map(({ family, members }) => `<dt>${escape(families[family])}</dt><dd>${linksTo(members)}</dd>`)
    .join("\n");
  const sections = groups.map(
    ({ family, members }) => `<h2>${escape(families[family])}</h2>\n${members.map(functionSection).join("\n")}`,
  );
  return page(
    "Functions",
    `<h1>Functions</h1>
<p>Type <code>=${namespace}.</code> in a cell and pick one. Every argument that takes one value also takes a range: the
answers then fill the cells below or beside. Percentages are in percent points (15.5 means 15.5&nbsp;%); interest rates
follow the spreadsheet (8&nbsp;% is 8% or 0.08).</p>
<nav aria-label="Functions by family"><dl>${contents}</dl></nav>
${sections.join("\n")}`,
  );
}

function linksTo(functions: readonly WorksheetFunction[]): string {
  return functions.map(({ name }) => `<a href="#${name}">${name}</a>`).join(" ");
}

function functionSection(fn: WorksheetFunction): string {
  return `<section id="${fn.name}" aria-labelledby="${fn.name}-name">
<h3 id="${fn.name}-name">${fn.name}</h3>
<p>${escape(fn.summary)}</p>
<p class="call"><code>=${namespace}.${escape(signature(fn))}</code></p>
${table(["Argument", "What it is", "Accepts", "When left out"], Object.entries<Argument>(fn.args).map(argumentRow))}
<p><strong>Returns</strong> ${escape(fn.returns.says)}${fn.returns.unit ? `, in ${escape(fn.returns.unit)}` : ""}${
    fn.returns.shape === "table" ? "; fills several cells" : ""
  }.</p>
<p><strong>Example</strong> <code>${escape(exampleFormula(fn))}</code> gives ${answerOf(fn)} <span class="why">(${escape(fn.example.because)})</span></p>
${cautionsOf(fn)}
${sourcesOf(fn.sources)}
</section>`;
}

function argumentRow([name, argument]: [string, Argument]): string[] {
  const blank = argument.shape === "optional" ? escape(argument.whenBlankSays) : "needed";
  return [`<code>${escape(name)}</code>`, escape(argument.says), escape(accepted(argument)), blank];
}

function answerOf(fn: WorksheetFunction): string {
  const { gives } = fn.example;
  if (!Array.isArray(gives)) return `<b>${escape(String(gives))}</b> ${escape(fn.returns.unit)}`;
  const rows = (gives as readonly (readonly CellIn[])[]).map((row) =>
    row.map((cell) => (isBlank(cell) ? "" : escape(String(cell)))),
  );
  const [head = [], ...rest] = rows;
  return table(head, rest);
}

function cautionsOf(fn: WorksheetFunction): string {
  return (fn.cautions ?? []).map((caution) => `<p class="caution">${escape(caution)}</p>`).join("\n");
}

function sourcesOf(keys: readonly SourceKey[]): string {
  if (keys.length === 0) return `<p class="source">Plain arithmetic; no publication needed.</p>`;
  return `<p class="source">Source: ${keys.map((key) => `<a href="sources.html#${key}">${escape(sources[key].title)}</a>`).join("; ")}.</p>`;
}
