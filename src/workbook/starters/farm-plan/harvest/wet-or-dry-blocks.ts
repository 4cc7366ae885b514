import { harvestLimits } from "../../../../core/harvest/harvest-limits";
import { dryingCost } from "../../../../functions/harvest/drying";
import { sellWetOrDry } from "../../../../functions/harvest/sell-wet-or-dry";
import { grainShrink } from "../../../../functions/harvest/shrink";
import { call } from "../../../formula/call";
import { formula, joined, type Expression } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, computedWords, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { typedEntry } from "../../../model/entries";
import { tableBlock, type TableBlock } from "../../../model/table";
import { grainTerms, wetLotExamples } from "../../../scenario/harvest-examples";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { fieldList } from "../field-lookup";
import { wetTable } from "./harvest-headers";

const own = wetTable.own;
const term = (key: string) => place(`grain.${key}`);
const rows = 5;
const points = formula`MAX(0,${own("moisture")}-${own("market")})`;

/** The dryer's costs and the elevator's offer. */
export function grainTermsBlock(): EntriesBlock {
  return {
    kind: "entries",
    key: "grain",
    title: "Drying terms",
    entries: [
      dollars("gas", "LP gas", "$/gal", grainTerms.gasUsdPerGal, ""),
      typedEntry(
        {
          key: "gasUse",
          label: "LP gas a bushel and point",
          unit: "gal",
          format: formats.upToThree,
          says: "0.02 is the usual rule; your own dryer's use is better.",
        },
        grainTerms.gasGalPerBuPoint,
        within(harvestLimits.fuelPerPoint, "LP gas for a bushel and point"),
      ),
      dollars("dryer", "Power, labor, dryer", "$/wet bu", grainTerms.dryerUsdPerBu, ""),
      dollars("discount", "Wet discount a point", "$/bu", grainTerms.wetDiscountUsdPerPoint, "From the buyer's sheet."),
      dollars("charge", "Elevator's drying a point", "$/bu", grainTerms.elevatorUsdPerPoint, "From the buyer's sheet."),
      typedEntry(
        { key: "shrink", label: "Elevator's shrink a point", unit: "%", format: formats.two },
        grainTerms.elevatorShrinkPctPerPoint,
        within(harvestLimits.shrinkPerPoint, "The elevator's shrink for each point"),
      ),
    ],
  };
}

function dollars(key: string, label: string, unit: string, start: number, says: string): Entry {
  const range = { min: 0, max: 100, unit };
  return typedEntry({ key, label, unit, format: formats.cents, says }, start, within(range, label));
}

/** Sell it wet, have it dried, or dry it at home. */
export function wetOrDryBlock({ fields }: FarmContext): TableBlock {
  const examples = wetLotExamples.filter(({ field }) => fields.some((each) => each.field === field));
  const one = { width: 11, format: formats.one };
  return tableBlock(
    wetTable,
    { title: "Sell wet or dry", rows },
    {
      field: typedWords(pick(examples, "field"), {
        width: 26,
        allow: fieldList,
      }),
      crop: typedWords(pick(examples, "crop"), {
        width: 11,
        allow: cropList,
      }),
      wet: typedNumber(pick(examples, "wetBu"), {
        width: 11,
        format: formats.whole,
        allow: within(harvestLimits.bushels, "Bushels as weighed: pounds over the bushel weight"),
      }),
      moisture: typedNumber(pick(examples, "moisturePct"), {
        ...one,
        allow: within(harvestLimits.moisture, "Moisture of the grain as weighed"),
      }),
      market: typedNumber(pick(examples, "marketMoisturePct"), {
        ...one,
        allow: within(harvestLimits.marketMoisture, "Moisture at which the buyer pays a full bushel"),
        note: "Usually 15.5 for corn, 13 for soybean, 13.5 for wheat; the buyer's sheet decides.",
      }),
      ...answerColumns(),
    },
  );
}

function answerColumns() {
  const perBushel = { width: 12, format: formats.cents };
  const ways = [own("sellWet"), own("elevator"), own("home")] as const;
  const three = joined(ways, ",");
  return {
    dry: computed(known(shrunk()), {
      width: 11,
      format: formats.whole,
      note: "After water and half a percent of dust.",
    }),
    drying: computed(known(drying()), perBushel),
    sellWet: computed(known(leaves(2)), perBushel),
    elevator: computed(known(leaves(3)), perBushel),
    home: computed(known(leaves(4)), perBushel),
    best: computedWords(
      whenNumbers(
        ways,
        formula`IF(${ways[0]}=MAX(${three}),"sell wet",IF(${ways[2]}=MAX(${three}),"dry at home","elevator dries"))`,
      ),
      { width: 15 },
    ),
    ahead: computed(whenNumbers(ways, formula`(2*MAX(${three})+MIN(${three})-SUM(${three}))*${own("wet")}`), {
      width: 12,
      format: formats.dollars,
      note: "What the best way leaves over the next best, for all the bushels.",
    }),
  };
}

/** Nothing until crop, bushels and both moistures are there. */
function known(value: Expression): Expression {
  return whenNamed(own("crop"), whenNumbers([own("wet"), own("moisture"), own("market")], value));
}

function shrunk(): Expression {
  return call(grainShrink, {
    bushels: own("wet"),
    moisture: own("moisture"),
    crop: own("crop"),
    marketMoisture: own("market"),
  });
}

function drying(): Expression {
  return call(dryingCost, {
    points,
    bushels: 1,
    fuelPrice: term("gas"),
    fuelPerPoint: term("gasUse"),
    otherCost: term("dryer"),
  });
}

/** What a wet bushel leaves; lines 2 to 4 are sell wet, elevator dries, dry at home. */
function leaves(line: number): Expression {
  const table = call(sellWetOrDry, {
    bushels: own("wet"),
    moisture: own("moisture"),
    crop: own("crop"),
    price: ofCrop(own("crop"), "price"),
    wetDiscount: formula`${term("discount")}*${points}`,
    elevatorShrink: term("shrink"),
    elevatorCharge: formula`${term("charge")}*${points}`,
    homeCost: own("drying"),
    marketMoisture: own("market"),
  });
  return formula`INDEX(${table},${line},7)`;
}
