interface Spellings {
  readonly label: string;
  readonly also: readonly string[];
}

/** Laboratory extractions of soil-test phosphorus and potassium. Their numbers are not interchangeable. */
export const extractants = {
  mehlich3: { label: "Mehlich-3", also: ["M3", "Mehlich 3", "Mehlich III"] },
  mehlich3Icp: { label: "Mehlich-3 ICP", also: ["M3 ICP", "M3-ICP"] },
  mehlich3Color: { label: "Mehlich-3 colorimetric", also: ["M3 colorimetric", "Mehlich-3 color"] },
  bray: { label: "Bray P1", also: ["Bray", "Bray 1", "Bray-Kurtz P1", "weak Bray"] },
  brayK: { label: "Bray-extracted K", also: ["Bray K", "K by Bray"] },
  olsen: { label: "Olsen", also: ["bicarbonate", "sodium bicarbonate"] },
  ammoniumAcetate: { label: "ammonium acetate", also: ["AA", "NH4OAc", "ammonium acetate dried"] },
  ammoniumAcetateMoist: {
    label: "field-moist K",
    also: ["field-moist ammonium acetate", "ammonium acetate field-moist", "field-moist Mehlich-3", "moist K"],
  },
} as const;

export type ExtractantKey = keyof typeof extractants;

/** How a need is reckoned: feed crop and soil, only what the crop is short of, or only what it takes off. */
export const approaches = {
  build: { label: "build", also: ["build and maintain", "build-maintain", "buildup"] },
  sufficiency: { label: "sufficiency", also: ["sufficient", "crop only", "no buildup"] },
  removal: { label: "removal", also: ["maintain", "target and maintain", "crop removal", "replacement"] },
} as const;

export type ApproachKey = keyof typeof approaches;

/** Soils and regions that some guides print their numbers apart for. */
const soilGroups = {
  highSupply: { label: "high supply", also: ["high", "high P-supplying region"] },
  mediumSupply: { label: "medium supply", also: ["medium", "medium P-supplying region"] },
  lowSupply: { label: "low supply", also: ["low", "low P-supplying region"] },
  loamy: { label: "loamy", also: ["loam", "medium and fine"] },
  sandy: { label: "sandy or organic", also: ["sandy", "organic", "sand", "muck"] },
  smectitic: { label: "smectitic", also: ["smectite", "smectite to illite above 3.5"] },
  illitic: { label: "illitic", also: ["illite", "smectite to illite below 3.5"] },
  target220: { label: "K target 220", also: ["220", "target 220"] },
  target160: { label: "K target 160", also: ["160", "target 160"] },
} as const;

/** Curves a bulletin numbers and its crop table refers to. */
export type EquationKey = `equation ${number}`;
export type GroupKey = keyof typeof soilGroups | EquationKey;

export const equationKey = (number: number): EquationKey => `equation ${number}`;

/** What a guide splits its numbers by, beyond crop, CEC and extraction. */
export const groups: Readonly<Record<GroupKey, Spellings>> = {
  ...soilGroups,
  ...Object.fromEntries(
    Array.from({ length: 20 }, (_, place) => {
      const label = equationKey(place + 1);
      return [label, { label, also: [String(place + 1), `eq ${place + 1}`] }];
    }),
  ),
};

/** Classes a laboratory prints in place of a number that a guide could be read at. */
export const reportClasses = {
  low: { label: "low", also: ["L"] },
  medium: { label: "medium", also: ["M"] },
  sufficient: { label: "sufficient", also: ["S"] },
  high: { label: "high", also: ["H"] },
  excessive: { label: "excessive", also: ["E", "very high"] },
} as const;

export type ReportClassKey = keyof typeof reportClasses;

/** Units of a soil test. One is twice the other for the usual slice of soil. */
export const testUnits = {
  ppm: { label: "ppm", also: ["mg/kg", "parts per million"] },
  lbPerAc: { label: "lb/ac", also: ["lb/acre", "pounds per acre", "lbs/ac", "lbs/acre"] },
} as const;

export type TestUnitKey = keyof typeof testUnits;
