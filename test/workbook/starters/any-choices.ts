import fc from "fast-check";
import { allFarmParts, cropChoice, starterCrops, starters, type StarterChoices } from "../../../src/workbook/starters";

/** Choices that a person may make: any crops, 1 to 60 fields, any parts, with the invented farm or without. */
export const anyChoices: fc.Arbitrary<StarterChoices> = fc.record({
  farmName: fc.constantFrom("Windmill Hollow Farm", "Hill & Dale", 'The "Old" Place', "O'Neil Acres"),
  guide: fc.constant("IN-MI-OH"),
  crops: fc.shuffledSubarray([...starterCrops], { minLength: 1 }).map((crops) => crops.map(cropChoice)),
  numberOfFields: fc.constantFrom(1, 2, 10, 17, 60),
  withDemo: fc.boolean(),
  parts: fc.subarray([...allFarmParts]),
});

export const anyStarter = fc.constantFrom(...starters);
