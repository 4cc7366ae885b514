import { element } from "../element";

/** Prints a copy of one part of the pane, found by its id. */
export function printPart(id: string): void {
  const part = document.getElementById(id);
  if (!part) return;
  const copy = element("div", { class: "notebook" }, ...[...part.childNodes].map((child) => child.cloneNode(true)));
  for (const one of copy.querySelectorAll("*")) nameApart(one);
  printAlone(copy);
}

/**
 * Prints a page by itself: it stands beside the one on the screen until the printer has it, and the style sheet for
 * print shows nothing else. On the screen it is never seen.
 */
export function printAlone(page: HTMLElement): void {
  for (const left of document.querySelectorAll(".print-page")) left.remove();
  page.classList.add("print-page");
  document.body.append(page);
  document.body.classList.add("is-printing");
  const done = (): void => {
    page.remove();
    document.body.classList.remove("is-printing");
  };
  window.addEventListener("afterprint", done, { once: true });
  window.print();
}

/** Drawings point to their patterns by id, and an id stands once on a page. */
function nameApart(part: Element): void {
  for (const { name, value } of [...part.attributes]) {
    if (name === "id") part.setAttribute(name, `print-${value}`);
    else if (name === "aria-labelledby") part.setAttribute(name, value.replace(/\S+/g, "print-$&"));
    else if (value.includes("url(")) part.setAttribute(name, value.replace(/(url\("?#)/g, "$1print-"));
  }
}
