import type { StarterCrop } from "./crop-examples";

/**
 * A season's weed control on the invented farm, by active ingredient. Amounts, prices and what is said to control the
 * driver weed are invented; a label decides all of them.
 */
export interface ProtectionExample {
  readonly pass: ProtectionPass;
  readonly ingredient: string;
  readonly effective: "yes" | "no";
  readonly amount: number;
  readonly unit: "fl oz/ac" | "pt/ac" | "qt/ac" | "dry oz/ac";
  /** $ a gallon, or a pound of a dry product. */
  readonly price: number;
  readonly lastSeason: string | null;
}

export type ProtectionPass = "burndown" | "at planting" | "early post" | "late post";

interface ProgramExample {
  readonly driverWeed: string;
  readonly uses: readonly ProtectionExample[];
}

export const sprayerExample = { tankGal: 1200, gallonsPerAc: 15 } as const;

export const protectionExamples: Readonly<Record<StarterCrop, ProgramExample>> = {
  corn: {
    driverWeed: "waterhemp",
    uses: [
      use("at planting", "S-metolachlor", "yes", [1.5, "pt/ac", 80], "S-metolachlor"),
      use("at planting", "atrazine", "no", [1.5, "qt/ac", 24], "metribuzin"),
      use("at planting", "mesotrione", "yes", [4.5, "fl oz/ac", 220], "fomesafen"),
      use("early post", "glyphosate", "no", [30, "fl oz/ac", 30], "glyphosate"),
      use("early post", "mesotrione", "yes", [3, "fl oz/ac", 220], null),
    ],
  },
  soybean: {
    driverWeed: "waterhemp",
    uses: [
      use("burndown", "glyphosate", "no", [30, "fl oz/ac", 30], "S-metolachlor"),
      use("at planting", "S-metolachlor", "yes", [1.3, "pt/ac", 80], "atrazine"),
      use("at planting", "metribuzin", "yes", [6, "dry oz/ac", 22], "mesotrione"),
      use("early post", "fomesafen", "yes", [16, "fl oz/ac", 120], "glyphosate"),
      use("early post", "glyphosate", "no", [30, "fl oz/ac", 30], null),
    ],
  },
  wheat: {
    driverWeed: "horseweed",
    uses: [
      use("early post", "thifensulfuron", "no", [0.5, "dry oz/ac", 300], "glyphosate"),
      use("early post", "2,4-D", "yes", [16, "fl oz/ac", 34], "fomesafen"),
    ],
  },
};

function use(
  pass: ProtectionPass,
  ingredient: string,
  effective: "yes" | "no",
  [amount, unit, price]: readonly [number, ProtectionExample["unit"], number],
  lastSeason: string | null,
): ProtectionExample {
  return { pass, ingredient, effective, amount, unit, price, lastSeason };
}
