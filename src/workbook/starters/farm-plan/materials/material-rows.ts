import { materialExamples } from "../../../scenario/farm-examples";

const spareMaterials = 3;

/** Rows of the table of materials, those still free included. */
export const materialRows = materialExamples.length + spareMaterials;
