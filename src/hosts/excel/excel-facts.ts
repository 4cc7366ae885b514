import type { HostFacts } from "../port";
import { registeredFunctions } from "./register";
import { canOpenByItself } from "./startup";
import type { Supports } from "./supports";
import { canAttachNotes } from "./fill/write-notes";
import { hostWords } from "../words";

const say = hostWords.excel;

/** What this Excel is, and what of ours it does not do. */
export function excelFacts(supports: Supports): HostFacts {
  const { platform, version } = Office.context.diagnostics ?? {};
  const where = platform === undefined ? [] : [say.places[platform] ?? String(platform)];
  return {
    program: [`Excel ${version ?? ""}`.trim(), ...where].join(", "),
    functions: registeredFunctions(),
    missing: [
      ...(canAttachNotes(supports) ? [] : [say.noNotes]),
      ...(supports("1.20") ? [] : [say.manyUndoSteps]),
      ...(canOpenByItself() ? [] : [say.doesNotLoad]),
    ],
  };
}
