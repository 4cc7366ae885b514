import type { Cited } from "../table";

/** Fuel of a season's mixed work: gallons an hour for each rated PTO horsepower. */
export const fuels = {
  diesel: { label: "diesel", also: ["diesel fuel"], galPerHpHour: 0.044, mark: "V", source: "isu-a3-29" },
  gasoline: { label: "gasoline", also: ["gas", "petrol"], galPerHpHour: 0.06, mark: "V", source: "isu-a3-29" },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[]; galPerHpHour: number }>;

export type FuelKey = keyof typeof fuels;

/** Diesel by load: L/h = (slope X + idle) (1 - (-cross X N + throttle N)) kW, load X as a share, throttle N in %. */
export const dieselByLoad = {
  slope: 0.22,
  idle: 0.096,
  cross: 0.0045,
  throttle: 0.008_77,
  mark: "M",
  source: "grisso-2004",
  locator: "also ASABE D497.7",
} as const satisfies Cited & Record<string, unknown>;

/** Oil and lubricants, share of the fuel cost in %. */
export const oilShare = { pct: 15, mark: "V", source: "isu-a3-29" } as const satisfies Cited & { pct: number };

/** Hours of labor for each hour the machine runs. */
export const laborHours = {
  perMachineHour: 1.1,
  mark: "V",
  source: "isu-a3-29",
  note: "Iowa State prints 1.1 to 1.2 hours of labor for an hour of the machine.",
} as const satisfies Cited & Record<string, unknown>;

/** Taxes, insurance and housing, % of the purchase price a year. */
export const ownershipExtras = {
  pct: 1,
  mark: "M",
  source: "isu-a3-29",
  note: "Taxes, insurance and housing at 1 % of the price; the standard EP496 takes 2 %.",
} as const satisfies Cited & Record<string, unknown>;
