import { headersOf } from "../../../model/table";

/** The tables of the harvest check. */
export const earTable = headersOf("EarCounts", {
  place: "Place counted",
  ears: "Ears on 1/1000 ac",
  kernelRows: "Kernel rows",
  kernelsPerRow: "Kernels in a row",
  yield: "Corn bu/ac",
});

export const podTable = headersOf("PodCounts", {
  place: "Place counted",
  plants: "Plants/ac",
  podsPerPlant: "Pods on a plant",
  seedsPerPod: "Seeds in a pod",
  seedsPerPound: "Seeds in a lb",
  yield: "Soybean bu/ac",
});

export const headTable = headersOf("HeadCounts", {
  place: "Place counted",
  heads: "Heads in 3 ft of row",
  rowWidth: "Row width in",
  spikelets: "Spikelets on a head",
  yield: "Wheat bu/ac",
});

export const lossTable = headersOf("HarvestLosses", {
  field: "Field",
  crop: "Crop",
  standing: "Under standing crop seeds/sq ft",
  header: "Behind cutterbar seeds/sq ft",
  behind: "Behind machine seeds/sq ft",
  before: "Lost before harvest bu/ac",
  atHeader: "Lost at header bu/ac",
  inMachine: "Lost in machine bu/ac",
  all: "Lost in all bu/ac",
  worth: "Worth $/ac",
});

export const wetTable = headersOf("WetOrDry", {
  field: "Field",
  crop: "Crop",
  wet: "Wet bushels",
  moisture: "Moisture %",
  market: "Market moisture %",
  dry: "Dry bushels",
  drying: "Drying at home $/wet bu",
  sellWet: "Sold wet leaves $/wet bu",
  elevator: "Elevator dries leaves $/wet bu",
  home: "Dried at home leaves $/wet bu",
  best: "Best way",
  ahead: "Ahead of next $",
});

export const storeTable = headersOf("StoreOrSell", {
  crop: "Crop",
  price: "Price now $/bu",
  months: "Months",
  charge: "Store $/bu a month",
  handling: "In and out $/bu",
  drying: "Extra drying $/bu",
  shrink: "Extra shrink %",
  cost: "Cost of storing $/bu",
  needed: "Price needed $/bu",
  expected: "Price expected $/bu",
  left: "Storing leaves $/bu",
  words: "What it means",
});
