import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { hostWords } from "../../words";
import type { Notice } from "../kept/autosave";
import type { Grid } from "./start-grid";

/** Bytes at once: the grid lays out every cell of a paste, and more than this would take the page down. */
const most = { text: 2_000_000, html: 12_000_000 } as const;

/** Refuses pastes that the grid cannot take, by the keyboard and by its menu. */
export function refuseLargePastes({ univer }: Grid, notice: Notice): void {
  const refused = ({ text, html }: { text: number; html: number }): boolean => {
    if (text <= most.text && html <= most.html) return false;
    notice(hostWords.browser.pasteTooLarge, true);
    return true;
  };
  document.addEventListener(
    "paste",
    (event) => {
      const { clipboardData, target } = event;
      // A field of its own looks after itself.
      if (!clipboardData || target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
      const length = (type: string) => clipboardData.getData(type).length;
      if (!refused({ text: length("text/plain"), html: length("text/html") })) return;
      event.preventDefault();
      event.stopImmediatePropagation();
    },
    { capture: true },
  );
  const clipboard = univer.__getInjector().get(ISheetClipboardService);
  const paste = clipboard.paste.bind(clipboard);
  clipboard.paste = async (item, ...rest) => {
    const size = async (type: string) => (item.types.includes(type) ? (await item.getType(type)).size : 0);
    const sizes = { text: await size("text/plain"), html: await size("text/html") };
    return refused(sizes) ? false : paste(item, ...rest);
  };
}
