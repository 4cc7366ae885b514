import { sprayLimits } from "../../../../core/protection/spray-limits";
import { fluidOuncePerGallon, ouncePerPound, pintPerGallon, quartPerGallon } from "../../../../core/units/units";
import { siteOfAction } from "../../../../functions/protection/site-of-action";
import { tankFill } from "../../../../functions/protection/tank";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import { formats } from "../../../model/cell";
import { computed, computedWords, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { StarterCrop } from "../../../scenario/crop-examples";
import { protectionExamples, type ProtectionPass } from "../../../scenario/protection-examples";
import { ingredientNames, programTables } from "./protection-headers";

const programRows = 7;
export const passWords: readonly ProtectionPass[] = ["burndown", "at planting", "early post", "late post"];
export const sprayer = (key: string) => place(`sprayer.${key}`);

/** Units of product with how many of them make the gallon or pound that is priced. */
const units = {
  "fl oz/ac": fluidOuncePerGallon,
  "pt/ac": pintPerGallon,
  "qt/ac": quartPerGallon,
  "gal/ac": 1,
  "dry oz/ac": ouncePerPound,
  "lb/ac": 1,
} as const;

/** The passes of a crop with ingredient, group, cost and what goes into a tank. */
export function programBlock(crop: StarterCrop, withDemo: boolean): TableBlock {
  const own = programTables[crop].own;
  return tableBlock(
    programTables[crop],
    { rows: programRows, wholeLabel: "Whole season" },
    { ...typedColumns(crop, withDemo), ...answerColumns(own, programTables[crop].all("cost")) },
  );
}

function typedColumns(crop: StarterCrop, withDemo: boolean) {
  const uses = withDemo ? protectionExamples[crop].uses : [];
  const ingredient = oneOf(
    { table: ingredientNames.table, column: "ingredient" },
    "An active ingredient of the label, one a row; the names stand on the last sheet.",
  );
  return {
    pass: typedWords(pick(uses, "pass"), { width: 18, allow: oneOf(passWords, "When it is sprayed.") }),
    ingredient: typedWords(pick(uses, "ingredient"), {
      width: 20,
      allow: ingredient,
      note: "Common names, one a row: a premix takes a row for each, its amount and price in the first of them.",
    }),
    effective: typedWords(pick(uses, "effective"), {
      width: 11,
      allow: oneOf(
        ["yes", "no"],
        "From the label and what you know of your weeds; a resistant weed is not controlled.",
      ),
      note: "Yours to say, from the label and your fields. A group number says nothing about which weeds are controlled.",
    }),
    amount: typedNumber(pick(uses, "amount"), {
      width: 15,
      format: formats.upToThree,
      allow: within(sprayLimits.rate, "Product an acre, within the label"),
      note: "From the label for this crop, soil, timing and season. The examples are invented.",
    }),
    unit: typedWords(pick(uses, "unit"), { width: 10, allow: oneOf(Object.keys(units), "Unit of the label.") }),
    price: typedNumber(pick(uses, "price"), {
      width: 11,
      format: formats.cents,
      allow: { kind: "between", min: 0, max: 10_000, prompt: "A gallon of a liquid, a pound of a dry product." },
    }),
    last: typedWords(pick(uses, "lastSeason"), {
      width: 18,
      allow: ingredient,
      note: "Active ingredients of last season in this field, in any order.",
    }),
  };
}

function answerColumns(own: (column: "ingredient" | "amount" | "unit" | "price") => Term, costs: Term) {
  const [ingredient, amount, unit] = [own("ingredient"), own("amount"), own("unit")];
  const fill = call(tankFill, {
    ratePerAcre: amount,
    tankGallons: sprayer("tank"),
    gallonsPerAcre: sprayer("volume"),
  });
  return {
    group: computed(whenNamed(ingredient, call(siteOfAction, { activeIngredient: ingredient })), {
      width: 8,
      format: formats.whole,
      note: "Number shared by HRAC and WSSA; check it against the label.",
    }),
    cost: computed(
      whenNamed(unit, whenNumbers([amount, own("price")], formula`${amount}*${own("price")}/${perPriced(unit)}`)),
      { width: 10, format: formats.cents, whole: formula`SUM(${costs})` },
    ),
    tank: computed(whenNamed(unit, whenNumbers([amount, sprayer("tank"), sprayer("volume")], fill)), {
      width: 10,
      format: formats.one,
    }),
    tankUnit: computedWords(whenNamed(unit, formula`IF(COUNT(${amount})=1,MID(${unit},1,LEN(${unit})-3),"")`), {
      width: 9,
    }),
  };
}

/** How many of the unit make what is priced. */
function perPriced(unit: Term): Expression {
  return Object.entries(units).reduceRight(
    (otherwise, [name, count]) => formula`IF(${unit}=${name},${count},${otherwise})`,
    formula`1`,
  );
}
