import { addInFunctionsIn, storedFormula } from "../../../../src/hosts/xlsx/formulas/stored-formula";

describe("storedFormula", () => {
  it.each([
    ["=SUM(A1:A3)", "SUM(A1:A3)"],
    ["=sum(a1)", "SUM(a1)"],
    ["=LOAM.REMOVAL(C2)", "_xldudf_LOAM_REMOVAL(C2)"],
    ["=loam.Removal(C2)+SUM(Fields[Removal lb/ac])", "_xldudf_LOAM_REMOVAL(C2)+SUM(Fields[Removal lb/ac])"],
    ['=SUM(LOAM.REMOVAL(A1:A3,B1:B3,"K2O"))', 'SUM(_xldudf_LOAM_REMOVAL(A1:A3,B1:B3,"K2O"))'],
    [
      "=IFERROR(LOAM.SEEDRATE(LOAM.STANDCOUNT(A1,30),95),0)",
      "IFERROR(_xldudf_LOAM_SEEDRATE(_xldudf_LOAM_STANDCOUNT(A1,30),95),0)",
    ],
    ["=STDEV.S(A1:A9)*T.INV.2T(0.1,8)", "_xlfn.STDEV.S(A1:A9)*_xlfn.T.INV.2T(0.1,8)"],
    ['=FILTER(A1:B9,A1:A9="corn")', '_xlfn._xlws.FILTER(A1:B9,A1:A9="corn")'],
    ["=SORT(UNIQUE(A1:A9))", "_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))"],
    ["=LET(x,C2*2,y,x+1,x*y)", "_xlfn.LET(_xlpm.x,C2*2,_xlpm.y,_xlpm.x+1,_xlpm.x*_xlpm.y)"],
    ["=LET( a , 2 , A*3)", "_xlfn.LET( _xlpm.a , 2 , _xlpm.A*3)"],
    ["=MAP(A1:A3,LAMBDA(v,v*rate))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*rate))"],
    ["=LET(f,LAMBDA(v,v*2),f(3))", "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*2),_xlpm.f(3))"],
    ["=LET(x,1,SUM(x,{1,2;3,4}))", "_xlfn.LET(_xlpm.x,1,SUM(_xlpm.x,{1,2;3,4}))"],
    ["=NETWORKDAYS.INTL(A1,B1)", "NETWORKDAYS.INTL(A1,B1)"],
  ])("stores %s as %s", (typed, stored) => {
    expect(storedFormula(typed)).toBe(stored);
  });

  it.each([
    '="LOAM.REMOVAL(1) and ""FILTER(x)"""',
    "='LOAM.REMOVAL(1)'!A1+'It''s FILTER(2)'!B2",
    "=SUM(Fields[[#This Row],[SORT(a)]:[LOAM.X(b)]])",
    "=Fields[Yield '[bu/ac']]",
    "=LET_US!A1+UNIQUE",
    '=-1.5E+3%&"x"',
    "=#N/A",
  ])("leaves %s as it is", (typed) => {
    expect(storedFormula(typed)).toBe(typed.slice(1));
  });

  it("forgets a name outside the call that bound it", () => {
    expect(storedFormula("=x+LET(x,1,x)+x")).toBe("x+_xlfn.LET(_xlpm.x,1,_xlpm.x)+x");
  });

  it("does not take a LET argument of several pieces for a name", () => {
    expect(storedFormula("=LET(x,a+b,x+a)")).toBe("_xlfn.LET(_xlpm.x,a+b,_xlpm.x+a)");
  });

  it.each(["=SUM(A1", "=Fields[Yield"])("refuses %s, which is not finished", (typed) => {
    expect(() => storedFormula(typed)).toThrow(/not closed/);
  });
});

describe("addInFunctionsIn", () => {
  it("lists the add-in functions that are called, not those that are only mentioned", () => {
    const stored = storedFormula('=LOAM.LIMENEED(1)+SUM(LOAM.LIMERATE(2))&"LOAM.X(1) _xldudf_LOAM_Y(2)"');
    expect(addInFunctionsIn(stored)).toEqual(["_xldudf_LOAM_LIMENEED", "_xldudf_LOAM_LIMERATE"]);
  });
});
