import { saltLimit } from "../../../../functions/soil/salt-limit";
import { saltPlacementWords, textureWords } from "../../../../functions/words";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { labelsOf } from "../../word-lists";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";

const value = (key: string) => place(`salt.${key}`);

/** How much fertilizer salt the seed stands, for a starter. */
export function seedSaltBlock({ crops }: FarmContext): EntriesBlock {
  const crop = crops[0]?.crop ?? null;
  const most = call(saltLimit, {
    crop: value("crop"),
    rowWidth: ofCrop(value("crop"), "rowWidth"),
    placement: value("placement"),
    soil: value("soil"),
  });
  return {
    kind: "entries",
    key: "salt",
    title: "Starter with or near the seed",
    entries: [
      typedEntry({ key: "crop", label: "Crop" }, crop, cropList),
      typedEntry(
        { key: "placement", label: "Where it goes" },
        "in furrow",
        oneOf(labelsOf(saltPlacementWords), "In furrow or a 2x2 band."),
      ),
      typedEntry(
        { key: "soil", label: "Soil", says: "Blank: the lowest figure printed." },
        null,
        oneOf(labelsOf(textureWords), "sandy, medium or fine; blank for the lowest figure."),
      ),
      computedEntry(
        {
          key: "most",
          label: "Most N and K2O together",
          unit: "lb/ac",
          format: formats.one,
          says: "In moist soil; dry soil stands half. no limit here: none is printed, so keep it off the seed.",
        },
        formula`IF(${value("crop")}&""="","",IFERROR(${most},"no limit here"))`,
      ),
    ],
  };
}
