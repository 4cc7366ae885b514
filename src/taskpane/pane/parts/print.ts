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
  // Drawings point to their patterns by id, and an id stands once on a page.
  copy.innerHTML = part.innerHTML.replace(/(id="|url\(#|labelledby="|url\(&quot;#)([\w-]+)/g, "$1print-$2");
  document.body.append(copy);
  document.body.classList.add("is-printing");
  const done = (): void => {
    copy.remove();
    document.body.classList.remove("is-printing");
  };
  window.addEventListener("afterprint", done, { once: true });
  window.print();
}
