import { allFunctions } from "../../../src/functions";
import { searchFunctions } from "../../../src/taskpane/pane/find/search/search";
import { gatheredWords } from "../../../src/taskpane/pane/find/search/deep-words";
import { indexOf, tellingStems } from "../../../src/taskpane/pane/find/search/search-index";
import { growerQuestions } from "./grower-questions";

const index = indexOf(allFunctions);
const ask = (query: string) => searchFunctions(index, query);
const found = (query: string): string[] => ask(query).found.map(({ fn }) => fn.name);

/** Swaps the two letters in the middle of the longest word. */
function misspelled(question: string): string {
  const longest = question.split(" ").reduce((most, word) => (word.length > most.length ? word : most));
  const at = Math.floor(longest.length / 2);
  const slip = longest.slice(0, at - 1) + (longest[at] ?? "") + (longest[at - 1] ?? "") + longest.slice(at + 1);
  return question.replace(longest, slip);
}

describe("searchFunctions", () => {
  it("lists every function when nothing is asked", () => {
    expect(found("  ")).toEqual(allFunctions.map(({ name }) => name));
  });

  it.each(allFunctions.map((fn) => [fn.name, fn.asks ?? []] as const))(
    "answers each question that is declared for %s with it among the first two",
    (name, asks) => {
      for (const question of asks) expect([question, ...found(question).slice(0, 2)]).toContain(name);
    },
  );

  it("still finds nine in ten of them with two letters swapped in the longest word", () => {
    const questions = allFunctions.flatMap((fn) => (fn.asks ?? []).slice(0, 1).map((question) => ({ fn, question })));
    const missed = questions.filter(({ fn, question }) => !found(misspelled(question)).slice(0, 5).includes(fn.name));
    expect(missed.length).toBeLessThan(questions.length / 10);
  });

  it.each(growerQuestions)("answers “%s” with %s among the first three", (question, name) => {
    expect(found(question).slice(0, 3)).toContain(name);
  });

  it("is asked there in words of a grower's own, over every family", () => {
    const declared = new Set(allFunctions.flatMap(({ asks = [] }) => asks));
    expect(growerQuestions.filter(([question]) => declared.has(question))).toEqual([]);
    const asked = new Set(growerQuestions.map(([, name]) => name));
    const families = new Set(allFunctions.filter(({ name }) => asked.has(name)).map(({ family }) => family));
    expect(families).toEqual(new Set(allFunctions.map(({ family }) => family)));
  });

  it("passes over a word that stands nowhere when the others say enough", () => {
    expect(found("zeppelin lime")[0]).toBe(found("lime")[0]);
  });

  it.each([
    ["how much potash does a guide recommend", "POTASHNEED"],
    ["what does the harvest carry off", "REMOVAL"],
    ["how many bags of seed must I buy", "SEEDUNITS"],
    ["price to break even", "BREAKEVENPRICE"],
    ["potassium for beans", "POTASHNEED"],
    ["dried corn shrinking", "GRAINSHRINK"],
    ["replanting soybeans", "REPLANTGAIN"],
    ["diesel per hour", "FUELUSE"],
    ["landlords share", "SHARERENT"],
    ["removal", "REMOVAL"],
    ["tilespac", "TILESPACING"],
  ])("answers “%s” with %s among the first three", (query, name) => {
    expect(found(query).slice(0, 3)).toContain(name);
  });

  it.each(["TILECOST", "tilecost", "tile cost"])("puts the function that is named first: %s", (query) => {
    expect(found(query)[0]).toBe("TILECOST");
  });

  it("says how it read a word that stands nowhere", () => {
    expect(ask("sprayer calibratoin").readAs).toEqual([{ typed: "calibratoin", taken: "calibration" }]);
    expect(ask("sprayer calibration").readAs).toEqual([]);
  });

  it("shows the question that comes closest to the one asked", () => {
    expect(ask("what would drying cost me").found[0]).toMatchObject({ phrase: "what does drying cost" });
  });

  it("finds nothing for a word that stands nowhere", () => {
    expect(found("zeppelin")).toEqual([]);
  });

  it("finds nothing for words that say nothing", () => {
    expect(found("how much is it")).toEqual([]);
  });
});

describe("words behind the declarations", () => {
  const deep = new Map([
    ["SEEDCOST", { steps: ["Zymology of the bag"], columns: ["Outlay for genetics $/ac"] }],
    ["LIMENEED", { steps: ["Outlay step"], columns: [] }],
  ]);
  const behind = indexOf(allFunctions, deep);
  const names = (query: string): string[] => searchFunctions(behind, query).found.map(({ fn }) => fn.name);

  it("are searched too, headings of columns before steps of a working", () => {
    expect(names("zymology")).toEqual(["SEEDCOST"]);
    expect(names("outlay")[0]).toBe("SEEDCOST");
  });

  it("do not come before what a person asks", () => {
    expect(names("how much lime")[0]).toBe("LIMENEED");
  });
});

describe("the sheets that the starters write", () => {
  let behind: ReturnType<typeof indexOf>;
  let deep: Awaited<ReturnType<typeof gatheredWords>>;
  beforeAll(async () => {
    deep = await gatheredWords();
    behind = indexOf(allFunctions, deep);
  }, 60_000);
  const names = (query: string): string[] => searchFunctions(behind, query).found.map(({ fn }) => fn.name);

  it("lead from the heading of a column to a function that fills it, among the first three", () => {
    const fillers = new Map<string, string[]>();
    for (const [name, { columns }] of deep) {
      // "Why" alone says nothing that could be searched.
      for (const heading of columns.filter((text) => tellingStems(text).length > 0))
        fillers.set(heading, [...(fillers.get(heading) ?? []), name]);
    }
    const missed = [...fillers].filter(
      ([heading, fns]) =>
        !names(heading)
          .slice(0, 3)
          .some((name) => fns.includes(name)),
    );
    expect(missed).toEqual([]);
    expect(fillers.size).toBeGreaterThan(50);
  });

  it.each(growerQuestions)("still answer “%s” with %s among the first three", (question, name) => {
    expect(names(question).slice(0, 3)).toContain(name);
  });
});
