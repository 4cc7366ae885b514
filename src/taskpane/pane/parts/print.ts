/**
 * Prints one part of the pane by itself: a copy of it stands beside the page until the printer has it, and the style
 * sheet for print shows nothing else. On the screen the copy is never seen.
 */
export function printPart(id: string): void {
  const part = document.getElementById(id);
  if (!part) return;
  for (const left of document.querySelectorAll(".print-page")) left.remove();
  const copy = document.createElement("div");
  copy.className = "notebook print-page";
  copy.append(...[...part.childNodes].map((child) => child.cloneNode(true)));
  for (const one of copy.querySelectorAll("*")) nameApart(one);
  document.body.append(copy);
  document.body.classList.add("is-printing");
  const done = (): void => {
    copy.remove();
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
