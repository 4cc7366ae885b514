import { limits } from "../../core/limits";
import { limeQuality as limeQualityOf, sizeNames } from "../../core/soil/lime/lime-quality";
import { limeRate as limeRateOf } from "../../core/soil/lime/lime-rate";
import { limeSplit } from "../../reference/soil";
import { choice, line, listWithGaps, optional, percent, quantity, worksheetFunction } from "../frame";
import { finenessSystemWords, sieveReportWords } from "../words";
import { checkLines } from "../check-lines";

export const limeQuality = worksheetFunction({
  name: "LIMEQUALITY",
  family: "soil",
  summary: "Effective neutralizing value of a lime, from its purity and its fineness.",
  asks: ["how good is this lime", "effective calcium carbonate", "compare two limes", "ENP or ECCE of a lime"],
  args: {
    cce: percent(limits.neutralizingValue, { says: "calcium carbonate equivalent of the lime" }),
    finenessShares: listWithGaps(percent(limits.share, { says: "share", smallIsUsual: true }), {
      says: "share of each size, coarse to fine, by the sieves of the system",
    }),
    system: choice(finenessSystemWords, { says: "state measure: which sieves, and how much of each size reacts" }),
    moisture: optional(
      percent(limits.moisture, { says: "moisture of the lime, for measures that count it (ENP, ECCE)" }),
      null,
      "dry",
    ),
    report: optional(
      choice(sieveReportWords, { says: "whether the list holds shares in each size or what passes each sieve" }),
      "shares",
      "shares in each size",
    ),
  },
  returns: { shape: "one", unit: "%", says: "share of the lime that counts as fully effective" },
  sources: [
    "mda-lime",
    "oaima-enp",
    "uw-a2809",
    "cornell-cca-po41",
    "ksu-mf2586",
    "isu-ecce-laboski",
    "mu-ag-lime",
    "msstate-p3762",
    "omafra-811",
    "uiuc-handbook-8",
  ],
  cautions: ["Compare limes by their price per effective pound, delivered and spread."],
  example: {
    call: [90, [[5, 15, 30, 50]], "OH ENP"],
    gives: 63.9,
    because: "by hand: fineness 0×5 + 0.2×15 + 0.6×30 + 1.0×50 = 71 %; 90 % × 71 %",
  },
  compute: ({ cce, finenessShares, system, moisture, report }) =>
    limeQualityOf({ ccePct: cce, sievesPct: finenessShares, system, moisturePct: moisture, report }),
  value: (result) => result.effectivePct,
  working: ({ system, classesPct, finenessPct, moisturePct, ownFigure, effectivePct }) => [
    ...sizeNames(system.sieves).map((size, place) =>
      line(`${size}, ${(system.efficiency[place] ?? 0) * 100} % of it reacts`, classesPct[place] ?? 0, "%"),
    ),
    line("Fineness", finenessPct, "%"),
    ...(system.countsMoisture ? [line("Moisture taken off", moisturePct, "%")] : []),
    line(`In the state's own measure, ${system.label}`, ownFigure, system.ownUnit),
    line("Effective share", effectivePct, "%"),
    ...checkLines([system]),
  ],
  cites: ({ system }) => [system],
});

export const limeRate = worksheetFunction({
  name: "LIMERATE",
  family: "soil",
  summary: "Tons of the lime at hand that carry a need of fully effective lime.",
  asks: ["how much of my lime to spread", "tons of ag lime from the need", "is pelletized lime enough"],
  args: {
    need: quantity(limits.limeTons, { says: "fully effective lime needed, from LIMENEED" }),
    quality: percent(limits.limeQuality, { says: "effective share of the lime, from LIMEQUALITY" }),
    moisture: optional(
      percent(limits.moisture, { says: "moisture of the lime, when its quality figure does not count it" }),
      0,
      "dry, or counted already (ENP, ECCE)",
    ),
  },
  returns: { shape: "one", unit: "ton/ac", says: "tons of lime as delivered per acre" },
  sources: ["msu-e2567-1995", "mu-lime-surface"],
  cautions: [
    "Lime that is not worked in: no more than 2 ton/ac at once, repeated after two to three years.",
    "Follow the lime's label and local rules.",
  ],
  example: { call: [2, 80, 5], gives: 2.632, because: "by hand: 2 / 0.80 = 2.5; 2.5 / 0.95" },
  compute: ({ need, quality, moisture }) =>
    limeRateOf({ needTonPerAc: need, qualityPct: quality, moisturePct: moisture }),
  value: (result) => result.productTonPerAc,
  working: (result) => [
    line("Dry lime", result.dryTonPerAc, "ton/ac"),
    line("As delivered", result.productTonPerAc, "ton/ac"),
    ...(result.isAboveSurfaceCap
      ? [line("If it is not worked in, spread at once no more than", limeSplit.surfaceTon, "ton/ac")]
      : []),
    ...(result.isAboveTilledCap
      ? [line("With tillage, split it: half before, half after, above", limeSplit.tilledTon, "ton/ac")]
      : []),
  ],
  cites: () => [limeSplit],
});
