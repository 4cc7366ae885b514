import { extractantWords, guideWords } from "../../../functions/words";
import { guides, type Guide } from "../../../reference/guides";
import type { EntriesBlock } from "../../model/block";
import { oneOf } from "../../model/columns";
import { typedEntry } from "../../model/entries";
import { limeFor } from "../farm-plan/farm-context";
import { labelsOf } from "../word-lists";

/** A soil test of a field; null: not in the report. */
export interface ClientTest {
  readonly field: string;
  /** The day of the sample as the sheet counts days, or only its year. */
  readonly sampledOn: number | null;
  readonly soilPh: number | null;
  readonly bufferPh: number | null;
  readonly phosphorusPpm: number | null;
  readonly potassiumPpm: number | null;
  readonly cecMeq: number | null;
  readonly organicMatterPct: number | null;
}

/** The soil tests of a client and how they are read. */
export interface ClientSoil {
  readonly guide: string;
  readonly lime: { readonly method: string; readonly targetPh: number; readonly depthIn: number | null };
  readonly tests: readonly ClientTest[];
}

/** The tests with their guide; nothing where no field was tested. */
export function clientSoilOf(guide: string, tests: readonly ClientTest[]): ClientSoil | undefined {
  const isTested = ({ soilPh, bufferPh, phosphorusPpm, potassiumPpm }: ClientTest) =>
    [soilPh, bufferPh, phosphorusPpm, potassiumPpm].some((value) => value !== null);
  const known: Guide = guides[guideWords.find(guide) ?? "IN-MI-OH"];
  return tests.some(isTested) ? { guide: known.label, lime: limeFor(known.label), tests } : undefined;
}

export const soilNames = {
  guide: "client_guide",
  phosphorusMethod: "client_phosphorus_method",
  potassiumMethod: "client_potassium_method",
} as const;

/** Which published guide reads the tests; the laboratory's extraction where the guide takes several. */
export function soilGuideBlock({ guide }: ClientSoil): EntriesBlock {
  const extractions = oneOf(labelsOf(extractantWords), "Extraction the laboratory used.");
  const method = "Blank where the guide knows only one extraction.";
  return {
    kind: "entries",
    key: "soilGuide",
    title: "Soil tests are read by",
    entries: [
      typedEntry(
        { key: "guide", label: "Guide", name: soilNames.guide, says: "Region of the published guide." },
        guide,
        oneOf(labelsOf(guideWords), "Region of the guide, by postal codes."),
      ),
      typedEntry(
        { key: "phosphorus", label: "Phosphorus method", name: soilNames.phosphorusMethod, says: method },
        null,
        extractions,
      ),
      typedEntry(
        { key: "potassium", label: "Potassium method", name: soilNames.potassiumMethod, says: method },
        null,
        extractions,
      ),
    ],
  };
}
