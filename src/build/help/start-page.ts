import { escape, page } from "./html";

const troubles: readonly (readonly [string, string])[] = [
  [
    "A cell shows #NAME?",
    "Open the Loamsheet pane once, then press Enter in the cell again. Loamsheet has to be loaded before its functions are known.",
  ],
  [
    "A cell shows #N/A",
    "It waits for a cell that is still empty, or the guide publishes nothing for that case. Select the cell and choose Show the working in the pane.",
  ],
  [
    "A cell shows #VALUE!",
    "One of its inputs does not fit. Hover over the cell's warning sign, or choose Show the working: the sentence names the input, what came in and what fits.",
  ],
  ["A cell shows #BUSY!", "Excel is still loading the functions. If it stays, close and reopen the workbook."],
  [
    "A cell shows #SPILL!",
    "The answer needs several cells and one of them is filled. Clear the cells below or beside.",
  ],
];

const installs: readonly (readonly [string, string])[] = [
  [
    "Excel on the web",
    "Home → Add-ins → More Settings → Upload My Add-in, then pick manifest.xml. It holds for this browser.",
  ],
  [
    "Excel on Windows",
    "Put manifest.xml in a shared folder. File → Options → Trust Center → Trust Center Settings → Trusted Add-in Catalogs: add the folder, tick Show in Menu, restart Excel. Then Home → Add-ins → Advanced → Shared Folder.",
  ],
  [
    "Excel on a Mac",
    "Copy manifest.xml into the wef folder of Excel's container (Library/Containers/com.microsoft.Excel/Data/Documents/wef in your home), then restart Excel.",
  ],
  ["A whole organisation", "An administrator deploys manifest.xml in the admin centre under Integrated apps."],
];

/** First page of the help: how to begin, how to install, what to do when a cell does not answer. */
export function startPage(): string {
  return page(
    "Help",
    `<h1>Loamsheet help</h1>
<p>Loamsheet puts agronomy functions into the workbook you plan in, and can write you a starter workbook for a farm, a
client or one quick question. Your figures stay on your machine.</p>
<h2>Begin</h2>
<ol>
<li>Open the pane and choose <strong>Start a workbook</strong>.</li>
<li>Fill the cream-coloured cells. Everything else is computed and follows your changes.</li>
<li>Select any computed cell and choose <strong>Show the working</strong> to see the steps and the source.</li>
</ol>
<h2>Install in Excel</h2>
${definitions(installs)}
<p>Excel 2019 and older cannot run add-in functions; on an iPad the pane works and the functions do not.</p>
<h2>When a cell does not answer</h2>
${definitions(troubles)}
<h2>What these numbers are, and are not</h2>
<p class="caution">They are planning estimates from published guides. The product label, local nutrient and drainage rules and licensed
practice come first: pesticides, anhydrous ammonia, treated seed, machinery and trenching can hurt people and break
rules. Where a guide says less than you need, ask your local extension office or a certified crop adviser.</p>`,
  );
}

function definitions(items: readonly (readonly [string, string])[]): string {
  return `<dl>${items.map(([term, text]) => `<dt>${escape(term)}</dt><dd>${escape(text)}</dd>`).join("\n")}</dl>`;
}
