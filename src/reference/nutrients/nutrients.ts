/** The nutrients a removal table may publish, in the order it prints them. P and K are counted as oxides. */
export const nutrients = {
  N: { label: "N", also: ["nitrogen"], name: "nitrogen" },
  P2O5: { label: "P2O5", also: ["phosphate", "P", "phosphorus", "phosphorous", "P₂O₅"], name: "phosphate" },
  K2O: { label: "K2O", also: ["potash", "K", "potassium", "K₂O"], name: "potash" },
  Ca: { label: "Ca", also: ["calcium"], name: "calcium" },
  Mg: { label: "Mg", also: ["magnesium"], name: "magnesium" },
  S: { label: "S", also: ["sulfur", "sulphur"], name: "sulfur" },
  Zn: { label: "Zn", also: ["zinc"], name: "zinc" },
  Mn: { label: "Mn", also: ["manganese"], name: "manganese" },
  Cu: { label: "Cu", also: ["copper"], name: "copper" },
  Fe: { label: "Fe", also: ["iron"], name: "iron" },
  B: { label: "B", also: ["boron"], name: "boron" },
} as const;

export type NutrientKey = keyof typeof nutrients;

/** Nutrients in the order tables print them. */
export const nutrientKeys = ["N", "P2O5", "K2O", "Ca", "Mg", "S", "Zn", "Mn", "Cu", "Fe", "B"] as const;
