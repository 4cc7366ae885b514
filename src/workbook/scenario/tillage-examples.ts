/** Machines of the invented farm; prices and hours are invented, in the range of university budgets. */
export interface MachineExample {
  readonly machine: string;
  readonly kind: string;
  readonly widthFt: number;
  readonly mph: number;
  readonly acresPerYear: number;
  readonly priceUsd: number;
  readonly years: number;
  readonly horsepower: number;
  readonly tractorUsd: number;
  readonly tractorHours: number;
}

export const machineExamples: readonly MachineExample[] = [
  machine("chisel plow", "chisel plow", [17.5, 5, 650], [34_000, 12], [300, 240_000, 420]),
  machine("field cultivator", "field cultivator", [40, 6.5, 1300], [72_000, 12], [300, 240_000, 420]),
  machine("planter", "row-crop planter", [40, 5, 1440], [165_000, 12], [240, 190_000, 400]),
  machine("planter, no-till", "row-crop planter", [40, 4.8, 1440], [185_000, 12], [240, 190_000, 400]),
  machine("sprayer", "boom sprayer", [90, 7, 4400], [62_000, 10], [150, 110_000, 350]),
];

export interface PassExample {
  readonly system: string;
  readonly pass: string;
  readonly machine: string;
}

/** Two ways from corn stalks to a planted soybean field. */
export const passExamples: readonly PassExample[] = [
  pass("chisel", "chisel plow, straight points", "chisel plow"),
  pass("chisel", "field cultivator after tillage, sweeps 12-20 in", "field cultivator"),
  pass("chisel", "no soil moved", "sprayer"),
  pass("chisel", "planter, double disk openers", "planter"),
  pass("chisel", "no soil moved", "sprayer"),
  pass("no-till", "no soil moved", "sprayer"),
  pass("no-till", "no-till planter, ripple coulters", "planter, no-till"),
  pass("no-till", "no soil moved", "sprayer"),
  pass("no-till", "no soil moved", "sprayer"),
];

/** A rolling field of the farm, by the soil survey. */
export const erosionExample = {
  rain: 165,
  erodibility: 0.37,
  slopeLengthFt: 180,
  steepnessPct: 4,
  practice: 1,
  toleranceTonPerAc: 5,
} as const;

/** Money and time in machines. */
export const machineTerms = { dieselUsdPerGal: 3.4, wageUsdPerHour: 24 } as const;

function machine(
  name: string,
  kind: string,
  [widthFt, mph, acresPerYear]: readonly [number, number, number],
  [priceUsd, years]: readonly [number, number],
  [horsepower, tractorUsd, tractorHours]: readonly [number, number, number],
): MachineExample {
  return { machine: name, kind, widthFt, mph, acresPerYear, priceUsd, years, horsepower, tractorUsd, tractorHours };
}

function pass(system: string, name: string, machineName: string): PassExample {
  return { system, pass: name, machine: machineName };
}
