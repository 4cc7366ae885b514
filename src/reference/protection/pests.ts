/** Pests that a published threshold is held for, as growers name them. */
export const pests = {
  soybeanAphid: { label: "soybean aphid", also: ["aphid in soybean"] },
  defoliation: { label: "defoliation", also: ["chewing insects", "leaf feeding", "leaf loss"] },
  beanLeafBeetle: { label: "bean leaf beetle", also: [] },
  stinkBugs: { label: "stink bugs", also: ["stinkbug"] },
  podCaterpillars: { label: "pod-feeding caterpillars", also: ["pod worm", "podworm", "pod feeders"] },
  spiderMite: { label: "two-spotted spider mite", also: ["spider mite", "mite"] },
  leafhoppers: { label: "leafhoppers", also: [] },
  potatoLeafhopper: { label: "potato leafhopper", also: [] },
  grasshoppers: { label: "grasshoppers", also: [] },
  grasshopperNymphs: { label: "grasshopper nymphs", also: ["young grasshoppers"] },
  rootwormBeetles: {
    label: "corn rootworm beetles",
    also: ["corn rootworm adult", "rootworm beetle", "corn rootworm"],
  },
  blackCutworm: { label: "black cutworm", also: ["cutworm"] },
  westernBeanCutworm: { label: "western bean cutworm", also: [] },
  cerealAphids: { label: "cereal aphids", also: ["aphids in wheat"] },
  birdCherryOatAphid: {
    label: "bird cherry-oat or corn leaf aphid",
    also: ["bird cherry-oat aphid", "corn leaf aphid"],
  },
  englishGrainAphid: { label: "English grain aphid", also: ["grain aphid"] },
  greenbug: { label: "greenbug", also: [] },
  cerealLeafBeetle: { label: "cereal leaf beetle", also: [] },
  armyworm: { label: "armyworm", also: ["true armyworm"] },
  grassSawfly: { label: "grass sawfly", also: ["sawfly"] },
  wheatMidge: { label: "wheat midge", also: ["midge", "orange wheat blossom midge"] },
  meadowSpittlebug: { label: "meadow spittlebug", also: ["spittlebug"] },
} as const;

export type PestKey = keyof typeof pests;

/** How the pest is counted. */
export const countings = {
  perPlant: { label: "per plant", also: [] },
  perSeedling: { label: "per seedling", also: [] },
  perStem: { label: "per stem", also: ["per tiller"] },
  perHead: { label: "per head", also: [] },
  perEar: { label: "per ear", also: [] },
  perLeaflet: { label: "per leaflet", also: [] },
  perFoot: { label: "per foot of row", also: ["per row-foot", "per foot"] },
  perSixFeet: { label: "per 6 feet of row", also: [] },
  perSweep: { label: "per sweep", also: [] },
  per25Sweeps: { label: "per 25 sweeps", also: [] },
  per100Sweeps: { label: "per 100 sweeps", also: [] },
  per100Plants: { label: "per 100 plants", also: [] },
  perSquareFoot: { label: "per square foot", also: ["per sq ft"] },
  perSquareYard: { label: "per square yard", also: ["per sq yd"] },
  perSquareMeter: { label: "per square meter", also: ["per sq m"] },
  pctOfCanopy: { label: "% of leaf area", also: ["percent of leaf area", "percent defoliation"] },
  pctOfPlants: { label: "% of plants", also: ["percent of plants"] },
} as const;

export type CountingKey = keyof typeof countings;

/** A stage or condition as printed; first and last are stage codes that it covers, where it is tied to codes. */
export interface PestStage {
  readonly label: string;
  readonly also: readonly string[];
  readonly first?: string;
  readonly last?: string;
}

export const pestStages = {
  r1ToR5: { label: "R1-R5", also: [], first: "R1", last: "R5" },
  r6On: { label: "R6 and later", also: [], first: "R6", last: "R8" },
  vegetative: { label: "vegetative", also: [], first: "VE", last: "VT" },
  reproductive: { label: "reproductive", also: [], first: "R1", last: "R8" },
  toR2: { label: "to R2", also: [], first: "VE", last: "R2" },
  r3ToR5: { label: "R3-R5", also: [], first: "R3", last: "R5" },
  r6: { label: "R6 only", also: [], first: "R6", last: "R6" },
  toBeforeBloom: { label: "to 2 weeks before bloom", also: [] },
  beforeBloomToR7: { label: "2 weeks before bloom to R7", also: [] },
  beforeBloom: { label: "before bloom", also: [], first: "VE", last: "VT" },
  bloomToPodFill: { label: "bloom to pod fill", also: [] },
  vcToV1: { label: "VC-V1", also: [], first: "VC", last: "V1" },
  v2On: { label: "V2 and later", also: ["V2+"] },
  cotyledon: { label: "cotyledon", also: [], first: "VE", last: "VC" },
  v1: { label: "V1 only", also: [], first: "V1", last: "V1" },
  podToFullSeed: { label: "pod to full seed", also: [] },
  r3ToR6: { label: "R3-R6", also: [], first: "R3", last: "R6" },
  r1ToR6: { label: "R1-R6", also: [], first: "R1", last: "R6" },
  r6ToR7: { label: "R6-R7", also: [], first: "R6", last: "R7" },
  bloomToMidFill: { label: "bloom to mid pod fill", also: [] },
  midFillOn: { label: "mid pod fill to maturity", also: [] },
  seedCrop: { label: "seed production", also: [] },
  afterBloom: { label: "after bloom", also: [], first: "R1", last: "R8" },
  seedlingStressed: { label: "seedling, stressed", also: [] },
  seedlingFresh: { label: "seedling, not stressed", also: [] },
  seedling: { label: "seedling", also: [] },
  august: { label: "August, continuous corn", also: ["August"] },
  silking: { label: "silking", also: [], first: "R1", last: "R1" },
  v1ToV5: { label: "V1-V5", also: [], first: "V1", last: "V5" },
  toV5: { label: "to V5", also: [], first: "VE", last: "V5" },
  preTassel: { label: "before tassel", also: ["pre-tassel"] },
  v1ToV6: { label: "V1-V6", also: [], first: "V1", last: "V6" },
  v14ToVt: { label: "V14-VT", also: [], first: "V14", last: "VT" },
  r1ToR4: { label: "R1-R4", also: [], first: "R1", last: "R4" },
  seedlingToHeading: { label: "seedling to heading", also: [] },
  beforeBoot: { label: "before boot", also: [] },
  boot: { label: "boot", also: [] },
  bootOn: { label: "boot and later", also: [] },
  heading: { label: "heading", also: [] },
  milk: { label: "milk stage", also: ["milk"] },
  field: { label: "any time, in the field", also: ["any time", "field"] },
  adult: { label: "adults, in the field", also: [] },
  edges: { label: "noncrop areas beside fields", also: ["field edges"] },
  forYield: { label: "heading, to protect yield", also: [] },
  forGrade: { label: "heading, to keep grade", also: [] },
  to3In: { label: "3 in or shorter", also: [] },
  from4In: { label: "4-6 in", also: [] },
  from7In: { label: "7-10 in", also: [] },
  from11In: { label: "11 in or taller", also: [] },
  over12In: { label: "above 12 in", also: [] },
  spring: { label: "spring", also: [] },
} as const satisfies Record<string, PestStage>;

export type PestStageKey = keyof typeof pestStages;
