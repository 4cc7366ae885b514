import type { ParagraphsBlock } from "../model/block";
import { wordsOf } from "../names/words-of";
import { brokenLines } from "./broken-lines";
import { fragment, heading, type Fragment, type Ground } from "./fragment";

/** Letters are narrower than the digits that column widths are counted in. */
const lettersPerDigit = 1.08;

/** Paragraphs as lines of the sheet's width, one a row. */
export function layParagraphs(block: ParagraphsBlock, { top, width, names }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const lines = block.paragraphs.flatMap((paragraph) =>
    brokenLines(wordsOf(paragraph, names), Math.floor(width * lettersPerDigit)),
  );
  return fragment({
    cells: [
      ...head,
      ...lines.map((content, index) => ({ row: start + index, column: 0, content, style: block.style }) as const),
    ],
    end: start + lines.length,
  });
}
