import { bushelWeight as bushelWeightOf } from "../../core/units/bushel-weight";
import { convertUnit } from "../../core/units/convert-unit";
import { kilogramPerPound, poundPerTon } from "../../core/units/units";
import { grains } from "../../reference/grain";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { unit } from "./unit-words";
import { grainWords } from "../words";

export const unitConvert = worksheetFunction({
  name: "UNITCONVERT",
  family: "units",
  summary: "The same quantity in another unit; bushels by the crop's bushel weight.",
  asks: [
    "convert units",
    "bushels per acre to tons per hectare",
    "pounds per acre to kilograms",
    "how many acres in a hectare",
  ],
  args: {
    value: quantity({ min: -1e15, max: 1e15, unit: "" }, { says: "what to convert" }),
    from: unit({ says: "the unit it is in, such as bu/ac" }),
    to: unit({ says: "the unit wanted, such as t/ha" }),
    crop: optional(
      choice(grainWords, { says: "whose bushels, where a bushel has to become another weight" }),
      null,
      "asked for when bushels need it",
    ),
  },
  returns: { shape: "one", unit: "the unit asked for", says: "the value in that unit" },
  sources: [
    "nist-sp-811-2008",
    "nist-hb-44-c",
    "mn-statutes-239.32",
    "usda-weight-per-bushel",
    "uwex-bushels-test-weight",
  ],
  example: {
    call: [200, "bu/ac", "t/ha", "corn"],
    gives: 12.5535,
    tolerance: 0.0001,
    because: "by hand: 200 × 56 × 0.45359237 / 1,000 = 5.0802345 t; / 0.40468564 ha",
  },
  compute: ({ value, from, to, crop }) => convertUnit({ value, from, to, grain: crop }),
  value: (result) => result.value,
  working: (result, { value }) => [
    line("Given", value, result.from.label),
    ...(result.bushel
      ? [line(`Bushel of ${grains[result.bushel.grain].label}`, result.bushel.bushelWeightLb, "lb/bu")]
      : []),
    result.from.quantity === "temperature"
      ? line(`One degree ${result.from.label} is`, result.factor, result.to.label)
      : line(`1 ${result.from.label} is`, result.factor, result.to.label),
    line("Converted", result.value, result.to.label),
  ],
  cites: (result) => (result.bushel ? [result.bushel] : []),
});

export const bushelWeight = worksheetFunction({
  name: "BUSHELWEIGHT",
  family: "units",
  summary: "What a trade bushel of a crop weighs.",
  asks: ["how much does a bushel weigh", "pounds in a bushel", "standard bushel weight"],
  args: { crop: choice(grainWords, { says: "crop or grain" }) },
  returns: { shape: "one", unit: "lb/bu", says: "the weight that a bushel is paid on, whatever the test weight" },
  sources: [
    "mn-statutes-239.32",
    "usda-weight-per-bushel",
    "uwex-bushels-test-weight",
    "canada-grain-conversions",
    "trade-bushel-weights",
  ],
  example: { call: ["soybeans"], gives: 60, because: "printed: soybean, 60 lb at 13 % moisture" },
  compute: ({ crop }) => bushelWeightOf(crop),
  value: (row) => row.bushelWeightLb,
  working: (row) => [
    line(`Bushel of ${grains[row.grain].label}`, row.bushelWeightLb, "lb"),
    line("In kilograms", row.bushelWeightLb * kilogramPerPound, "kg"),
    line("Bushels in a ton of 2,000 lb", poundPerTon / row.bushelWeightLb, "bu"),
    line("Bushels in a tonne", 1000 / (row.bushelWeightLb * kilogramPerPound), "bu"),
    ...(row.note ? [line("Note", row.note)] : []),
  ],
  cites: (row) => [row],
});
