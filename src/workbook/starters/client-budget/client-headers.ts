import { headersOf } from "../../model/table";

export const clientCrops = headersOf("ClientCrops", {
  crop: "Crop",
  price: "Price $/bu",
  costPerBushel: "Haul and dry $/bu",
});

export const clientFields = headersOf("ClientFields", {
  field: "Field",
  acres: "Acres",
  crop: "Crop",
  yield: "Yield bu/ac",
  cost: "Costs before hauling $/ac",
  other: "Other income $/ac",
  income: "Income $/ac",
  allCosts: "All costs $/ac",
  profit: "Profit $/ac",
  total: "Profit $",
  breakEvenPrice: "Price that covers $/bu",
  breakEvenYield: "Yield that covers bu/ac",
});

export const proposals = headersOf("Proposals", {
  change: "Change",
  field: "Field",
  decision: "Decision",
  low: "Low gain bu/ac",
  likely: "Likely gain bu/ac",
  high: "High gain bu/ac",
  added: "Added cost $/ac",
  saved: "Saved cost $/ac",
  lost: "Income given up $/ac",
  acres: "Acres",
  net: "Net $/ac",
  netLow: "Net at low gain $/ac",
  total: "Net $",
  breakEven: "Gain that pays bu/ac",
  perDollar: "Back per $ spent",
  words: "What it means",
});

export const comparison = headersOf("NowAndThen", {
  field: "Field",
  acres: "Acres",
  crop: "Crop",
  profitNow: "Profit now $/ac",
  changes: "Changes agreed",
  netChange: "They add $/ac",
  profitThen: "Profit then $/ac",
  totalNow: "Profit now $",
  totalThen: "Profit then $",
});

export const clientTests = headersOf("ClientTests", {
  field: "Field",
  crop: "Crop",
  goal: "Yield bu/ac",
  sampled: "Sampled",
  ph: "Soil pH",
  bufferPh: "Buffer pH",
  phosphorus: "P ppm",
  potassium: "K ppm",
  cec: "CEC meq/100 g",
  organicMatter: "Organic matter %",
  lime: "Effective lime ton/ac",
  phosphate: "P2O5 by guide lb/ac",
  potash: "K2O by guide lb/ac",
});
