import type { Cited } from "../table";

/** Value left, % of the list price of an equal new machine: 100 (start - age √years - use √(hours a year))². */
export interface RemainingValue extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  readonly start: number;
  readonly age: number;
  readonly use: number;
  /** Tractors: rated PTO horsepower from here … */
  readonly fromHp?: number;
  /** … to below here. */
  readonly toHp?: number;
}

const crossPerry = { mark: "M", source: "cross-perry-1995", locator: "also ASABE D497, Table 4" } as const;

export const remainingValues = {
  tractorSmall: {
    label: "tractor, 30-79 hp",
    also: ["small tractor"],
    start: 0.981,
    age: 0.093,
    use: 0.0058,
    fromHp: 30,
    toHp: 80,
    ...crossPerry,
  },
  tractorMiddle: {
    label: "tractor, 80-149 hp",
    also: [],
    start: 0.942,
    age: 0.1,
    use: 0.0008,
    fromHp: 80,
    toHp: 150,
    ...crossPerry,
  },
  tractorLarge: {
    label: "tractor, 150 hp or more",
    also: ["tractor, 150+ hp", "large tractor"],
    start: 0.976,
    age: 0.119,
    use: 0.0019,
    fromHp: 150,
    toHp: Infinity,
    note: "Iowa State prints 23 % at 15 years and 400 h a year; the equation gives 22.76.",
    ...crossPerry,
  },
  combine: { label: "combine", also: ["self-propelled combine"], start: 1.132, age: 0.165, use: 0.0079, ...crossPerry },
  mowerConditioner: { label: "mower-conditioner", also: ["mower"], start: 0.756, age: 0.067, use: 0, ...crossPerry },
  baler: { label: "baler", also: [], start: 0.852, age: 0.101, use: 0, ...crossPerry },
  otherHarvest: {
    label: "other harvest machine",
    also: ["other harvest", "forage harvester", "PTO combine"],
    start: 0.791,
    age: 0.091,
    use: 0,
    ...crossPerry,
  },
  plow: { label: "plow", also: ["moldboard plow"], start: 0.738, age: 0.051, use: 0, ...crossPerry },
  otherTillage: {
    label: "other tillage tool",
    also: [
      "other tillage",
      "disk",
      "tandem disk",
      "heavy disk",
      "chisel plow",
      "chisel",
      "field cultivator",
      "cultivator",
      "row-crop cultivator",
      "harrow",
      "rotary hoe",
    ],
    start: 0.891,
    age: 0.11,
    use: 0,
    ...crossPerry,
  },
  planterDrill: {
    label: "planter or drill",
    also: ["planter", "drill", "row-crop planter", "grain drill"],
    start: 0.883,
    age: 0.0787,
    use: 0,
    ...crossPerry,
  },
  skidSteer: { label: "skid steer", also: ["skid-steer loader"], start: 0.786, age: 0.063, use: 0.0033, ...crossPerry },
  miscellaneous: {
    label: "all others",
    also: ["miscellaneous", "sprayer", "boom sprayer", "spreader", "fertilizer spreader", "wagon"],
    start: 0.943,
    age: 0.111,
    use: 0,
    ...crossPerry,
  },
} as const satisfies Record<string, RemainingValue>;

export type ValueClassKey = keyof typeof remainingValues;
