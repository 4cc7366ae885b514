import { nutrientPrice } from "../../../../functions/materials/nutrient-price";
import { call } from "../../../formula/call";
import { formula, joined, type Expression } from "../../../formula/expression";
import { lookUp, quiet } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { PlacedCell, RowsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf } from "../../../model/columns";
import { headRow } from "../../../model/rows";
import { usualMaterials } from "../../../scenario/farm-examples";
import { materialTable } from "../headers";
import { farmNames, named, type FarmName } from "../names";

type Nutrient = keyof typeof usualMaterials;
type Fact = Nutrient | "price";

interface Line {
  readonly nutrient: Nutrient;
  readonly symbol: string;
  /** Nutrients beside it that are credited at their own price. */
  readonly credited: readonly Nutrient[];
}

const lines: readonly Line[] = [
  { nutrient: "nitrogen", symbol: "N", credited: [] },
  { nutrient: "phosphate", symbol: "P2O5", credited: ["nitrogen"] },
  { nutrient: "potash", symbol: "K2O", credited: ["nitrogen"] },
  { nutrient: "sulfur", symbol: "S", credited: ["nitrogen"] },
  { nutrient: "zinc", symbol: "Zn", credited: ["nitrogen", "sulfur"] },
];

/** The material a plan starts with for a nutrient stands in the cell of this key. */
export const chosenMaterial = (nutrient: Nutrient) => place(`fertilizer.${nutrient}`);

/** Which materials the plan spreads, and what a pound of nutrient costs in them. */
export function planMaterialsBlock(): RowsBlock {
  return {
    kind: "rows",
    title: "What the plan spreads",
    rows: [headRow("Material", "For", "In it %", "N in it %", "$/ton", "$/lb"), ...lines.map(lineOf)],
  };
}

function lineOf({ nutrient, symbol, credited }: Line): PlacedCell[] {
  const figure = (name: FarmName, content: Expression, format: string, says: string): PlacedCell => ({
    content,
    format,
    style: "computed",
    named: { name: farmNames[name], says },
  });
  const nitrogen: PlacedCell =
    nutrient === "nitrogen"
      ? { style: "computed" }
      : figure(
          `${nutrient}Nitrogen`,
          quiet(fact(nutrient, "nitrogen")),
          formats.one,
          `N in the ${nutrient} product, %`,
        );
  return [
    {
      key: `fertilizer.${nutrient}`,
      content: usualMaterials[nutrient],
      style: "inputText",
      allow: oneOf({ table: materialTable.table, column: "material" }, "One of the fertilizers on offer above."),
    },
    { content: symbol, style: "label" },
    figure(`${nutrient}Analysis`, quiet(fact(nutrient, nutrient)), formats.one, `${symbol} in its product, %`),
    nitrogen,
    figure(`${nutrient}TonPrice`, quiet(fact(nutrient, "price")), formats.dollars, `The ${nutrient} product, $/ton`),
    figure(`${nutrient}Price`, priceOf(nutrient, credited), formats.perPound, `A pound of ${symbol}, $`),
  ];
}

/** What the table of materials says about the material chosen for a nutrient. */
function fact(nutrient: Nutrient, column: Fact): Expression {
  return lookUp(chosenMaterial(nutrient), materialTable.all("material"), materialTable.all(column));
}

function priceOf(nutrient: Nutrient, credited: readonly Nutrient[]): Expression {
  const worth = joined(
    credited.map((other) => formula`${fact(nutrient, other)}*${named(`${other}Price`)}`),
    "+",
  );
  return call(nutrientPrice, {
    pricePerTon: fact(nutrient, "price"),
    analysis: fact(nutrient, nutrient),
    ...(credited.length > 0 && { otherNutrientsValue: formula`20*(${worth})` }),
  });
}
