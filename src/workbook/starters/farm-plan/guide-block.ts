import { approachWords, extractantWords, guideWords } from "../../../functions/words";
import type { EntriesBlock, Entry } from "../../model/block";
import { formats } from "../../model/cell";
import { oneOf } from "../../model/columns";
import { typedEntry } from "../../model/entries";
import { labelsOf } from "../labels-of";
import type { FarmContext } from "./farm-context";
import { farmNames, type FarmName } from "./names";

/** Which published guide works out phosphate and potash, and what some guides ask for besides. */
export function guideBlock(context: FarmContext): EntriesBlock {
  return {
    kind: "entries",
    key: "guide",
    title: "The guide",
    entries: [...regionLines(context), ...splitLines(context)],
  };
}

function regionLines({ guide, methods }: FarmContext): Entry[] {
  const says =
    "Region whose published guide works out phosphate and potash; the laboratory's numbers have to belong to it.";
  const regions = oneOf(labelsOf(guideWords), "Region of the guide, by postal codes.");
  const extractions = oneOf(labelsOf(extractantWords), "Extraction the laboratory used.");
  const method = "Blank where the guide knows only one; numbers from different extractions are not the same numbers.";
  return [
    line("guide", "Guide", says, guide, regions),
    line("phosphorusMethod", "Phosphorus method", method, methods.P2O5, extractions),
    line("potassiumMethod", "Potassium method", "The same for potassium.", methods.K2O, extractions),
  ];
}

function splitLines({ groups }: FarmContext): Entry[] {
  const reckonings = oneOf(labelsOf(approachWords), "build, sufficiency or removal; blank for the guide's own way.");
  return [
    line(
      "approach",
      "Reckoning",
      "Blank: the guide's own. With sufficiency the build-up is left out; with removal what the crop takes is put back.",
      null,
      reckonings,
    ),
    line(
      "soilGroup",
      "Soil group",
      "Only where the guide splits its numbers by soil or region; the cells that wait for it say so.",
      null,
      oneOf(groups, "Soil group or region, as the guide prints it."),
    ),
    {
      ...typedEntry(
        { key: "buildYears", label: "Build-up over", unit: "years", format: formats.whole, name: farmNames.buildYears },
        null,
        { kind: "between", min: 1, max: 20, whole: true, prompt: "Years over which the test is raised." },
      ),
      says: "Only where the guide leaves the choice.",
    },
  ];
}

function line(
  name: FarmName,
  label: string,
  says: string,
  start: string | null,
  allow: ReturnType<typeof oneOf>,
): Entry {
  return typedEntry({ key: name, label, says, name: farmNames[name] }, start, allow);
}
