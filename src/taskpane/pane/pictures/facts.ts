import { parseAddress } from "../../../hosts/address";
import type { CellPlace } from "../../../workbook/area";
import {
  triedFigures,
  type BlocksPicture,
  type PairsPicture,
  type Picture,
  type Tried,
  type TriedAcre,
  type TriedFigure,
} from "../../../workbook/pictures/picture";
import type { LedgerReading } from "../tables/ledgers";
import { numberIn } from "../parts/read-number";
import { caseFrom, plain, readQuantity, valuesOf } from "../what-if/case";
import { stepsOf } from "../what-if/profit";
import type { WhatIfState } from "../what-if/state";
import { rangesOf, swingsOf } from "../what-if/swings";
import { costOf, factsOf, listedIn, moneyOf, pairColumns, resultOf, withYields } from "../trial/result";
import type { KeptTrial, Layout } from "../trial/state";
import { yieldsOf } from "../trial/yields";

/** Profit at other yields and prices, around what is tried. */
export function gridPicture(state: WhatIfState): Picture | undefined {
  const one = caseFrom(valuesOf(state));
  if (!one) return undefined;
  const steps = stepsOf(one, rangesOf(state));
  const { crop } = state;
  return { kind: "grid", crop, tried: triedAcre(state), yieldStep: steps.yield, priceStep: steps.price };
}

/** What moves profit most, with the ranges as typed. */
export function tornadoPicture(state: WhatIfState): Picture | undefined {
  const swings = swingsOf(state).map(({ name, moves, low, high }) => ({ name, moves, low, high }));
  if (swings.length === 0) return undefined;
  return { kind: "tornado", crop: state.crop, tried: triedAcre(state), swings };
}

function triedAcre(state: WhatIfState): TriedAcre {
  const acre = triedFigures.map((figure) => [figure, triedFigure(state, figure)] as const);
  // One entry for every figure.
  return Object.fromEntries(acre) as Record<TriedFigure, Tried>;
}

/** A figure that is as the sheet says follows the sheet. */
function triedFigure(state: WhatIfState, figure: TriedFigure): Tried {
  const value = numberIn(readQuantity(state, figure)) ?? 0;
  const bound = state.bound[figure];
  // The pane shows fewer digits than a cell may hold.
  const isSame = bound?.value !== undefined && bound.value !== null && plain(bound.value) === plain(value);
  const follows = bound && isSame ? cellAt(bound.address) : undefined;
  return follows ? { follows } : { value };
}

export function ledgerPicture({ trade, balances }: LedgerReading): Picture | undefined {
  const rows = balances.flatMap(({ at }) => {
    const [field, perYear] = [cellAt(at.field), cellAt(at.perYear)];
    return field && perYear ? [{ field, perYear }] : [];
  });
  return rows.length > 0 ? { kind: "ledger", trade, rows } : undefined;
}

export function driftPicture({ trade, drifts }: LedgerReading): Picture | undefined {
  const rows = drifts.flatMap(({ at }) => {
    const [field, now] = [cellAt(at.field), cellAt(at.now)];
    const [byPlan, nothingOn] = [cellAt(at.byPlan), cellAt(at.nothingOn)];
    return field && now && byPlan && nothingOn ? [{ field, now, byPlan, nothingOn }] : [];
  });
  return rows.length > 0 ? { kind: "drift", trade, rows } : undefined;
}

/** The cell of an address with its sheet. */
function cellAt(address: string): CellPlace | undefined {
  const place = parseAddress(address);
  if (place?.sheet === undefined) return undefined;
  return { sheet: place.sheet, row: place.area.top, column: place.area.left };
}

/** The gains of a trial, once there is a result. */
export function trialPicture(kept: KeptTrial): Picture | undefined {
  const { layout } = kept;
  const result = resultOf(kept);
  if (!layout || !result || "because" in result) return undefined;
  return layout.treatments.length === 2 ? pairsPicture(kept, layout) : blocksPicture(kept, layout);
}

function pairsPicture(kept: KeptTrial, layout: Layout): PairsPicture {
  const { blocks, check, treated } = pairColumns(layout, yieldsOf(kept));
  const [checkName = "", treatedName = ""] = layout.treatments;
  const { price, costs } = factsOf(kept);
  return {
    ...commonOf(kept, layout),
    kind: "pairs",
    treatments: { check: checkName, treated: treatedName },
    pairs: blocks.map((block, index) => ({ block, check: check[index] ?? null, treated: treated[index] ?? null })),
    ...(price !== null &&
      moneyOf(price, costs) && {
        money: { priceUsdPerBu: price, costUsdPerAc: (costs[1] ?? 0) - (costs[0] ?? 0) },
      }),
  };
}

function blocksPicture(kept: KeptTrial, layout: Layout): BlocksPicture {
  const { price, costs } = factsOf(kept);
  return {
    ...commonOf(kept, layout),
    kind: "blocks",
    check: layout.treatments[0] ?? "",
    strips: withYields(layout, yieldsOf(kept)),
    ...(price !== null &&
      moneyOf(price, costs) && {
        money: {
          priceUsdPerBu: price,
          costs: listedIn(layout).map((treatment) => ({ treatment, usdPerAc: costOf(treatment, layout, costs) })),
        },
      }),
  };
}

function commonOf(kept: KeptTrial, { design }: Layout) {
  return { name: kept.form.name.trim(), design, confidencePct: factsOf(kept).confidence ?? 90 };
}
