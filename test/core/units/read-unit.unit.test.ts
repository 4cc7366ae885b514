import { readUnit } from "../../../src/core/units/read-unit";
import { namedCompounds, simpleUnits, usualCompounds } from "../../../src/core/units/unit-table";

describe("readUnit", () => {
  it.each([
    ["acres", "ac"],
    ["A", "ac"],
    ["Sq. Ft.", "ft2"],
    ["ft²", "ft2"],
    ["m^2", "m2"],
    ["U.S. gallons", "gal"],
    ["US gal", "gal"],
    ["fl. oz.", "fl oz"],
    ["USD", "$"],
    ["days", "day"],
    ["Tons", "ton"],
    ["metric tons", "t"],
    ["LBS", "lb"],
    ["pounds per acre", "lb/ac"],
    ["lb ac-1", "lb/ac"],
    ["kg ha⁻¹", "kg/ha"],
    ["kg · ha^-1", "kg/ha"],
    ["Bushels / Acre", "bu/ac"],
    ["bu per A", "bu/ac"],
    ["dollars per ton", "$/ton"],
    ["cents/bu", "¢/bu"],
    ["GPA", "gal/ac"],
    ["gallons per acre", "gal/ac"],
    ["gpm", "gal/min"],
    ["miles per hour", "mph"],
    ["miles/hour", "mi/h"],
    ["PSI", "psi"],
    ["pounds per square inch", "psi"],
    ["parts per million", "ppm"],
    ["℃", "°C"],
    ["deg F", "°F"],
    ["µS/cm", "uS/cm"],
    ["Mg/ha", "t/ha"],
    ["MG/KG", "mg/kg"],
    ["meq/100g", "meq/100 g"],
    ["1000 gal per acre", "1000 gal/ac"],
    ["g/100 kg", "g/100 kg"],
  ])("reads %j as %s", (text, label) => {
    expect(readUnit(text)?.label).toBe(label);
  });
  it.each(["T", "T/ac", "ML", "", "/", "lb/", "lb/ac/yr", "furlongs", "lb/°F", "constructor", "seven"])(
    "does not guess at %j",
    (text) => {
      expect(readUnit(text)).toBeUndefined();
    },
  );
  it("tells a tonne from a milligram by its capital: 1 Mg is 1,000 kg, 1 mg is 1/1,000,000 kg", () => {
    expect(readUnit("Mg")?.size).toBe(1000);
    expect(readUnit("mg")?.size).toBe(1e-6);
  });
  it("takes the bushel of a test weight as a volume, that of a price as a weight", () => {
    expect(readUnit("lb/bu")).toMatchObject({ quantity: "weight per volume", bushels: 0 });
    expect(readUnit("kg/bu")).toMatchObject({ quantity: "weight per volume", bushels: 0 });
    expect(readUnit("$/bu")).toMatchObject({ quantity: "money per weight", bushels: -1 });
    expect(readUnit("bu/ac")).toMatchObject({ quantity: "weight per area", bushels: 1 });
  });
  it.each([...simpleUnits, ...namedCompounds].flatMap(({ label, also }) => [label, ...also].map((as) => [as, label])))(
    "no other unit takes the spelling %j of %s",
    (spelling, label) => {
      expect(readUnit(spelling)?.label).toBe(label);
    },
  );
  it.each(usualCompounds)("reads the listed %s as itself", (label) => {
    expect(readUnit(label)?.label).toBe(label);
  });
});
