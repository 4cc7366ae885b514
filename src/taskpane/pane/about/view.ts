import packageFile from "../../../../package.json";
import { words } from "../../words";
import { element, type Child } from "../element";
import type { PaneEnvironment } from "../environment";
import { button } from "../parts/button";
import { tickBox } from "../parts/choices";
import { outcomeLine } from "../parts/outcome";
import { caution, section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { checkSelf, forget, setLoading } from "./actions";
import type { SelfCheck } from "./self-check";

const say = words.about;

/** About: what this is, where the figures stay, what to mind, licence and version. */
export function aboutView(state: PaneState, { kind, startup }: PaneEnvironment): HTMLElement {
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
    startup !== undefined && section("about-loading", say.loadingHead, loadingSwitch(state)),
    section(
      "about-check",
      say.checkHead,
      button(checkSelf, state),
      element("div", { role: "status" }, checked(state.about.selfCheck)),
    ),
    state.about.refused !== undefined && element("p", { class: "refusal", role: "alert" }, state.about.refused),
    section("about-mind", say.mindHead, element("p", {}, say.estimates), say.cautions.map(caution)),
    section(
      "about-licence",
      say.licenceHead,
      element("p", {}, say.licence),
      element("p", {}, element("a", { href: "licenses.txt", target: "_blank", rel: "noopener" }, say.licences)),
      element("p", {}, say.version(packageFile.version)),
    ),
  );
}

function loadingSwitch({ about }: PaneState): HTMLElement {
  return tickBox({
    id: "about-loads",
    label: say.loads,
    hint: say.loadsHint,
    ticked: about.loads === true,
    action: setLoading.name,
  });
}

function checked(found: SelfCheck | undefined): Child {
  if (!found) return undefined;
  const { facts, declared, absent, families, wrong } = found;
  return element(
    "ul",
    { class: "about-found" },
    [
      say.program(facts.program, packageFile.version),
      say.registered(declared - absent.length, declared),
      absent.length > 0 && say.absent(absent),
      say.examples(families - wrong.length, families),
      wrong.length > 0 && say.wrong(wrong),
      ...(facts.missing.length > 0 ? facts.missing : [say.nothingMissing]),
    ].map((sentence) => sentence !== false && element("li", {}, sentence)),
  );
}

function forgetButton(state: PaneState): readonly HTMLElement[] {
  return [button(forget, state), outcomeLine(state.forgotten ? say.forgotten : undefined)];
}
