export {
  iowaKept,
  iowaNitrogen,
  iowaPhosphate,
  iowaPotash,
  manureGuides,
  manurePlacements,
  minnesotaSwine,
  newYorkRelease,
  type Ends,
  type ManureGuideKey,
  type ManurePlacementKey,
  type TotalRow,
} from "./availability";
export {
  manureNutrients,
  manures,
  type Manure,
  type ManureKey,
  type ManureNutrientKey,
  type ManureSpecies,
} from "./manures";
