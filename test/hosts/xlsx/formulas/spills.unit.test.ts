import { maySpill } from "../../../../src/hosts/xlsx/formulas/spills";

const names = new Set(["YIELDS"]);

describe("maySpill", () => {
  it.each([
    "=A1+B2*2",
    '=IF(B2>3,"yes","no")',
    "=SUM(A1:A9)",
    "=SUM(Fields[Acres],B2)",
    "=MAX(yields)-MIN( Yields )",
    "=Fields[[#This Row],[Acres]]*$B$4",
    "=SUMIFS(Fields[Acres],Fields[Crop],A2)",
    '=COUNTIFS(Fields[Crop],A2,Fields[Acres],">0")',
    '=SUMPRODUCT(Fields[Acres]*(Fields[Crop]="corn"))',
    "=XLOOKUP(A2,Fields[Field],Fields[Acres])",
    "=MATCH(A2,'Field list'!A5:A9,0)",
    '="A1:A9"&"{1}"',
    "=NPV(B1,B2:B9)+B1",
    "=LOAM.REMOVAL(A1,B1)",
    "=ROUND(loam.removal(A1,B1),1)",
    "=LOAM.ROTATIONBALANCE(A1:A9,B1:B9,Yields,C1)",
    "=INDEX(LOAM.REMOVALTABLE(A1,B1),2,3)",
    "=LOAM.REMOVAL(A1,INDEX(Fields[Goal],2))",
  ])("is false for %s", (formula) => {
    expect(maySpill(formula, names)).toBe(false);
  });

  it.each([
    "=LOAM.REMOVAL(A1,B1:B9*2)",
    "=LOAM.REMOVAL(A1,FILTER(B1:B9,C1:C9))",
    "=A1:A9",
    "=A1:A9*2",
    "=SUM(A1:A9*B1:B9)",
    '=SUM(IF(Fields[Crop]="corn",1,0))',
    "=yields/2",
    "=COUNTIF(Fields[Crop],Lists[Crop])",
    "=SUMPRODUCT(IF(A1:A9>0,1,0))",
    "=FILTER(A1:A9,B1:B9)",
    "=INDEX(A1:A9,3)",
    "=SUM({1,2,3})",
    "=MATCH(1,(A1:A9=1)*1,0)",
    "=XLOOKUP(A1:A3,B1:B9,C1:C9)",
    "=-Fields[Acres]",
    "=Fields[[#This Row],[First]:[Last]]&1",
    "='Field list'!A5:A9",
  ])("is true for %s", (formula) => {
    expect(maySpill(formula, names)).toBe(true);
  });
});
