import { element } from "../element";

/** What came of an order. */
export interface Said {
  readonly says: string;
  /** Whether it was done; a sentence that says why not looks like a refusal. */
  readonly done: boolean;
}

/** The line for what came of an order. It stands there empty before: only a part that was there is read aloud. */
export function outcomeLine(said: Said | string | undefined): HTMLElement {
  const { says, done } = typeof said === "object" ? said : { says: said ?? "", done: true };
  return element("p", { role: "status", class: done ? "outcome" : "outcome refusal" }, says);
}
