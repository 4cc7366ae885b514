import type { Action } from "../action";
import { element, type Attributes, type Child } from "../element";
import type { PaneState } from "../state";

type ButtonLook = "main" | "plain" | "quiet" | "row";

interface ButtonOptions {
  readonly look?: ButtonLook;
  /** What the action receives. */
  readonly value?: string;
  /** In place of the action's label. */
  readonly says?: Child;
  readonly type?: "button" | "submit";
  readonly attributes?: Attributes;
}

/**
 * The button of an action. One that is not allowed now stays where it is and can be reached, so that the focus is
 * not lost while something is under way.
 */
export function button(action: Action, state: PaneState, options: ButtonOptions = {}): HTMLButtonElement {
  const { look = "plain", value, says = action.label, type = "button", attributes = {} } = options;
  return element(
    "button",
    {
      type,
      class: `button button-${look}`,
      "data-action": action.name,
      "data-value": value,
      "aria-disabled": action.allowed?.(state) === false ? "true" : undefined,
      ...attributes,
    },
    says,
  );
}
