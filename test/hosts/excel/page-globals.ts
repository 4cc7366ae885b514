import { JSDOM } from "jsdom";

/**
 * A page for the pane beside the page of the Office library, which brings its own. Imported before the pane, parts of
 * which look for a document as they are loaded.
 */
const { window } = new JSDOM("<!doctype html><body></body>", { url: "https://localhost/taskpane.html" });

const { document, Node, Element, HTMLElement, HTMLInputElement, HTMLSelectElement, HTMLTextAreaElement, Event } =
  window;

Object.assign(globalThis, {
  ...{ window, document, Node, Element, HTMLElement, Event },
  ...{ HTMLInputElement, HTMLSelectElement, HTMLTextAreaElement },
});
