/** @jest-environment jsdom */
import { reportSelection, type CellReport } from "../../../src/taskpane/pane/working/report";
import { runFunction } from "../../../src/functions/frame/run";
import { removalTable } from "../../../src/functions/nutrients/removal";
import { FakeHost, type FakeCell } from "../fake-host";

const areas = {
  "Fields[Crop]": "Fields!C2:C3",
  "Fields[Yield]": "Fields!D2:D3",
  goal: "Fields!D2:D2",
};

const cells: Record<string, FakeCell> = {
  "Fields!C2": { value: "corn" },
  "Fields!D2": { value: 205 },
  "Fields!C3": { value: "soybean" },
  "Fields!D3": { value: 60 },
  "Fields!D4": { value: "#N/A" },
  "My notes!A1": { value: 100 },
};

async function reportOf(formula: string, at = "Fields!E2", more: FakeCell = {}): Promise<CellReport> {
  const host = new FakeHost({ cells: { ...cells, [at]: { formula, value: 0, ...more } }, areas });
  host.selected = at;
  return reportSelection(host);
}

async function went(formula: string, at?: string): Promise<unknown[]> {
  const report = await reportOf(formula, at);
  return (report.calls[0]?.went ?? []).slice(0, 3).map(({ value }) => value);
}

async function because(formula: string, at?: string): Promise<string> {
  const { calls, because: whole } = await reportOf(formula, at);
  const outcome = calls[0]?.outcome;
  return whole ?? (outcome && "because" in outcome ? outcome.because : "");
}

describe("reportSelection", () => {
  it.each([
    ["literals", '=LOAM.REMOVAL("corn",205,"K2O")'],
    ["cells of the same sheet", '=LOAM.REMOVAL(C2,$D$2,"K2O")'],
    ["cells of a named sheet", '=LOAM.REMOVAL(Fields!C2,Fields!$D$2,"K2O")'],
    ["defined names", '=LOAM.REMOVAL("corn",goal,"K2O")'],
    ["the row of a table", '=LOAM.REMOVAL([@Crop],Fields[[#This Row],[Yield]],"K2O")'],
    ["a look-up", '=LOAM.REMOVAL("corn",INDEX(Fields[Yield],MATCH("CORN",Fields[Crop],0)),"K2O")'],
    [
      "what stands in for an error",
      '=LOAM.REMOVAL("corn",IFERROR(INDEX(Fields[Yield],MATCH("x",Fields[Crop],0)),205),"K2O")',
    ],
    ["a choice", '=LOAM.REMOVAL(IF(D2>=COUNT(D2:D3),"corn",Z1),SUM(D2,"x"),"K2O")'],
    ["several columns of a table, first of many", '=LOAM.REMOVAL("corn",INDEX(Fields[@[Crop]:[Yield]],2),"K2O")'],
    ["rounding", '=LOAM.REMOVAL("corn",ROUND(D2+0.4,0)*ROUNDUP(0.2,0)+INT(0.9)+MOD(10,5)+ROUNDDOWN(-0.9,0),"K2O")'],
    ["an average", '=LOAM.REMOVAL("corn",AVERAGE(D2,205)+MEDIAN(0,1,0)*PRODUCT(0,3)+SQRT(0),"K2O")'],
    ["an exact look-up down a table", '=LOAM.REMOVAL("corn",VLOOKUP("corn",C2:D3,2,FALSE),"K2O")'],
    ["a look-up with its answers apart", '=LOAM.REMOVAL("corn",XLOOKUP("corn",C2:C3,D2:D3),"K2O")'],
    ["tests of cells", '=LOAM.REMOVAL(IF(AND(ISNUMBER(D2),NOT(ISBLANK(C2)),OR(FALSE,ISTEXT(C2))),"corn",""),D2,"K2O")'],
    ["what stands in for a missing value", '=LOAM.REMOVAL("corn",IFNA(D4,205),"K2O")'],
    ["one of several", '=LOAM.REMOVAL(CHOOSE(2,"soybean","corn"),D2,"K2O")'],
    ["the number of a row", '=LOAM.REMOVAL("corn",INDEX(D2:D3,ROW()-ROW($D$1)+COLUMN(A1)-1),"K2O")'],
    ["the place of a word", '=LOAM.REMOVAL(IF(ISNUMBER(SEARCH("RN",C2)),"corn",""),D2,"K2O")'],
    ["parts of words", '=LOAM.REMOVAL(LOWER(LEFT("CORN, dry",4)),D2,CONCAT(MID("aK2",2,2),RIGHT("CO",1)))'],
    ["arithmetic", '=LOAM.REMOVAL("co"&"rn",(D2*2+10%*0)/2,"K2O")'],
    ["an @ before the name", '=@LOAM.REMOVAL("corn",205,"K2O")'],
    ["the form some files keep", '=_xldudf_LOAM_REMOVAL("corn",205,"K2O")'],
    ["small letters", '=loam.removal("corn",205,"K2O")'],
    ["the form some files keep, in another add-in's workbook", '=[2]!_xldudf_LOAM_REMOVAL("corn",205,"K2O")'],
    ["names that the formula gives", '=LET(word,"corn",goal_1,D2,goal_2,Goal_1,LOAM.REMOVAL(word,goal_2,"K2O"))'],
    ["names that hide others of the workbook", '=LET(goal,205,LOAM.REMOVAL("corn",goal,"K2O"))'],
    ["a function under another name", '=LET(f,LOAM.REMOVAL,f("corn",205,"K2O"))'],
    ["a LAMBDA that is called on the spot", '=LAMBDA(w,y,LOAM.REMOVAL(w,y,"K2O"))("corn",D2)'],
    [
      "a LAMBDA under a name, whose names stay apart from those outside",
      '=LET(y,100,f,LAMBDA(w,LOAM.REMOVAL(w,y+105,"K2O")),LET(y,7,f("corn")))',
    ],
    ["a row of a range taken whole", '=LOAM.REMOVAL("corn",SUM(INDEX(C2:D3,1)),"K2O")'],
  ])("reads %s", async (_kind, formula) => {
    expect(await went(formula)).toEqual(["corn", 205, "K2O"]);
  });

  it("takes the cell of a table column that stands in the row of the selected cell", async () => {
    expect(await went('=LOAM.REMOVAL([@Crop],Fields[[#This Row],[Yield]],"K2O")', "Fields!E3")).toEqual([
      "soybean",
      60,
      "K2O",
    ]);
  });

  it("reads a quoted sheet name", async () => {
    expect(await went('=LOAM.REMOVAL("corn",\'My notes\'!A1,"K2O")')).toEqual(["corn", 100, "K2O"]);
  });

  it("shows steps and citations", async () => {
    const outcome = (await reportOf('=LOAM.REMOVAL("corn",200,"K2O")')).calls[0]?.outcome;
    if (!outcome || !("working" in outcome)) throw new Error("no working");
    // 200 bu × 0.20 lb/bu = 40 lb, Bulletin 974.
    expect(outcome.working.map(({ value }) => value)).toContain(40);
    expect(outcome.cites.map(({ source }) => source)).toContain("osu-974-2020");
  });

  it("shows a call inside an argument too, after the one it stands in", async () => {
    // Removal of K2O by 200 bu of corn is 40 lb; the outer call takes that for a yield: 40 × 0.20 = 8 lb.
    const { calls } = await reportOf('=LOAM.REMOVAL("corn",LOAM.REMOVAL("corn",200,"K2O"),"K2O")', "Fields!E2", {
      value: 8,
    });
    expect(calls.map(({ answer, isWhatShows }) => [answer, isWhatShows])).toEqual([
      [8, true],
      [40, false],
    ]);
    expect(calls[0]?.went[1]).toMatchObject({ value: 40, from: "answer of REMOVAL, shown below" });
    expect(calls[1]?.remarks).toEqual(["Stands inside REMOVAL, as its yield."]);
  });

  it("tells where each value comes from", async () => {
    const { calls } = await reportOf('=LOAM.REMOVAL([@Crop],goal,"K2O",,,D2/14)');
    expect(calls[0]?.went.map(({ name, from }) => `${name}: ${from}`)).toEqual([
      "crop: [@Crop], which is Fields!C2",
      "yield: goal, which is Fields!D2:D2",
      "nutrient: typed in the formula",
      "part: left out",
      "set: left out",
      "moisture: worked out from D2/14",
    ]);
  });

  it("shows the arguments that can be read beside one that cannot", async () => {
    const { calls } = await reportOf('=LOAM.REMOVAL("corn",RAND(),"K2O")');
    expect(calls[0]?.went.slice(0, 3).map(({ value }) => value)).toEqual(["corn", "cannot be worked out here", "K2O"]);
    expect(calls[0]?.outcome).toEqual({ because: expect.stringContaining("computed with RAND") });
  });

  it("leaves aside the branch that the formula does not take", async () => {
    const { calls, leftAside } = await reportOf(
      '=IF(D2>100,LOAM.REMOVAL("corn",D2,"K2O"),LOAM.PRODUCTRATE(D2,60))+LOAM.PRODUCTRATE(40,50)',
    );
    expect(calls.map(({ fn }) => fn.name)).toEqual(["REMOVAL", "PRODUCTRATE"]);
    expect(leftAside).toEqual(["PRODUCTRATE"]);
  });

  it("leaves aside what stands ready for an error that did not come, and shows both where it came", async () => {
    const names = async (first: string) =>
      (await reportOf(`=IFERROR(LOAM.REMOVAL(${first},D2,"K2O"),LOAM.PRODUCTRATE(40,50))`)).calls.map(
        ({ fn }) => fn.name,
      );
    expect(await names('"corn"')).toEqual(["REMOVAL"]);
    expect(await names('"barlei"')).toEqual(["REMOVAL", "PRODUCTRATE"]);
  });

  it("knows the cell that INDEX takes out of a table", async () => {
    // A row for each published nutrient under the heads; column 2 is the removal. 200 bu × 0.35 lb = 70 lb of P2O5.
    const table = runFunction(removalTable, ["corn", 200]);
    const row = table.findIndex(([nutrient]) => nutrient === "P2O5") + 1;
    const { calls } = await reportOf(`=INDEX(LOAM.REMOVALTABLE("corn",D2-5),${row},2)`, "Fields!E2", { value: 70 });
    expect(calls[0]).toMatchObject({ answer: 70, isWhatShows: true });
    expect(calls[0]?.remarks[0]).toMatch(
      new RegExp(`^The answer is a table\\. This cell shows its row ${row}, column 2: P2O5, `),
    );
  });

  it("finds the formula of a cell that belongs to an answer of several", async () => {
    // 60 bu of soybean × 1.15 lb = 69 lb of K2O, in the second of two rows.
    const host = new FakeHost({
      cells: {
        ...cells,
        "Fields!E2": { formula: '=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")', value: 41 },
        "Fields!E3": { value: 69 },
      },
    });
    host.selected = "Fields!E3";
    const report = await reportSelection(host);
    expect(report.formulaAt).toBe("Fields!E2");
    expect(report.calls[0]).toMatchObject({ answer: 69, isWhatShows: true });
    expect(report.calls[0]?.remarks).toEqual(["This formula fills 2 cells. The steps are those of number 2."]);
    const outcome = report.calls[0]?.outcome;
    expect(outcome && "working" in outcome && outcome.working.map(({ value }) => value)).toContain(69);
  });

  it("takes a value near a formula that does not give it for a typed one", async () => {
    const host = new FakeHost({
      cells: {
        ...cells,
        "Fields!E2": { formula: '=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")', value: 41 },
        "Fields!E3": { value: 5 },
      },
    });
    host.selected = "Fields!E3";
    expect((await reportSelection(host)).because).toMatch(/typed in/);
  });

  it("finds the call inside a longer formula and gives its own answer", async () => {
    const report = await reportOf('=IF(C2="","",ROUND(LOAM.REMOVAL(C2,D2,"K2O"),0))');
    expect(report.calls.map(({ fn }) => fn.name)).toEqual(["REMOVAL"]);
    // 205 bu × 0.20 lb/bu = 41 lb; the harness' cell shows 0.
    expect(report.calls[0]).toMatchObject({ answer: 41, isWhatShows: false });
  });

  it("says that the steps are those of the first answer where a range gives many", async () => {
    const report = await reportOf('=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")');
    expect(report.calls[0]?.remarks).toEqual(["This formula fills 2 cells. The steps are those of the first."]);
    expect(report.calls[0]?.went[0]?.value).toBe("corn (first of 2)");
  });

  it("passes on the sentence behind an error", async () => {
    const report = await reportOf('=LOAM.REMOVAL("barlei",60,"K2O")', "Fields!E2", {
      value: "#VALUE!",
      message: "Say so.",
    });
    expect([report.isAnError, report.message]).toEqual([true, "Say so."]);
  });

  it.each([
    ["a word that is not known", '=LOAM.REMOVAL("barlei",60,"K2O")', /barlei/],
    ["a cell with an error", '=LOAM.REMOVAL("corn",D4,"K2O")', /shows #N\/A/],
    ["a cell that is still blank", '=LOAM.REMOVAL("corn",Z9,"K2O")', /waiting for yield/],
    ["a function of the spreadsheet", '=LOAM.REMOVAL("corn",VLOOKUP(1,D2:D3,1),"K2O")', /computed with VLOOKUP/],
    ["a search for any letters", '=LOAM.REMOVAL("corn",VLOOKUP("c*",C2:D3,2,FALSE),"K2O")', /any letters/],
    ["a search in a sorted table", '=LOAM.REMOVAL("corn",VLOOKUP("corn",C2:D3,2),"K2O")', /computed with VLOOKUP/],
    ["a whole column", '=LOAM.REMOVAL("corn",D:D,"K2O")', /whole column/],
    ["arithmetic on a range", '=LOAM.REMOVAL("corn",D2:D3*2,"K2O")', /whole range/],
    ["a reference to two ranges", '=LOAM.REMOVAL("corn",D2 D2,"K2O")', /uses " "/],
    ["a search in sorted values", '=LOAM.REMOVAL("corn",MATCH(1,D2:D3),"K2O")', /computed with MATCH/],
    ["a spilled range of unknown size", '=LOAM.REMOVAL("corn",D2#,"K2O")', /spilled/],
    ["a whole row", '=LOAM.REMOVAL("corn",2:2,"K2O")', /whole column or row/],
    ["a range of two ends", '=LOAM.REMOVAL("corn",D2:INDEX(D2:D3,1),"K2O")', /uses ":"/],
    ["several sheets at once", '=LOAM.REMOVAL("corn",Fields:Other!D2,"K2O")', /several sheets or another workbook/],
    ["another workbook", '=LOAM.REMOVAL("corn",[Book.xlsx]Fields!D2,"K2O")', /several sheets or another workbook/],
    [
      "a name as files mark it",
      '=_xlfn.LET(_xlpm.y,D2,LOAM.REMOVAL("corn",_xlpm.y,"K2O"))',
      /_xlpm\.y could not be read/,
    ],
    ["a call inside a LAMBDA of many cells", '=MAP(D2:D3,LAMBDA(v,LOAM.REMOVAL("corn",v,"K2O")))', /inside a LAMBDA/],
    ["a call that LET names and nobody uses", '=LET(x,LOAM.REMOVAL("corn",200,"K2O"),5)', /no use of it/],
    ["a LAMBDA called with too few values", '=LAMBDA(w,y,LOAM.REMOVAL(w,y,"K2O"))("corn")', /inside a LAMBDA/],
    ["a value from a LAMBDA", '=LOAM.REMOVAL("corn",MAX(MAP(D2:D3,LAMBDA(v,v))),"K2O")', /computed with MAP/],
    ["a name like ours that is none", '=LOAM.REMOVALS("corn",200)', /No function is called LOAM\.REMOVALS/],
    ["a function of newer spreadsheets", '=LOAM.REMOVAL("corn",_xlfn._xlws.FILTER(D2:D3,D2:D3>1),"K2O")', /FILTER/],
    ["a name that is not there", '=LOAM.REMOVAL("corn",nowhere,"K2O")', /nowhere could not be read/],
    ["a table part that cannot be read", '=LOAM.REMOVAL("corn",Fields[[#Headers],[Yield]],"K2O")', /part of a table/],
    ["a formula that calls nothing of ours", "=SUM(D2:D3)", /no Loamsheet function/],
    ["a formula that cannot be read", "=SUM((", /could not be read/],
  ])("says why there is no working for %s", async (_kind, formula, sentence) => {
    expect(await because(formula)).toMatch(sentence);
  });

  it("says where a value behind a name of the formula comes from", async () => {
    const { calls } = await reportOf('=LET(y,D2,LOAM.REMOVAL("corn",y,"K2O"))');
    expect(calls[0]?.went[1]).toMatchObject({ value: 205, from: "Fields!D2" });
    expect(calls[0]).toMatchObject({ isWhole: true });
  });

  it("shows a call once that the formula names and uses twice, with what it gives by itself", async () => {
    // 205 bu × 0.20 lb = 41 lb; twice that is 82.
    const { calls } = await reportOf('=LET(k,LOAM.REMOVAL("corn",205,"K2O"),k+k)', "Fields!E2", { value: 82 });
    expect(calls.map(({ answer, isWhatShows, isWhole }) => [answer, isWhatShows, isWhole])).toEqual([
      [41, false, false],
    ]);
  });

  it("reads all that spills from a cell whose formula is ours, as far as it reaches", async () => {
    const host = new FakeHost({
      cells: {
        ...cells,
        "Fields!E2": { formula: '=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")', value: 41 },
        "Fields!E3": { value: 69 },
        "Fields!F2": { formula: "=LOAM.STANDCOUNT(Fields!E2#,30)", value: 0 },
      },
    });
    host.selected = "Fields!F2";
    const [call] = (await reportSelection(host)).calls;
    expect(call?.went[0]).toMatchObject({
      value: expect.stringMatching(/^2 values/),
      from: "Fields!E2#, all that spills from Fields!E2",
    });
    expect(call?.outcome).toHaveProperty("working");
  });

  it("passes on the error of a cell that should spill", async () => {
    const host = new FakeHost({
      cells: {
        ...cells,
        "Fields!E2": { formula: '=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")', value: "#SPILL!" },
        "Fields!F2": { formula: "=LOAM.STANDCOUNT(E2#,30)", value: "#SPILL!" },
      },
    });
    host.selected = "Fields!F2";
    const [call] = (await reportSelection(host)).calls;
    expect(call?.outcome).toEqual({ because: expect.stringContaining("#SPILL!") });
  });

  it("claims no single answer where a range gives several inside a longer formula", async () => {
    const { calls } = await reportOf('=SUM(LOAM.REMOVAL(C2:C3,D2:D3,"K2O"))');
    expect(calls[0]?.remarks).toEqual(["It gives 2 answers here. The steps are those of the first."]);
    expect(calls[0]?.answer).toBeUndefined();
  });

  it.each([
    ["a column of it", 'SUM(INDEX(LOAM.REMOVALTABLE("corn",200),0,2))'],
    ["a column of it, the row left out", 'COUNT(INDEX(LOAM.REMOVALTABLE("corn",200),,2))'],
    ["a row of it", 'COUNT(INDEX(LOAM.REMOVALTABLE("corn",200),2))'],
    ["all of it", 'COUNT(LOAM.REMOVALTABLE("corn",200))'],
  ])("claims no cell of a table where the formula takes %s", async (_what, formula) => {
    const { calls } = await reportOf(`=${formula}`);
    expect(calls[0]?.remarks[0]).toMatch(
      /^The answer is a table of \d+ rows and \d+ columns, of which the formula takes/,
    );
    expect(calls[0]).toMatchObject({ isWhatShows: false });
    expect(calls[0]?.answer).toBeUndefined();
  });

  it("says the unit with every number that went in, also of a range", async () => {
    const { calls } = await reportOf('=LOAM.REMOVAL(C2:C3,D2:D3,"K2O")');
    expect(calls[0]?.went.map(({ value }) => value).slice(0, 2)).toEqual([
      "corn (first of 2)",
      "205 per ac (first of 2)",
    ]);
  });

  it("says when a formula asks for a row outside its table", async () => {
    expect(await because('=LOAM.REMOVAL("corn",Fields[[#This Row],[Yield]],"K2O")', "Fields!E9")).toMatch(
      /outside its table/,
    );
  });

  it("tells a typed value from an empty cell", async () => {
    const host = new FakeHost({ cells: { "Fields!A1": { value: 7 } } });
    host.selected = "Fields!A1";
    expect((await reportSelection(host)).because).toMatch(/typed in/);
    host.selected = "Fields!B1";
    expect((await reportSelection(host)).because).toMatch(/empty/);
  });
});
