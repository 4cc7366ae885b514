import { words } from "../words";
import type { Action, Desk } from "./action";

/** No field needs more at once; far more would stop the pane. */
const mostLettersAtOnce = 200_000;

/**
 * Listens at the root for all controls. Markup says which action a control stands for:
 * data-action (a click, or typing in a field), data-leave (leaving a field; the action receives its id), data-escape
 * (Escape pressed inside). The action receives what stands in data-value.
 */
export function dispatchEvents(root: HTMLElement, desk: Desk, actions: readonly Action[]): void {
  const byName = new Map(actions.map((action) => [action.name, action]));
  const run = (name: string | undefined, value: string, file?: File): void => {
    const action = name === undefined ? undefined : byName.get(name);
    if (action) perform(desk, action, value, file);
  };

  root.addEventListener("submit", (event) => event.preventDefault());
  root.addEventListener("click", (event) => {
    const control = closest(event, "button[data-action], a[data-action]");
    if (!control) return;
    event.preventDefault();
    run(control.dataset.action, control.dataset.value ?? "");
  });
  root.addEventListener("input", (event) => {
    if (isField(event.target)) run(event.target.dataset.action, valueOf(event.target), fileIn(event.target));
  });
  root.addEventListener("beforeinput", (event) => {
    if ((event.data?.length ?? 0) <= mostLettersAtOnce) return;
    event.preventDefault();
    desk.change((state) => ({ ...state, trouble: words.pane.tooLong }), "trouble");
  });
  root.addEventListener("focusout", (event) => {
    if (isField(event.target)) run(event.target.dataset.leave, event.target.id);
  });
  root.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    const inside = closest(event, "[data-escape]");
    run(inside?.dataset.escape, inside?.dataset.value ?? "");
  });
}

/** Performs an allowed action; whatever no action foresaw is told at the top of the pane. */
export function perform(desk: Desk, action: Action, value: string, file?: File): void {
  if (action.allowed?.(desk.state()) === false) return;
  const unforeseen = (thrown: unknown): void => {
    const detail = thrown instanceof Error ? thrown.message : String(thrown);
    desk.change((state) => ({ ...state, trouble: words.pane.unforeseen(detail) }), "trouble");
  };
  try {
    Promise.resolve(action.perform(desk, value, file)).catch(unforeseen);
  } catch (thrown) {
    unforeseen(thrown);
  }
}

function closest(event: Event, selector: string): HTMLElement | undefined {
  return event.target instanceof Element ? (event.target.closest<HTMLElement>(selector) ?? undefined) : undefined;
}

type Field = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

function isField(target: EventTarget | null): target is Field {
  return (
    target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement
  );
}

/** The file chosen; the field forgets it, so that the same file can be chosen again. */
function fileIn(field: Field): File | undefined {
  const file = field instanceof HTMLInputElement ? field.files?.[0] : undefined;
  if (file) field.value = "";
  return file;
}

/** What the field stands for: several fields may share an action and say in data-value which of them they are. */
function valueOf(field: Field): string {
  const which = field.dataset.value === undefined ? "" : `${field.dataset.value}:`;
  if (field instanceof HTMLInputElement && field.type === "checkbox") return `${which}${field.checked ? "yes" : ""}`;
  return which + field.value;
}
