import { crops, type CropKey } from "../reference/crops";
import { vocabulary } from "./frame";

/** The closed word lists that arguments accept; the words themselves are reference data. */
export const cropWords = vocabulary<CropKey>("crop", crops);
