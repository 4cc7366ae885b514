import { seedLimits } from "../../../../core/seed/seed-limits";
import { replantChance, replantGain } from "../../../../functions/seed/replant";
import { standYield } from "../../../../functions/seed/stand-yield";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../../model/entries";
import { replantTerms } from "../../../scenario/stand-example";
import { ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { exampleFor, found, readTable, stand } from "./stand-blocks";

const again = (key: string) => place(`again.${key}`);

/** Gain that is clear enough to tear up a stand for. */
const clearGainUsdPerAc = 25;

/** What planting again would take. */
export function againBlock(context: FarmContext): EntriesBlock {
  const start = exampleFor(context);
  return {
    kind: "entries",
    key: "again",
    title: "Planting again",
    entries: [
      typedEntry(
        {
          key: "date",
          label: "Could be planted on",
          format: formats.date,
          says: "A date; think of the soil drying too.",
        },
        start?.replantOn ?? null,
      ),
      typedEntry(
        { key: "stand", label: "Stand wanted then", unit: "plants/ac", format: formats.whole },
        start?.replantStandPerAc ?? null,
        within(seedLimits.stand, "Plants wanted from the second planting"),
      ),
      typedEntry(
        {
          key: "second",
          label: "Second stand yields",
          unit: "%",
          format: formats.whole,
          says: "Of the table's figure: it was written for first plantings.",
        },
        replantTerms.secondStandPct,
        within(seedLimits.survival, "Second stand yields"),
      ),
      typedEntry(
        {
          key: "chance",
          label: "Chance of a good stand",
          format: formats.chance,
          says: "Yours to judge: soil, weather, seed at hand.",
        },
        replantTerms.chance,
        within({ ...seedLimits.chance, unit: "such as 85%" }, "Chance of a good stand"),
      ),
      typedEntry(
        { key: "fail", label: "Yield if poor again", unit: "bu/ac", format: formats.one },
        replantTerms.failYieldBuPerAc,
        within(seedLimits.yield, "Yield if the second stand is poor too"),
      ),
      ...costLines(),
    ],
  };
}

function costLines(): Entry[] {
  const costs = ["kill", "plant", "seed", "spray"].map(again);
  const [first, ...others] = costs.map((each) => formula`N(${each})`);
  return [
    dollars(
      "kill",
      "Taking out the old stand",
      replantTerms.killUsdPerAc,
      "Its label says what may be used and planted after.",
    ),
    dollars("plant", "Planting", replantTerms.plantUsdPerAc, ""),
    dollars("seed", "Seed, after the dealer's help", replantTerms.seedUsdPerAc, ""),
    dollars("spray", "Added weed and pest control", replantTerms.sprayUsdPerAc, ""),
    dollars(
      "payment",
      "Replant payment",
      replantTerms.paymentUsdPerAc,
      "From the crop insurer, who sees the field first.",
    ),
    {
      ...dollars("drying", "Added drying of a bushel", replantTerms.addedDryingUsdPerBu, "The later crop is wetter."),
      unit: "$/bu",
    },
    computedEntry(
      { key: "cost", label: "Cost before the payment", unit: "$/ac", format: formats.cents },
      others.reduce((sum, each) => formula`${sum}+${each}`, first ?? formula`0`),
    ),
  ];
}

function dollars(key: string, label: string, start: number, says: string): Entry {
  return typedEntry(
    { key, label, unit: "$/ac", format: formats.cents, says },
    start,
    within({ ...seedLimits.costPerAc, unit: "dollars" }, label),
  );
}

const asked = {
  crop: stand("crop"),
  keepDate: stand("planted"),
  keepStand: found("mean"),
  replantDate: again("date"),
  replantStand: again("stand"),
  yield: stand("full"),
  price: ofCrop(stand("crop"), "price"),
  cost: again("cost"),
  guide: stand("guide"),
};
const refined = {
  failYield: again("fail"),
  secondStand: again("second"),
  unevenLoss: stand("uneven"),
  costPerBushel: ofCrop(stand("crop"), "costPerBushel"),
  addedDrying: again("drying"),
  payment: again("payment"),
  rowWidth: stand("rowWidth"),
};
const known = [stand("full"), again("stand")];

/** Keep or replant. */
export function decisionBlock(): EntriesBlock {
  return {
    kind: "entries",
    key: "decision",
    title: "Keep or replant",
    entries: [
      computedEntry(
        { key: "share", label: "New stand by the table", unit: "%", format: formats.one },
        readTable(
          whenNumbers(
            [again("stand")],
            call(standYield, {
              crop: stand("crop"),
              plantingDate: again("date"),
              stand: again("stand"),
              guide: stand("guide"),
              rowWidth: stand("rowWidth"),
            }),
          ),
        ),
      ),
      computedEntry(
        {
          key: "gain",
          label: "Replanting gains",
          unit: "$/ac",
          format: formats.cents,
          says: "Over keeping the stand, at the chance above.",
        },
        readTable(whenNumbers(known, call(replantGain, { ...asked, chance: again("chance"), ...refined }))),
      ),
      computedEntry(
        {
          key: "breakEven",
          label: "Breaks even at a chance of",
          format: formats.rate,
          says: "never: even a sure stand would lose.",
        },
        readTable(whenNumbers(known, call(replantChance, { ...asked, ...refined }))),
      ),
      wordsEntry({ key: "words", label: "In words" }, verdict()),
    ],
  };
}

function verdict() {
  const gain = place("decision.gain");
  const words = formula`IF(${gain}>=${clearGainUsdPerAc},"▲ replant",IF(${gain}>=0,"● a close call","▼ keep it"))`;
  return whenNumbers([gain], words);
}
