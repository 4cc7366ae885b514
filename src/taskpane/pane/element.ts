/** What may stand inside an element; false and undefined leave no trace, so that conditions read in place. */
export type Child = Node | string | false | undefined | readonly Child[];

/** true writes the bare attribute; false and undefined write none. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** One HTML element with its attributes and children. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  writeAttributes(made, attributes);
  append(made, children);
  return made;
}

/** One SVG element; drawings carry no text, so children are elements only. */
export function drawing<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
  ...children: readonly SVGElement[]
): SVGElementTagNameMap[Tag] {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  writeAttributes(made, attributes);
  made.append(...children);
  return made;
}

function writeAttributes(made: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    made.setAttribute(name, value === true ? "" : String(value));
  }
}

function append(made: Element, children: readonly Child[]): void {
  for (const child of children) {
    if (child === false || child === undefined) continue;
    if (typeof child === "string" || child instanceof Node) made.append(child);
    else append(made, child);
  }
}
