import { coverLimits } from "../../core/cover/cover-limits";
import { residueCover as residueCoverOf } from "../../core/cover/residue-cover";
import { residuePounds as residuePoundsOf } from "../../core/cover/residue-pounds";
import { tilledShare as tilledShareOf } from "../../core/cover/tilled-share";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { cropWords } from "../words";
import { residuePurposeWords } from "./cover-words";

export const residuePounds = worksheetFunction({
  name: "RESIDUEPOUNDS",
  family: "cover",
  summary: "Residue that a crop leaves on the field at a yield.",
  asks: ["how much residue does corn leave", "pounds of stover per bushel", "straw to bale"],
  args: {
    crop: choice(cropWords, { says: "crop that was harvested" }),
    yield: quantity(coverLimits.yield, { says: "yield" }),
    purpose: optional(
      choice(residuePurposeWords, { says: "cover for all residue, baling for what can be harvested" }),
      "cover",
      "cover",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "residue" },
  sources: ["usda-ah703-1997", "unl-g1846", "illinois-straw"],
  example: { call: ["corn", 200], gives: 11_200, because: "by hand: 200 × 56" },
  compute: (values) => residuePoundsOf(values.crop, values.yield, values.purpose),
  value: (result) => result.residueLbPerAc,
  working: (result) => [
    line("Residue for each bushel", result.poundsPerBushel, "lb"),
    line("Residue", result.residueLbPerAc, "lb/ac"),
    line("Counted", result.basis),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const residueCover = worksheetFunction({
  name: "RESIDUECOVER",
  family: "cover",
  summary: "Ground that a weight of residue covers.",
  asks: ["how much ground does residue cover", "how much stover may I bale", "pounds of residue to percent cover"],
  args: {
    crop: choice(cropWords, { says: "crop the residue comes from" }),
    residue: quantity(coverLimits.residue, { says: "residue lying flat on the ground" }),
  },
  returns: { shape: "one", unit: "%", says: "ground covered" },
  sources: ["usda-ah703-1997"],
  example: {
    call: ["corn", 950],
    gives: 30.302,
    because: "by hand: 100 (1 − e^(−0.00038 × 950)) = 100 (1 − e^−0.361)",
  },
  compute: (values) => residueCoverOf(values.crop, values.residue),
  value: (result) => result.coverPct,
  working: (result) => [
    line("Ground a pound covers, before overlap", result.published.coverAcPerLb, "ac/lb"),
    line("Ground covered", result.coverPct, "%"),
    line("Residue that covers 30 %", result.poundsForThirtyPct, "lb/ac"),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const tilledShare = worksheetFunction({
  name: "TILLEDSHARE",
  family: "cover",
  summary: "Share of the surface that strip tillage or openers disturb.",
  asks: ["how much of the field does strip till disturb", "is my strip narrow enough"],
  args: {
    bandWidth: quantity(coverLimits.bandWidth, { says: "width of the tilled band" }),
    rowWidth: quantity(coverLimits.rowWidth, { says: "distance from row to row" }),
  },
  returns: { shape: "one", unit: "%", says: "surface disturbed" },
  sources: ["strip-geometry"],
  example: { call: [8, 30], gives: 26.667, because: "by hand: 8 / 30" },
  compute: (values) => tilledShareOf({ bandWidthIn: values.bandWidth, rowWidthIn: values.rowWidth }),
  value: (result) => result.tilledPct,
  working: (result) => [
    line("Disturbed", result.tilledPct, "%"),
    line("Left alone: cover kept when the band is bare", result.untilledPct, "%"),
    line("Mind", "conservation agencies accept about a third or less; ask the local office"),
  ],
});
