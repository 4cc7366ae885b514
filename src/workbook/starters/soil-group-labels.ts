import { groupWords } from "../../functions/soil/guide-words";
import { labelsOf } from "./labels-of";

/** Soil groups without the numbered equations, which only one guide uses. */
export const soilGroupLabels = labelsOf(groupWords).filter((label) => !label.startsWith("equation"));
