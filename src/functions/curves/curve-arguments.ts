import { curveLimits } from "../../core/curves/curve-limits";
import { responseModels, type ResponseModelKey } from "../../core/curves/response-models";
import { curveParameters } from "./curve-parameters";
import { choice, listWithGaps, optional, quantity, vocabulary } from "../frame";

const responseModelWords = vocabulary<ResponseModelKey>("response model", responseModels);

export const x = listWithGaps(quantity(curveLimits.rate, { says: "rate" }), {
  says: "rate of the input on each strip, such as lb N/ac or seeds/ac",
});
export const y = listWithGaps(quantity(curveLimits.yield, { says: "yield" }), {
  says: "yield of each strip, beside its rate; half-filled pairs are left out",
});
export const model = choice(responseModelWords, { says: "the curve" });
export const parameters = curveParameters();
const saysRatio = "price of a unit of input over the price of a bushel: $0.50 a lb with $4.50 corn is 0.111";
export const priceRatio = quantity(curveLimits.priceRatio, { says: saysRatio });
export const highestRate = optional(
  quantity(curveLimits.rate, { says: "highest rate of the trial, which the answer does not pass" }),
  null,
  "the one in the table, when parameters is one; else the curve is followed as far as it goes",
);

export const curveCautions = [
  "A curve from one field and year is that field and year: rates swing widely from site to site.",
  "Models that fit alike can name very different best rates; lay them beside each other with RESPONSECOMPARE. Nutrient rules of the place come first.",
];
