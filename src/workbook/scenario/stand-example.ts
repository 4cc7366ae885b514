import { serialDay } from "./serial-day";

/** A flooded corn stand of the invented farm, counted in May; every figure is invented. */
export const standExample = {
  field: "Far Bottoms",
  crop: "corn",
  plantedOn: serialDay(2026, 4, 28),
  guide: "Iowa 2001",
  /** Plants on 1/1000 acre. */
  counts: [
    { place: "gate", plants: 17 },
    { place: "levee", plants: 14 },
    { place: "slough", plants: 12 },
    { place: "west", plants: 18 },
    { place: "middle", plants: 15 },
    { place: "middle, low", plants: 13 },
    { place: "east", plants: 16 },
    { place: "far end", plants: 15 },
  ],
  replantOn: serialDay(2026, 5, 20),
  replantStandPerAc: 32_000,
} as const;

/** What planting again costs and how sure it is. */
export const replantTerms = {
  chance: 0.85,
  failYieldBuPerAc: 60,
  secondStandPct: 90,
  killUsdPerAc: 14,
  plantUsdPerAc: 22,
  seedUsdPerAc: 60,
  sprayUsdPerAc: 18,
  paymentUsdPerAc: 40,
  addedDryingUsdPerBu: 0.1,
} as const;
