import { formula, type Expression, type Term } from "../../formula/expression";
import { lookUp } from "../../formula/natives";
import type { MatrixBlock } from "../../model/block";
import { oneOf } from "../../model/columns";
import type { CropChoice } from "../choices";
import { cropTable } from "./headers";

/** A cell for one of the crops. */
export const cropList = oneOf({ table: cropTable.table, column: "crop" }, "One of the crops of the plan.");

/** What the table of crops says about a crop. */
export function ofCrop(crop: Term, column: keyof typeof cropTable.headers): Expression {
  return lookUp(crop, cropTable.all("crop"), cropTable.all(column));
}

/** One column a crop; its head follows the table of crops, so that a changed name changes everywhere. */
export function cropHeads(crops: readonly CropChoice[]): MatrixBlock["columns"] {
  return crops.map((_, index) => ({
    key: `crop${index + 1}`,
    head: formula`INDEX(${cropTable.all("crop")},${index + 1})&""`,
  }));
}
