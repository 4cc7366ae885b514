import { nutrientPrice } from "../../../functions/materials";
import { limits } from "../../../core/limits";
import { call } from "../../formula/call";
import { formula, type Expression } from "../../formula/expression";
import { lookUp, quiet } from "../../formula/natives";
import { place } from "../../formula/reference";
import type { EntriesBlock, Entry } from "../../model/block";
import { formats } from "../../model/cell";
import { oneOf, within } from "../../model/columns";
import { computedEntry, typedEntry } from "../../model/entries";
import { farmExamples, usualMaterials } from "../../scenario/farm-examples";
import { materialTable } from "./headers";
import { farmNames, named } from "./names";

const poundsPerTon = 2000;

/** Which materials the plan spreads, and what a pound of nutrient costs in them. */
export function fertilizerBlock(): EntriesBlock {
  return {
    kind: "entries",
    key: "fertilizer",
    title: "Fertilizer the plan uses",
    entries: [...nitrogenLines(), ...phosphateLines(), ...potashLines(), spreadingLine()],
  };
}

function nitrogenLines(): Entry[] {
  return [
    materialLine("nitrogen", "Nitrogen from", usualMaterials.nitrogen),
    priceLine("nitrogenPrice", "A pound of N costs", priceOf("nitrogen", "nitrogen")),
  ];
}

function phosphateLines(): Entry[] {
  const worthOfNitrogen = formula`${poundsPerTon}*${named("phosphateNitrogen")}/100*${named("nitrogenPrice")}`;
  return [
    materialLine("phosphate", "Phosphate from", usualMaterials.phosphate),
    percentLine("phosphateAnalysis", "P2O5 in it", fact("phosphate", "phosphate")),
    percentLine("phosphateNitrogen", "Nitrogen in it", fact("phosphate", "nitrogen")),
    tonLine("phosphateTonPrice", fact("phosphate", "price")),
    priceLine(
      "phosphatePrice",
      "A pound of P2O5 costs",
      priceOf("phosphate", "phosphate", worthOfNitrogen),
      "The nitrogen in it counted at its own price.",
    ),
  ];
}

function potashLines(): Entry[] {
  return [
    materialLine("potash", "Potash from", usualMaterials.potash),
    percentLine("potashAnalysis", "K2O in it", fact("potash", "potash")),
    tonLine("potashTonPrice", fact("potash", "price")),
    priceLine("potashPrice", "A pound of K2O costs", priceOf("potash", "potash")),
  ];
}

function spreadingLine(): Entry {
  return typedEntry(
    {
      key: "spreading",
      label: "Spreading",
      unit: "$/ac",
      format: formats.cents,
      name: farmNames.spreadingCost,
      says: "One pass, hired or your own.",
    },
    farmExamples.spreadingUsdPerAc,
    within(limits.price, "Spreading an acre"),
  );
}

type Nutrient = keyof typeof usualMaterials;
type Fact = "nitrogen" | "phosphate" | "potash" | "price";

function materialLine(key: Nutrient, label: string, start: string): Entry {
  const allow = oneOf({ table: materialTable.table, column: "material" }, "One of the fertilizers on offer above.");
  return typedEntry({ key, label }, start, allow);
}

function percentLine(
  name: "phosphateAnalysis" | "phosphateNitrogen" | "potashAnalysis",
  label: string,
  value: Expression,
): Entry {
  return computedEntry({ key: name, label, unit: "%", format: formats.one, name: farmNames[name] }, quiet(value));
}

function tonLine(name: "phosphateTonPrice" | "potashTonPrice", value: Expression): Entry {
  return computedEntry(
    { key: name, label: "A ton costs", unit: "$/ton", format: formats.dollars, name: farmNames[name] },
    quiet(value),
  );
}

function priceLine(
  name: "nitrogenPrice" | "phosphatePrice" | "potashPrice",
  label: string,
  value: Expression,
  says?: string,
): Entry {
  const line = { key: name, label, unit: "$/lb", format: formats.perPound, name: farmNames[name] };
  return computedEntry({ ...line, ...(says !== undefined && { says }) }, value);
}

/** What the table of materials says about the material chosen for a nutrient. */
function fact(nutrient: Nutrient, column: Fact): Expression {
  const chosen = place(`fertilizer.${nutrient}`);
  return lookUp(chosen, materialTable.all("material"), materialTable.all(column));
}

function priceOf(nutrient: Nutrient, analysis: Fact, otherNutrientsValue?: Expression): Expression {
  return call(nutrientPrice, {
    pricePerTon: fact(nutrient, "price"),
    analysis: fact(nutrient, analysis),
    ...(otherNutrientsValue && { otherNutrientsValue }),
  });
}
