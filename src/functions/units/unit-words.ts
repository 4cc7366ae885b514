import { readUnit, type Unit } from "../../core/units/read-unit";
import { namedCompounds, simpleUnits, usualCompounds } from "../../core/units/unit-table";
import { refuseWord, vocabulary, type OneArgument, type Vocabulary, type Word } from "../frame";

/** The units that lists and forms offer. More are understood: any pair of units with a slash between them. */
const listed: Readonly<Record<string, Word>> = Object.fromEntries([
  ...usualCompounds.map((label) => [label, { label, also: [] }] as const),
  ...[...simpleUnits, ...namedCompounds].map(({ label, also }) => [label, { label, also }] as const),
]);

const unitWords: Vocabulary<string> = {
  ...vocabulary<string>("unit", listed),
  find: (text) => readUnit(text)?.label,
};

/** A unit in words, such as lb, lb/ac or "pounds per acre". */
export function unit({ says }: { readonly says: string }): OneArgument<Unit> {
  return {
    shape: "one",
    says,
    unit: "",
    vocabulary: unitWords,
    zeroIsBlank: true,
    read(cell, argument) {
      const text = String(cell);
      return readUnit(text) ?? refuseWord(unitWords, text, argument);
    },
  };
}
