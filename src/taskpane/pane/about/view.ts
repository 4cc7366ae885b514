import packageFile from "../../../../package.json";
import { words } from "../../words";
import { element } from "../element";
import type { PaneEnvironment } from "../environment";
import { button } from "../parts/button";
import { caution, section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { forget } from "./actions";

const say = words.about;

/** About: what this is, where the figures stay, what to mind, licence and version. */
export function aboutView(state: PaneState, { kind }: PaneEnvironment): HTMLElement {
  return element(
    "div",
    { class: "view" },
    viewHeading("about", say.title),
    say.what.map((text) => element("p", {}, text)),
    section(
      "about-data",
      say.dataHead,
      element("p", {}, say.data[kind]),
      element("p", {}, say.kept),
      forgetButton(state),
    ),
    section("about-mind", say.mindHead, element("p", {}, say.estimates), say.cautions.map(caution)),
    section(
      "about-licence",
      say.licenceHead,
      element("p", {}, say.licence),
      element("p", {}, say.version(packageFile.version)),
    ),
  );
}

function forgetButton(state: PaneState): readonly HTMLElement[] {
  return [
    button(forget, state),
    element("p", { role: "status", class: "outcome" }, state.forgotten ? say.forgotten : ""),
  ];
}
