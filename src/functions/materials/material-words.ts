import { liquidDensity, materials, type MaterialKey } from "../../reference/materials";
import { vocabulary, type Word } from "../frame";

export const materialWords = vocabulary<MaterialKey>("material", materials);

const liquids: Readonly<Record<string, Word>> = Object.fromEntries(
  liquidDensity.rows.map(({ material }) => [material, materials[material]]),
);

/** Materials whose gallon has a published weight. */
export const liquidWords = vocabulary("liquid", liquids as Readonly<Record<MaterialKey, Word>>); // finds no material but those
