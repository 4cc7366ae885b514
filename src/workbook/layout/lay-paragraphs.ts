import type { ParagraphsBlock } from "../model/block";
import { wordsOf } from "../names/words-of";
import { fragment, heading, type Fragment, type Ground } from "./fragment";

/** Letters are narrower than the digits that column widths are counted in. */
const lettersPerDigit = 1.08;

/** Paragraphs as lines of the sheet's width, one a row. */
export function layParagraphs(block: ParagraphsBlock, { top, width, names }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const lines = block.paragraphs.flatMap((paragraph) =>
    broken(wordsOf(paragraph, names), Math.floor(width * lettersPerDigit)),
  );
  return fragment({
    cells: [
      ...head,
      ...lines.map((content, index) => ({ row: start + index, column: 0, content, style: block.style }) as const),
    ],
    end: start + lines.length,
  });
}

/** Breaks a text between words into lines of at most this many characters. */
function broken(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
