import { limeMethodWords } from "../../../../functions/words";
import { limeQuality } from "../../../../functions/soil/lime-material";
import { limits } from "../../../../core/limits";
import { finenessSystems, type FinenessSystem } from "../../../../reference/soil";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf, within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { farmExamples, limePassingPct } from "../../../scenario/farm-examples";
import { labelsOf } from "../../word-lists";
import type { FarmContext } from "../farm-context";
import { farmNames } from "../names";

/** What the pH should be, and what the lime at hand is worth. */
export function limeBlock({ lime }: FarmContext): EntriesBlock {
  return {
    kind: "entries",
    key: "lime",
    title: "Lime",
    entries: [...tableLines(lime), ...whenLines(lime), ...qualityLines(lime), ...priceLines()],
  };
}

function tableLines({ method, targetPh }: FarmContext["lime"]): Entry[] {
  return [
    typedEntry(
      {
        key: "method",
        label: "Lime table",
        name: farmNames.limeMethod,
        says: "The region whose buffer and table the laboratory uses.",
      },
      method,
      oneOf(labelsOf(limeMethodWords), "Region whose buffer pH the laboratory measured."),
    ),
    typedEntry(
      {
        key: "target",
        label: "pH to lime to",
        format: formats.ph,
        name: farmNames.targetPh,
        says: "Most tables are printed for a few targets only, such as 6.0, 6.5 and 6.8.",
      },
      targetPh,
      within(limits.targetPh, "pH wanted"),
    ),
  ];
}

function whenLines({ depthIn }: FarmContext["lime"]): Entry[] {
  return [
    typedEntry(
      {
        key: "trigger",
        label: "Lime when this far below",
        unit: "pH",
        format: formats.ph,
        name: farmNames.limeTrigger,
        says: "Closer than this, lime can wait for the next test (Extension Bulletin E-2567: 0.2 to 0.3).",
      },
      farmExamples.limeTriggerPh,
      { kind: "between", min: 0, max: 2, prompt: "pH units below the wanted pH." },
    ),
    typedEntry(
      {
        key: "depth",
        label: "Depth to lime",
        unit: "in",
        format: formats.one,
        name: farmNames.limeDepth,
        says: "Blank: the depth the table is printed for. About 4 where nothing is tilled.",
      },
      depthIn,
      within(limits.depth, "Depth of soil to lime"),
    ),
  ];
}

function qualityLines({ system, sieves, countsMoisture }: FarmContext["lime"]): Entry[] {
  const last = sieves.length;
  return [
    percentLine("cce", "Calcium carbonate equivalent", farmExamples.limeCcePct, "From the supplier's analysis."),
    ...sieves.map((mesh, index) =>
      percentLine(`passes${index + 1}`, `Passes the ${mesh}-mesh sieve`, limePassingPct[mesh] ?? null, ""),
    ),
    percentLine("moisture", "Moisture", farmExamples.limeMoisturePct, ""),
    typedEntry(
      { key: "system", label: "Measure", says: "The state measure of effective lime with these sieves." },
      system,
      oneOf(measuresLike(system), "State measure that uses these sieves."),
    ),
    computedEntry(
      {
        key: "quality",
        label: "Counts as fully effective",
        unit: "%",
        format: formats.one,
        name: farmNames.limeQuality,
      },
      call(limeQuality, {
        cce: place("lime.cce"),
        finenessShares: formula`${place("lime.passes1")}:${place(`lime.passes${last}`)}`,
        system: place("lime.system"),
        ...(countsMoisture && { moisture: place("lime.moisture") }),
        report: "passing",
      }),
    ),
  ];
}

function priceLines(): Entry[] {
  return [
    typedEntry(
      {
        key: "price",
        label: "Price, delivered and spread",
        unit: "$/ton",
        format: formats.cents,
        name: farmNames.limePrice,
      },
      farmExamples.limePriceUsdPerTon,
      within(limits.price, "A ton delivered and spread"),
    ),
    typedEntry(
      {
        key: "years",
        label: "Lasts",
        unit: "years",
        format: formats.whole,
        name: farmNames.limeYears,
        says: "Budgets carry lime over these years.",
      },
      farmExamples.limeLastsYears,
      { kind: "between", min: 1, max: 20, whole: true, prompt: "Years a liming lasts; 3 to 8 is usual." },
    ),
  ];
}

function percentLine(key: string, label: string, start: number | null, says: string): Entry {
  return typedEntry({ key, label, unit: "%", format: formats.one, says }, start, {
    kind: "between",
    min: 0,
    max: 150,
    prompt: `${label}, percent.`,
  });
}

/** Measures that can stand in for each other on this sheet: the same sieves, moisture counted the same way. */
function measuresLike(label: string): string[] {
  const all = Object.values<FinenessSystem>(finenessSystems);
  const own = all.find((system) => system.label === label);
  return all
    .filter(
      ({ sieves, countsMoisture }) => String(sieves) === String(own?.sieves) && countsMoisture === own?.countsMoisture,
    )
    .map((system) => system.label);
}
