import { needed, refuse, refuseArgument, waitFor } from "../fault";
import {
  iowaKept,
  iowaNitrogen,
  iowaPhosphate,
  iowaPotash,
  manureGuides,
  manures,
  minnesotaSwine,
  newYorkRelease,
  type Ends,
  type Manure,
  type ManureGuideKey,
  type ManureKey,
  type ManureNutrientKey,
  type ManurePlacementKey,
} from "../../reference/manure";
import type { Cited } from "../../reference/table";

export interface ManureCreditInput {
  readonly manure: ManureKey;
  readonly nutrient: ManureNutrientKey;
  /** 1,000 gal/ac of a liquid, ton/ac of a solid. */
  readonly ratePerAc: number;
  readonly placement: ManurePlacementKey | null;
  /** Growing seasons between the spreading and this one: 0, 1 or 2. */
  readonly yearsSince: number;
  readonly guide: ManureGuideKey;
  /** Laboratory analysis, lb per 1,000 gal or ton; null: typical contents. */
  readonly contentLb: number | null;
  readonly ammoniumLb: number | null;
  /** Share of the ammonium lost to the air, %. */
  readonly ammoniumLossPct: number | null;
  readonly dryMatterPct: number | null;
}

export interface ManureCredit {
  readonly creditLbPerAc: number;
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  /** Spread with the manure, lb/ac. */
  readonly suppliedLbPerAc: number;
  readonly contentLb: number;
  readonly isTypical: boolean;
  readonly unit: "1,000 gal" | "ton";
  /** Share of what was spread, or of its organic part, counted this season, %: ends. */
  readonly availablePct: Ends;
  /** Factor for loss to the air, %; null where the guide has none for this season. */
  readonly keptPct: Ends | null;
  /** Ammonium and organic nitrogen counted, lb/ac; null where the guide works on total nitrogen. */
  readonly split: { readonly ammonium: number; readonly organic: number } | null;
  readonly cited: readonly Cited[];
}

/**
 * Nutrient of spread manure that a crop can use, lb/ac; the middle of printed ranges.
 *
 *   total N × available share of the season × share kept from the air (first season only), or
 *   ammonium N × (1 − loss) + organic N × share set free in the season
 *
 * Phosphate and potash are credited in the year of spreading; later the soil test shows them.
 */
export function manureCredit(input: ManureCreditInput): ManureCredit {
  if (![0, 1, 2].includes(input.yearsSince)) {
    refuseArgument("yearsSince", `must be 0, 1 or 2; got ${input.yearsSince}.`);
  }
  const manure: Manure = manures[input.manure];
  const contentLb = input.contentLb ?? needed("content", manure[input.nutrient]);
  const isTypical = input.contentLb === null;
  const base = {
    suppliedLbPerAc: contentLb * input.ratePerAc,
    contentLb,
    isTypical,
    unit: manure.form === "solid" ? "ton" : "1,000 gal",
  } as const;
  const own = isTypical ? citedOf(manure) : [];
  if (input.nutrient !== "N") return withCited(mineral(base, manure, input), own);
  if (input.guide === "NY") return withCited(newYork(base, manure, input), own);
  return withCited(totalNitrogen(base, manure, input), own);
}

type Base = Pick<ManureCredit, "suppliedLbPerAc" | "contentLb" | "isTypical" | "unit">;

const withCited = (result: ManureCredit, own: readonly Cited[]): ManureCredit => ({
  ...result,
  cited: [...result.cited, ...own],
});

function citedOf({ mark, source, note }: Manure): Cited[] {
  return mark && source ? [{ mark, source, ...(note !== undefined && { note }) }] : [];
}

/** Phosphate and potash. */
function mineral(base: Base, { species }: Manure, input: ManureCreditInput): ManureCredit {
  if (input.guide !== "IA") return refuseGuide(input, input.nutrient);
  const row = input.nutrient === "K2O" ? iowaPotash : iowaPhosphate[species === "cattle" ? "cattle" : "other"];
  if (species === "horse" || species === "sheep") return refuseGuide(input, input.nutrient);
  const ends: Ends = input.yearsSince === 0 ? row.ends : [0, 0];
  return { ...base, ...scaled(base.suppliedLbPerAc, ends, null), split: null, cited: [row] };
}

function totalNitrogen(base: Base, manure: Manure, input: ManureCreditInput): ManureCredit {
  if (input.guide === "MN") return minnesota(base, manure, input);
  const row = iowaNitrogen.find(({ species, forms }) => species === manure.species && forms.includes(manure.form));
  const ends = row?.seasons[input.yearsSince];
  if (!row || !ends) return refuseGuide(input, "N");
  if (input.yearsSince > 0) {
    return { ...base, ...scaled(base.suppliedLbPerAc, ends, null), split: null, cited: [row] };
  }
  const kept = keptBy(manure, needed("placement", input.placement));
  return { ...base, ...scaled(base.suppliedLbPerAc, ends, kept), split: null, cited: [row, iowaKept] };
}

function minnesota(base: Base, { species, form }: Manure, input: ManureCreditInput): ManureCredit {
  const placement = needed("placement", input.placement);
  const fits = species === "swine" && form === "pit" && placement === "injected" && input.yearsSince === 0;
  if (!fits) return refuseGuide(input, "N");
  return { ...base, ...scaled(base.suppliedLbPerAc, minnesotaSwine.ends, null), split: null, cited: [minnesotaSwine] };
}

function keptBy({ form }: Manure, placement: ManurePlacementKey): Ends {
  if (placement !== "surface") return iowaKept[placement];
  return form === "solid" ? iowaKept.surfaceSolid : iowaKept.surfaceLiquid;
}

function newYork(base: Base, manure: Manure, input: ManureCreditInput): ManureCredit {
  const ammoniumLb = input.ammoniumLb ?? typicalAmmonium(manure, input);
  if (ammoniumLb > base.contentLb) {
    refuseArgument("ammoniumN", "is part of total nitrogen and cannot be more than it.");
  }
  const pct = releasePct(manure, input);
  const lossPct = input.yearsSince > 0 ? 100 : needed("ammoniumLoss", input.ammoniumLossPct);
  const ammonium = (ammoniumLb * input.ratePerAc * (100 - lossPct)) / 100;
  const organic = ((base.contentLb - ammoniumLb) * input.ratePerAc * pct) / 100;
  const lb = ammonium + organic;
  return {
    ...base,
    creditLbPerAc: lb,
    lowLbPerAc: lb,
    highLbPerAc: lb,
    availablePct: [pct, pct],
    keptPct: null,
    split: { ammonium, organic },
    cited: [newYorkRelease],
  };
}

/** Typical ammonium belongs to typical contents: a laboratory's total wants the laboratory's ammonium. */
function typicalAmmonium(manure: Manure, { contentLb }: ManureCreditInput): number {
  const typical = contentLb === null ? manure.ammoniumN : undefined;
  return needed("ammoniumN", typical);
}

function releasePct({ species, form }: Manure, { yearsSince, dryMatterPct }: ManureCreditInput): number {
  const later = yearsSince === 0 ? undefined : newYorkRelease.later[yearsSince - 1];
  if (later !== undefined) return later;
  const [thin, thick] = newYorkRelease.first[species];
  if (thin === thick) return thin;
  const thinUnder = newYorkRelease.thinUnderPct;
  const dry = dryMatterPct ?? (form === "solid" ? waitFor("dryMatter") : 0);
  return dry < thinUnder ? thin : thick;
}

function scaled(supplied: number, availablePct: Ends, keptPct: Ends | null) {
  const [keptLow, keptHigh] = keptPct ?? [100, 100];
  const [low, high] = availablePct;
  const middle = ((low + high) / 200) * ((keptLow + keptHigh) / 200);
  return {
    creditLbPerAc: supplied * middle,
    lowLbPerAc: (supplied * low * keptLow) / 10_000,
    highLbPerAc: (supplied * high * keptHigh) / 10_000,
    availablePct,
    keptPct,
  };
}

function refuseGuide({ guide, manure }: ManureCreditInput, nutrient: ManureNutrientKey): never {
  refuse({
    kind: "notPublished",
    where: manureGuides[guide].label,
    what: `availability of ${nutrient} for ${manures[manure].label} spread this way and this long ago that is known here`,
    instead: "Use the laboratory's available figure, or another guide.",
  });
}
