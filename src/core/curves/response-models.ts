import { linearPlateau } from "./models/linear-plateau";
import { linear } from "./models/linear";
import { mitscherlich, mitscherlichFromZero } from "./models/mitscherlich";
import { quadraticPlateau } from "./models/quadratic-plateau";
import { quadratic } from "./models/quadratic";
import { squareRoot } from "./models/square-root";
import type { ResponseModel } from "./response-model";

/** Every curve that can be fitted, in the order they are compared. */
export const responseModels = {
  "quadratic-plateau": quadraticPlateau,
  "linear-plateau": linearPlateau,
  quadratic,
  linear,
  mitscherlich,
  "mitscherlich-zero": mitscherlichFromZero,
  "square-root": squareRoot,
} as const satisfies Record<string, ResponseModel>;

export type ResponseModelKey = keyof typeof responseModels;
