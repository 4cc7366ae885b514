import type { Guide, NeedRule, NeedSystem } from "./guide";
import { equationKey } from "./words";

/** square, linear and constant of Table 2.4, in its order. */
const curves: readonly (readonly [square: number, linear: number, constant: number])[] = [
  [0.0467, -13, 900],
  [0.0202, -6.37, 500],
  [0.01, -3.5, 300],
  [0.0175, -4.46, 300],
  [0.0193, -4.9, 300],
  [0.0272, -6.08, 300],
  [0.01, -3.25, 250],
  [0.0173, -4.64, 250],
  [0.0102, -3, 220],
  [0.0103, -2.9, 200],
  [0.019, -4.2, 200],
  [0.0053, -2, 180],
  [0.012, -2.9, 165],
  [0.0116, -2.75, 150],
  [0.014, -3.2, 150],
  [0.0227, -4.42, 150],
  [0.0084, -2.19, 140],
  [0.012, -3, 120],
  [0.0044, -1.6, 100],
  [0.012, -2.4, 80],
];

const rules: readonly NeedRule[] = curves.map(([square, linear, constant], place) => ({
  crops: "all",
  group: equationKey(place + 1),
  form: { kind: "indexCurve", square, linear, constant },
  mark: "V",
  source: "ncda-circular1-2014",
  locator: `Table 2.4, equation ${place + 1}`,
  note: "Published as the result give or take 10 lb. Table 2.3 of the circular names the equation of each crop.",
}));

const half: NeedSystem = {
  extractants: ["mehlich3"],
  testUnit: "index",
  highestTest: 3000,
  depthIn: null,
  roundTo: 1,
  removalSet: null,
  rules,
};

/** North Carolina: twenty curves in the Mehlich-3 volume index, the same for phosphate and potash. */
export const northCarolina: Guide = {
  label: "NC",
  also: ["North Carolina"],
  title: "Circular 1, Crop Fertilization Based on North Carolina Soil Tests",
  year: "2014",
  sources: ["ncda-circular1-2014"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: half,
  K2O: half,
};
