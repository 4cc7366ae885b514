import { chlorosisRisk as chlorosisRiskOf } from "../../core/soil/chlorosis-risk";
import { soilLimits } from "../../core/soil/soil-limits";
import { line, percent, quantity, worksheetFunction } from "../frame";

export const chlorosisRisk = worksheetFunction({
  name: "CHLOROSISRISK",
  family: "soil",
  summary: "Risk that soybean yellows from lack of iron, by carbonate and salts of the soil.",
  asks: ["iron chlorosis", "yellow soybeans", "will beans turn yellow here"],
  args: {
    carbonate: percent(soilLimits.carbonate, { says: "calcium carbonate equivalent of the soil", smallIsUsual: true }),
    salts: quantity(soilLimits.salts, { says: "soluble salts, electrical conductivity of a 1:1 paste" }),
  },
  returns: { shape: "one", unit: "", says: "low, moderate, high, very high or extreme" },
  sources: ["chlorosis-risk-2021"],
  cautions: [
    "pH alone tells little; high nitrate and wet, cool soil make it worse.",
    "An ortho-ortho EDDHA iron chelate goes in the furrow at the rate of its label. No soil-test iron rate is meaningful.",
  ],
  example: { call: [4, 0.6], gives: "high", because: "printed: carbonate 2.6 to 5.0 %, salts 0.51 to 1.00 dS/m" },
  compute: ({ carbonate, salts }) => chlorosisRiskOf(carbonate, salts),
  value: (result) => result.risk,
  working: (result, { carbonate, salts }) => [
    line("Carbonate", carbonate, "%"),
    line("Salts", salts, "dS/m"),
    line("Risk", result.risk),
    ...(result.risk === "low"
      ? []
      : [
          line(
            "In this order",
            "a tolerant variety, another field, wider rows or thicker stands in the row, an oat companion that takes up nitrate, an iron chelate in the furrow",
          ),
        ]),
  ],
  cites: (result) => [result.row],
});
