import {
  cubicInchPerVolumeBushel,
  cubicMeterPerGallon,
  fluidOuncePerGallon,
  footPerMile,
  hourPerDay,
  inchPerFoot,
  joulePerBtu,
  kilogramPerPound,
  meterPerFoot,
  meterPerInch,
  ouncePerPound,
  pintPerGallon,
  poundPerHundredweight,
  poundPerLongTon,
  poundPerTon,
  quartPerGallon,
  secondPerHour,
  secondPerMinute,
  squareFootPerAcre,
  squareMeterPerAcre,
  squareMeterPerHectare,
  standardGravity,
} from "./units";

/** What a unit measures; two units convert when these words agree. */
export type Quantity =
  | "length"
  | "area"
  | "volume"
  | "weight"
  | "time"
  | "money"
  | "seeds"
  | "plants"
  | "temperature"
  | "pressure"
  | "energy"
  | "power"
  | "share"
  | "exchange capacity"
  | "salinity";

export interface SimpleUnit {
  readonly quantity: Quantity;
  readonly label: string;
  readonly also: readonly string[];
  /** In the base unit of its quantity: m, m², m³, kg, s, $, Pa, J, W, fraction, and one each. */
  readonly size: number;
  /** Where its zero lies on the base scale's degrees: 32 for °F. */
  readonly zero?: number;
  /** The trade bushel: its size is that of one bushel and waits for the crop. */
  readonly isBushel?: true;
}

const mile = footPerMile * meterPerFoot;
const squareFoot = meterPerFoot ** 2;
const cubicFoot = meterPerFoot ** 3;
const cubicMeterPerLiter = 1 / 1000;
const psi = (kilogramPerPound * standardGravity) / meterPerInch ** 2;
const footPoundForcePerSecond = kilogramPerPound * standardGravity * meterPerFoot;

/** A bushel basket struck level: bins and test weights are measured in it, grain is paid by weight. */
export const volumeBushel: SimpleUnit = {
  quantity: "volume",
  label: "volume bushel",
  also: ["bushel by volume", "bushel volume", "volume bu", "winchester bushel", "level bushel"],
  size: cubicInchPerVolumeBushel * meterPerInch ** 3,
};

/**
 * Units by themselves; compounds such as lb/ac are put together from these. Our own table rather than a units
 * library: bushels by crop, $/ton against $/lb and the trade's spellings are most of the work, and the arithmetic
 * stays in sight.
 *
 * @source nist-sp-811-2008
 */
export const simpleUnits: readonly SimpleUnit[] = [
  ...of("length", [
    ["in", meterPerInch, "inch", "inches"],
    ["ft", meterPerFoot, "foot", "feet"],
    ["yd", 3 * meterPerFoot, "yard"],
    ["rod", 16.5 * meterPerFoot],
    ["chain", 66 * meterPerFoot],
    ["mi", mile, "mile"],
    ["mm", 0.001, "millimeter", "millimetre"],
    ["cm", 0.01, "centimeter", "centimetre"],
    ["m", 1, "meter", "metre"],
    ["km", 1000, "kilometer", "kilometre"],
  ]),
  ...of("area", [
    ["ac", squareMeterPerAcre, "acre", "a"],
    ["ha", squareMeterPerHectare, "hectare"],
    ["ft2", squareFoot, "sq ft", "square foot", "square feet"],
    ["yd2", 9 * squareFoot, "sq yd", "square yard"],
    ["in2", meterPerInch ** 2, "sq in", "square inch", "square inches"],
    ["mi2", mile ** 2, "sq mi", "square mile", "section"],
    ["m2", 1, "sq m", "square meter", "square metre"],
    ["km2", 1e6, "sq km", "square kilometer", "square kilometre"],
  ]),
  ...of("volume", [
    ["gal", cubicMeterPerGallon, "gallon"],
    ["qt", cubicMeterPerGallon / quartPerGallon, "quart"],
    ["pt", cubicMeterPerGallon / pintPerGallon, "pint"],
    ["fl oz", cubicMeterPerGallon / fluidOuncePerGallon, "fluid ounce", "liquid ounce", "liq oz"],
    ["1000 gal", 1000 * cubicMeterPerGallon, "thousand gallon", "kgal"],
    ["imperial gal", 4.546_09 * cubicMeterPerLiter, "imperial gallon", "imp gal", "uk gal"],
    ["L", cubicMeterPerLiter, "liter", "litre"],
    ["mL", cubicMeterPerLiter / 1000, "milliliter", "millilitre", "cc", "cm3"],
    ["hL", 100 * cubicMeterPerLiter, "hectoliter", "hectolitre"],
    ["m3", 1, "cu m", "cubic meter", "cubic metre"],
    ["ft3", cubicFoot, "cu ft", "cubic foot", "cubic feet"],
    ["yd3", 27 * cubicFoot, "cu yd", "cubic yard"],
    ["in3", meterPerInch ** 3, "cu in", "cubic inch", "cubic inches"],
    ["ac-in", (squareFootPerAcre / inchPerFoot) * cubicFoot, "acre inch", "acre inches"],
    ["ac-ft", squareFootPerAcre * cubicFoot, "acre foot", "acre feet"],
  ]),
  volumeBushel,
  ...of("weight", [
    ["lb", kilogramPerPound, "pound", "#"],
    ["oz", kilogramPerPound / ouncePerPound, "ounce", "dry oz", "oz weight"],
    ["cwt", kilogramPerPound * poundPerHundredweight, "hundredweight", "100 lb"],
    ["ton", kilogramPerPound * poundPerTon, "short ton"],
    ["long ton", kilogramPerPound * poundPerLongTon],
    ["g", 0.001, "gram", "gm"],
    ["mg", 1e-6, "milligram"],
    ["kg", 1, "kilogram", "kilo"],
    ["100 kg", 100, "quintal", "decitonne", "dt"],
    ["t", 1000, "tonne", "metric ton", "metric tonne", "mt"],
  ]),
  { quantity: "weight", label: "bu", also: ["bushel", "bsh", "trade bushel"], size: 1, isBushel: true },
  ...of("time", [
    ["s", 1, "sec", "second"],
    ["min", secondPerMinute, "minute"],
    ["h", secondPerHour, "hr", "hour"],
    ["day", secondPerHour * hourPerDay, "d"],
  ]),
  ...of("money", [
    ["$", 1, "dollar", "usd"],
    ["¢", 0.01, "cent"],
  ]),
  ...of("seeds", [
    ["seeds", 1, "seed", "kernel"],
    ["1000 seeds", 1000, "thousand seeds", "1000 kernels"],
  ]),
  ...of("plants", [["plants", 1, "plant"]]),
  { quantity: "temperature", label: "°C", also: ["C", "celsius", "deg C", "degrees C"], size: 1, zero: 0 },
  { quantity: "temperature", label: "°F", also: ["F", "fahrenheit", "deg F", "degrees F"], size: 5 / 9, zero: 32 },
  { quantity: "temperature", label: "K", also: ["kelvin"], size: 1, zero: 273.15 },
  ...of("pressure", [
    ["psi", psi, "pounds per square inch", "lb/in2", "lb/sq in"],
    ["kPa", 1000, "kilopascal"],
    ["Pa", 1, "pascal"],
    ["bar", 100_000],
  ]),
  ...of("energy", [
    ["BTU", joulePerBtu, "british thermal unit"],
    ["therm", 100_000 * joulePerBtu],
    ["kWh", 1000 * secondPerHour, "kilowatt hour"],
    ["MJ", 1e6, "megajoule"],
    ["kJ", 1000, "kilojoule"],
  ]),
  ...of("power", [
    ["hp", 550 * footPoundForcePerSecond, "horsepower"],
    ["kW", 1000, "kilowatt"],
    ["W", 1, "watt"],
  ]),
  ...of("share", [
    ["%", 0.01, "percent", "pct"],
    ["ppm", 1e-6, "parts per million"],
    ["ppb", 1e-9, "parts per billion"],
    ["fraction", 1, "share"],
  ]),
  ...of("exchange capacity", [
    ["meq/100 g", 1, "meq per 100 g", "milliequivalent per 100 g"],
    ["cmol/kg", 1, "cmolc/kg", "centimole per kg"],
  ]),
  ...of("salinity", [
    ["dS/m", 1, "decisiemens per meter"],
    ["mmho/cm", 1, "mmhos/cm"],
    ["mS/cm", 1],
    ["uS/cm", 0.001],
  ]),
];

type NamedQuantity = Quantity | `${Quantity} per ${Quantity}`;

/** A compound with a name or meaning of its own, looked up before a text is split at its slash. */
export interface NamedCompound {
  readonly quantity: NamedQuantity;
  readonly label: string;
  readonly also: readonly string[];
  readonly size: number;
}

export const namedCompounds: readonly NamedCompound[] = [
  { quantity: "length per time", label: "mph", also: ["miles per hour"], size: mile / secondPerHour },
  { quantity: "length per time", label: "km/h", also: ["kph", "kmh"], size: 1000 / secondPerHour },
  { quantity: "volume per time", label: "gal/min", also: ["gpm"], size: cubicMeterPerGallon / secondPerMinute },
  { quantity: "volume per time", label: "ft3/s", also: ["cfs"], size: cubicFoot },
  { quantity: "volume per area", label: "gal/ac", also: ["gpa"], size: cubicMeterPerGallon / squareMeterPerAcre },
  {
    quantity: "volume per area",
    label: "in of water",
    also: ["inches of water", "inch of rain", "inches of rain", "in of rain"],
    size: meterPerInch,
  },
  { quantity: "volume per area", label: "mm of water", also: ["mm of rain"], size: 0.001 },
  { quantity: "weight per volume", label: "lb/bu", also: ["test weight"], size: kilogramPerPound / volumeBushel.size },
];

/** Compounds people use most, for lists and forms; any other pair of units is understood as well. */
export const usualCompounds = [
  ..."lb/ac kg/ha oz/ac g/ha ton/ac t/ha bu/ac cwt/ac bu/ha".split(" "),
  ..."L/ha qt/ac pt/ac mL/ha".split(" "),
  "fl oz/ac",
  "1000 gal/ac",
  ..."$/lb $/kg $/cwt $/ton $/t $/bu ¢/bu $/gal $/L $/ac $/ha".split(" "),
  ..."seeds/ac seeds/ha seeds/ft2 seeds/m2 seeds/lb seeds/kg plants/ac plants/ha plants/ft2 plants/m2".split(" "),
  ..."ft/min ft/s m/s in/h in/day mm/day ft/day m/day".split(" "),
  ..."gal/h L/min L/h ac/h ha/h BTU/h".split(" "),
  ..."lb/gal kg/L g/L mg/L kg/hL kg/m3 lb/ft3 lb/ac-in".split(" "),
  "lb/1000 gal",
  ..."g/kg mg/kg lb/ton kg/t oz/cwt".split(" "),
  "fl oz/cwt",
  "g/100 kg",
] as const;

type Entry = readonly [label: string, size: number, ...also: string[]];

function of(quantity: Quantity, entries: readonly Entry[]): SimpleUnit[] {
  return entries.map(([label, size, ...also]) => ({ quantity, label, also, size }));
}
