import type { Cited } from "../table";
import type { ValueClassKey } from "./remaining-value";

/** A machine of the standard: how it works, wears and is repaired. */
export interface Machine extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  /** Life to wear-out, h. */
  readonly lifeHours: number;
  /** Accumulated repairs: list price × repairFactor × (hours / 1000) ^ repairPower. */
  readonly repairFactor: number;
  readonly repairPower: number;
}

/** A machine that works a width of field. */
export interface FieldMachine extends Machine {
  readonly valueClass: ValueClassKey;
  /** Field efficiency, %: low, typical, high. */
  readonly efficiencyPct: readonly [low: number, typical: number, high: number];
  /** Speed, mph: low, typical, high. */
  readonly mph: readonly [low: number, typical: number, high: number];
  readonly isSelfPropelled?: true;
}

const d497 = { mark: "M", source: "asabe-d497", locator: "Table 3" } as const;

export const tractors = {
  twoWheel: {
    label: "2WD tractor",
    also: ["tractor", "two-wheel-drive tractor", "2WD", "stationary engine"],
    lifeHours: 12_000,
    repairFactor: 0.007,
    repairPower: 2,
    ...d497,
  },
  fourWheel: {
    label: "4WD tractor",
    also: ["four-wheel-drive tractor", "4WD", "tracked tractor", "track tractor", "crawler"],
    lifeHours: 16_000,
    repairFactor: 0.003,
    repairPower: 2,
    ...d497,
  },
} as const satisfies Record<string, Machine>;

export type TractorKey = keyof typeof tractors;

/** Implements and self-propelled machines. Rows that were borrowed from another machine are left out. */
export const fieldMachines = {
  moldboardPlow: {
    label: "moldboard plow",
    also: ["plow", "mouldboard plough"],
    efficiencyPct: [70, 85, 90],
    mph: [3, 4.5, 6],
    lifeHours: 2_000,
    repairFactor: 0.29,
    repairPower: 1.8,
    valueClass: "plow",
    ...d497,
  },
  heavyDisk: {
    label: "heavy disk",
    also: ["heavy-duty disk", "offset disk", "plowing disk"],
    efficiencyPct: [70, 85, 90],
    mph: [3.5, 4.5, 6],
    lifeHours: 2_000,
    repairFactor: 0.18,
    repairPower: 1.7,
    valueClass: "otherTillage",
    ...d497,
  },
  tandemDisk: {
    label: "tandem disk",
    also: ["disk", "disc", "tandem disk harrow"],
    efficiencyPct: [70, 80, 90],
    mph: [4, 6, 7],
    lifeHours: 2_000,
    repairFactor: 0.18,
    repairPower: 1.7,
    valueClass: "otherTillage",
    ...d497,
  },
  chiselPlow: {
    label: "chisel plow",
    also: ["chisel"],
    efficiencyPct: [70, 85, 90],
    mph: [4, 5, 6.5],
    lifeHours: 2_000,
    repairFactor: 0.28,
    repairPower: 1.4,
    valueClass: "otherTillage",
    ...d497,
  },
  fieldCultivator: {
    label: "field cultivator",
    also: ["cultivator"],
    efficiencyPct: [70, 85, 90],
    mph: [5, 7, 8],
    lifeHours: 2_000,
    repairFactor: 0.27,
    repairPower: 1.4,
    valueClass: "otherTillage",
    ...d497,
  },
  springToothHarrow: {
    label: "spring-tooth harrow",
    also: ["harrow"],
    efficiencyPct: [70, 85, 90],
    mph: [5, 7, 8],
    lifeHours: 2_000,
    repairFactor: 0.27,
    repairPower: 1.4,
    valueClass: "otherTillage",
    ...d497,
  },
  rollerPacker: {
    label: "roller packer",
    also: ["roller"],
    efficiencyPct: [70, 85, 90],
    mph: [4.5, 6, 7.5],
    lifeHours: 2_000,
    repairFactor: 0.16,
    repairPower: 1.3,
    valueClass: "otherTillage",
    ...d497,
  },
  mulcherPacker: {
    label: "mulcher packer",
    also: ["mulcher"],
    efficiencyPct: [70, 80, 90],
    mph: [4, 5, 7],
    lifeHours: 2_000,
    repairFactor: 0.16,
    repairPower: 1.3,
    valueClass: "otherTillage",
    ...d497,
  },
  rotaryHoe: {
    label: "rotary hoe",
    also: [],
    efficiencyPct: [70, 80, 85],
    mph: [8, 12, 14],
    lifeHours: 2_000,
    repairFactor: 0.23,
    repairPower: 1.4,
    valueClass: "otherTillage",
    ...d497,
  },
  rowCultivator: {
    label: "row-crop cultivator",
    also: ["row cultivator"],
    efficiencyPct: [70, 80, 90],
    mph: [3, 5, 7],
    lifeHours: 2_000,
    repairFactor: 0.17,
    repairPower: 2.2,
    valueClass: "otherTillage",
    ...d497,
  },
  planter: {
    label: "row-crop planter",
    also: ["planter", "corn planter"],
    efficiencyPct: [50, 65, 75],
    mph: [4, 5.5, 7],
    lifeHours: 1_500,
    repairFactor: 0.32,
    repairPower: 2.1,
    valueClass: "planterDrill",
    ...d497,
  },
  drill: {
    label: "grain drill",
    also: ["drill"],
    efficiencyPct: [55, 70, 80],
    mph: [4, 5, 7],
    lifeHours: 1_500,
    repairFactor: 0.32,
    repairPower: 2.1,
    valueClass: "planterDrill",
    ...d497,
  },
  combine: {
    label: "combine",
    also: ["self-propelled combine"],
    efficiencyPct: [65, 70, 80],
    mph: [2, 3, 5],
    lifeHours: 3_000,
    repairFactor: 0.04,
    repairPower: 2.1,
    valueClass: "combine",
    isSelfPropelled: true,
    ...d497,
  },
  combinePto: {
    label: "PTO combine",
    also: ["pull-type combine"],
    efficiencyPct: [60, 65, 75],
    mph: [2, 3, 5],
    lifeHours: 2_000,
    repairFactor: 0.12,
    repairPower: 2.3,
    valueClass: "otherHarvest",
    ...d497,
  },
  sprayer: {
    label: "boom sprayer",
    also: ["sprayer"],
    efficiencyPct: [50, 65, 80],
    mph: [3, 6.5, 7],
    lifeHours: 1_500,
    repairFactor: 0.41,
    repairPower: 1.3,
    valueClass: "miscellaneous",
    ...d497,
  },
  spreader: {
    label: "fertilizer spreader",
    also: ["spreader"],
    efficiencyPct: [60, 70, 80],
    mph: [5, 7, 10],
    lifeHours: 1_200,
    repairFactor: 0.63,
    repairPower: 1.3,
    valueClass: "miscellaneous",
    ...d497,
  },
} as const satisfies Record<string, FieldMachine>;

export type FieldMachineKey = keyof typeof fieldMachines;

export const machines = { ...tractors, ...fieldMachines } as const;

export type MachineKey = keyof typeof machines;
