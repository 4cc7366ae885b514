/** How a material is handled and sold. */
export type MaterialForm = "dry" | "liquid" | "pressurized";

interface Material {
  readonly label: string;
  readonly also: readonly string[];
  /** Guaranteed analysis, or the compound where the trade gives no grade. */
  readonly grade: string;
  readonly form: MaterialForm;
}

/** Fertilizer materials by their common names. */
export const materials = {
  anhydrousAmmonia: named("anhydrous ammonia", "82-0-0", "pressurized", ["anhydrous", "NH3"]),
  urea: named("urea", "46-0-0", "dry"),
  uan28: named("UAN 28", "28-0-0", "liquid", ["UAN", "28 % nitrogen solution"]),
  uan30: named("UAN 30", "30-0-0", "liquid", ["30 % nitrogen solution"]),
  uan32: named("UAN 32", "32-0-0", "liquid", ["32 % nitrogen solution"]),
  ammoniumNitrate: named("ammonium nitrate", "34-0-0", "dry"),
  ammoniumSulfate: named("ammonium sulfate", "21-0-0-24S", "dry", ["AMS", "21-0-0", "sulfate of ammonia"]),
  ammoniumSulfateSolution: named("ammonium sulfate solution", "8-0-0-9S", "liquid"),
  ammoniumThiosulfate: named("ammonium thiosulfate", "12-0-0-26S", "liquid", ["ATS"]),
  monoammoniumPhosphate: named("MAP", "11-52-0", "dry", ["monoammonium phosphate"]),
  diammoniumPhosphate: named("DAP", "18-46-0", "dry", ["diammonium phosphate"]),
  ammoniumPolyphosphate: named("ammonium polyphosphate", "10-34-0", "liquid", ["APP", "polyphosphate"]),
  tripleSuperphosphate: named("triple superphosphate", "0-46-0", "dry", ["TSP"]),
  singleSuperphosphate: named("single superphosphate", "0-20-0", "dry", ["SSP", "ordinary superphosphate"]),
  potash: named("potash", "0-0-60", "dry", ["potassium chloride", "muriate of potash", "MOP", "KCl"]),
  potassiumSulfate: named("potassium sulfate", "0-0-50-18S", "dry", ["sulfate of potash", "SOP"]),
  potassiumMagnesiumSulfate: named("potassium magnesium sulfate", "0-0-22-11Mg-22S", "dry", ["langbeinite"]),
  potassiumNitrate: named("potassium nitrate", "13-0-44", "dry"),
  potassiumThiosulfate: named("potassium thiosulfate", "0-0-25-17S", "liquid", ["KTS"]),
  starter7217: named("starter 7-21-7", "7-21-7", "liquid"),
  starter9189: named("starter 9-18-9", "9-18-9", "liquid"),
  zincAmmonia: named("zinc ammonia solution", "10-0-0-10Zn", "liquid"),
  calciumNitrate: named("calcium nitrate", "15-0-0-19Ca", "dry"),
  gypsum: named("gypsum", "CaSO4.2H2O", "dry", ["calcium sulfate"]),
  elementalSulfur: named("elemental sulfur", "0-0-0-90S", "dry", ["sulfur 90", "90S"]),
  magnesiumSulfate: named("magnesium sulfate", "MgSO4.7H2O", "dry", ["Epsom salt"]),
  zincSulfateMonohydrate: named("zinc sulfate monohydrate", "ZnSO4.H2O", "dry", ["zinc sulfate"]),
  zincSulfateHeptahydrate: named("zinc sulfate heptahydrate", "ZnSO4.7H2O", "dry"),
  zincChelate: named("zinc chelate", "Zn EDTA", "liquid"),
  manganeseSulfate: named("manganese sulfate", "MnSO4.H2O", "dry"),
  borate: named("borate", "sodium borate", "dry", ["boron"]),
  copperSulfate: named("copper sulfate", "CuSO4.5H2O", "dry"),
  ironChelate: named("iron chelate", "Fe EDDHA", "dry", ["iron chelate for soil"]),
} as const;

export type MaterialKey = keyof typeof materials;

function named(label: string, grade: string, form: MaterialForm, also: readonly string[] = []): Material {
  return { label, grade, form, also: [grade, ...also, ...[label, ...also].map((name) => `${name} ${grade}`)] };
}
