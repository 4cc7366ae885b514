import "./pane/pane.css";
import { excelHost } from "../hosts/excel/excel-host";
import { onRibbon } from "../hosts/excel/ribbon";
import { canOpenByItself, startup } from "../hosts/excel/startup";
import { mountPane, type PaneEnvironment } from "./pane";

/** The pane beside a workbook in Excel. The functions are a script of their own, loaded by the same page. */
async function start(): Promise<void> {
  if (typeof Office === "undefined") return explain("without-office");
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return explain("outside-excel");
  const pane = mountPane(part("pane"), excelHost(), environment());
  onRibbon(pane.open);
}

function environment(): PaneEnvironment {
  const { partitionKey } = Office.context;
  return {
    kind: "excel",
    workbookId: async () => Office.context.document.url ?? "",
    ...(canOpenByItself() && { startup }),
    storage: () => localStorage,
    // Excel on the web shows several organisations' panes from one storage.
    ...(partitionKey !== undefined && { storagePrefix: partitionKey }),
  };
}

/** Shows one of the sentences that the page has ready for when it cannot start. */
function explain(sentence: "without-office" | "outside-excel"): void {
  for (const id of ["cannot-start", sentence]) part(id).hidden = false;
}

function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no ${id}.`);
  return found;
}

void start();
