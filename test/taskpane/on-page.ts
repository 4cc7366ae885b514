import type { PreferenceStorage } from "../../src/taskpane/pane";

/** What a person does on the page of the test. Each step fails at once where the page does not have what it needs. */

export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`There is no ${id} on the page.`);
  return found;
}

/** A button by what it says, or by what it is read out as. */
export function button(label: string): HTMLButtonElement {
  const all = [...document.querySelectorAll("button")];
  const found =
    all.find(({ textContent }) => textContent === label) ?? all.find((one) => one.getAttribute("aria-label") === label);
  if (!found) throw new Error(`There is no button "${label}".`);
  return found;
}

export function press(label: string): void {
  button(label).click();
}

export function field(id: string): HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement {
  const found = byId(id);
  if (found instanceof HTMLInputElement || found instanceof HTMLTextAreaElement || found instanceof HTMLSelectElement) {
    return found;
  }
  throw new Error(`${id} is not a field.`);
}

export function type(id: string, text: string): void {
  field(id).value = text;
  field(id).dispatchEvent(new Event("input", { bubbles: true }));
}

export function input(id: string): HTMLInputElement {
  const found = byId(id);
  if (!(found instanceof HTMLInputElement)) throw new Error(`${id} is not a field.`);
  return found;
}

/** A storage of the browser that keeps what it is given in a map of the test's own. */
export function storageIn(kept: Map<string, string>): PreferenceStorage {
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}
