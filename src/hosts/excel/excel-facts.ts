import type { HostFacts } from "../port";
import { registeredFunctions } from "./register";
import { canOpenByItself } from "./startup";
import type { Supports } from "./supports";
import { canAttachNotes } from "./write-notes";

const places: Readonly<Record<string, string>> = {
  PC: "desktop on Windows",
  Mac: "desktop on Mac",
  OfficeOnline: "on the web",
  iOS: "on iPad",
};

/** What this Excel is, and what of ours it does not do. */
export function excelFacts(supports: Supports): HostFacts {
  const { platform, version } = Office.context.diagnostics ?? {};
  const where = platform === undefined ? [] : [places[platform] ?? String(platform)];
  return {
    program: [`Excel ${version ?? ""}`.trim(), ...where].join(", "),
    functions: registeredFunctions(),
    missing: [
      ...(canAttachNotes(supports) ? [] : ["Starters come without notes on cells: this Excel takes none."]),
      ...(supports("1.20") ? [] : ["What Loamsheet writes may take several steps of Undo to take back."]),
      ...(canOpenByItself() ? [] : ["Loamsheet cannot be set to load with a workbook here."]),
    ],
  };
}
