/** Laboratory extractions of soil-test phosphorus and potassium. Their numbers are not interchangeable. */
export const extractants = {
  mehlich3: { label: "Mehlich-3", also: ["M3", "Mehlich 3", "Mehlich III", "Mehlich-3 ICP", "M3 ICP"] },
  mehlich3Color: { label: "Mehlich-3 colorimetric", also: ["M3 colorimetric", "Mehlich-3 color"] },
  bray: { label: "Bray P1", also: ["Bray", "Bray 1", "Bray-Kurtz P1", "weak Bray"] },
  olsen: { label: "Olsen", also: ["bicarbonate", "sodium bicarbonate"] },
  ammoniumAcetate: { label: "ammonium acetate", also: ["AA", "NH4OAc", "ammonium acetate dried"] },
  ammoniumAcetateMoist: {
    label: "field-moist ammonium acetate",
    also: ["ammonium acetate field-moist", "field moist", "moist K"],
  },
} as const;

export type ExtractantKey = keyof typeof extractants;

/** How a need is reckoned: feed crop and soil, or only what the crop is short of. */
export const approaches = {
  build: { label: "build", also: ["build and maintain", "build-maintain", "buildup"] },
  sufficiency: { label: "sufficiency", also: ["sufficient", "crop only", "no buildup"] },
} as const;

export type ApproachKey = keyof typeof approaches;
