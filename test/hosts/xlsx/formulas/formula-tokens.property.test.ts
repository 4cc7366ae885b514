import fc from "fast-check";
import { formulaTokens } from "../../../../src/hosts/xlsx/formulas/formula-tokens";
import { storedFormula } from "../../../../src/hosts/xlsx/formulas/stored-formula";

const reference = fc.constantFrom(
  "A1",
  "$B$7",
  "Fields[Acres]",
  "Fields[[#This Row],[A, b]]",
  "'Potash plan'!C3",
  "B:B",
);
const literal = fc.oneof(
  fc.integer({ min: 0, max: 9999 }).map(String),
  fc.string({ maxLength: 8 }).map((text) => `"${text.replace(/"/g, '""')}"`),
);
const native = fc.constantFrom("SUM", "XLOOKUP", "SORT", "T.INV.2T", "IF", "LOAM.REMOVAL");
const { formula } = fc.letrec<{ formula: string; call: string }>((tie) => ({
  formula: fc.oneof({ depthSize: "small", withCrossShrink: true }, reference, literal, tie("call")),
  call: fc
    .tuple(native, fc.array(tie("formula"), { minLength: 1, maxLength: 3 }), fc.constantFrom("", " ", "\n"))
    .map(([name, parts, space]) => `${name}(${parts.join(`,${space}`)})`),
}));

it("pieces of a formula join up to the formula", () => {
  fc.assert(
    fc.property(formula, (text) => {
      const joined = formulaTokens(text).map((token) => token.text);
      expect(joined.join("")).toBe(text);
    }),
  );
});

it("a stored formula differs from the typed one in prefixes only", () => {
  fc.assert(
    fc.property(formula, (text) => {
      const stored = storedFormula(`=${text}`);
      const back = formulaTokens(stored)
        .map((token) =>
          token.kind === "name"
            ? token.text.replace(/^_xlfn\.(_xlws\.)?/, "").replace("_xldudf_LOAM_", "LOAM.")
            : token.text,
        )
        .join("");
      expect(back).toBe(text);
    }),
  );
});
