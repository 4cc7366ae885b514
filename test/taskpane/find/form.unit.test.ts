/** @jest-environment jsdom */
import { allFunctions } from "../../../src/functions";
import { exampleFormula } from "../../../src/functions/frame/formula-text";
import { mountPane } from "../../../src/taskpane/pane";
import { FakeHost } from "../fake-host";
import { button, byId, storageIn } from "../on-page";

let host: FakeHost;
let kept: Map<string, string>;

function mount(): void {
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, { kind: "excel", storage: () => storageIn(kept) });
  button("Find a function").click();
}

type Box = HTMLInputElement | HTMLSelectElement;

function box(argument: string): Box {
  const found = byId(`argument-${argument}`);
  if (found instanceof HTMLInputElement || found instanceof HTMLSelectElement) return found;
  throw new Error(`${argument} has no box.`);
}

function give(argument: string, text: string): void {
  box(argument).value = text;
  box(argument).dispatchEvent(new Event("input", { bubbles: true }));
}

function leave(argument: string): void {
  box(argument).dispatchEvent(new Event("focusout", { bubbles: true }));
}

function open(name: string): void {
  const query = byId("find-query") as HTMLInputElement; // the search box is a field
  query.value = name;
  query.dispatchEvent(new Event("input", { bubbles: true }));
  byId(`find-${name}`).click();
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 5));

async function pick(argument: string, address: string): Promise<void> {
  host.selected = address;
  byId(`pick-${argument}`).click();
  await settled();
}

async function insert(at = "Sheet1!H1"): Promise<void> {
  host.selected = at;
  byId("function-insert").click();
  await settled();
}

const formula = (): string => byId("function-formula").textContent ?? "";
const answer = (): string => byId("function-answer").textContent ?? "";
const outcome = (): string => document.querySelector(".outcome")?.textContent ?? "";
const refusal = (argument: string): string => byId(`argument-${argument}-refusal`).textContent ?? "";

beforeEach(() => {
  kept = new Map();
  host = new FakeHost({
    cells: {
      "Fields!C2": { value: "corn" },
      "Fields!C3": { value: "soybean" },
      "Fields!D2": { value: 200 },
      "Fields!D3": { value: 60 },
      "Fields!D4": { value: "#N/A" },
      "Fields!H3": { value: "notes" },
    },
  });
  mount();
});

describe("the form of a function", () => {
  it("waits for what is needed and names it", () => {
    open("REMOVAL");
    expect(answer()).toBe("Comes here once Crop, Yield, Nutrient are given.");
    give("crop", "corn");
    expect(answer()).toBe("Comes here once Yield, Nutrient are given.");
    expect(formula()).toBe('=LOAM.REMOVAL("corn")');
  });

  it("answers as one types, tolerant of commas and spaces, and writes the formula", () => {
    open("REMOVAL");
    give("crop", "corn");
    give("yield", " 500 ");
    give("nutrient", "K2O");
    // 500 bu × 0.20 lb/bu = 100 lb, Bulletin 974.
    expect(answer()).toContain("100 lb/ac");
    expect(formula()).toBe('=LOAM.REMOVAL("corn", 500, "K2O")');
    button("‹ All functions").click();
    open("BREAKEVENPRICE");
    give("cost", "$1,200");
    expect(formula()).toBe("=LOAM.BREAKEVENPRICE(1200)");
  });

  it("leaves a comma for what is left out in between, and nothing at the end", () => {
    open("LIMENEED");
    give("pH", "5.8");
    give("targetPH", "6.5");
    expect(formula()).toBe("=LOAM.LIMENEED(5.8, , 6.5)");
  });

  it("says beside the box what does not fit, once it is left, and in the answer at once", () => {
    open("LIMENEED");
    give("pH", "65");
    expect(document.getElementById("argument-pH-refusal")).toBeNull();
    leave("pH");
    expect(refusal("pH")).toMatch(/pH must be between .* got 65\. Did you mean 6\.5\?/);
    expect(box("pH").getAttribute("aria-describedby")).toContain("argument-pH-refusal");
    give("pH", "6.5");
    expect(document.getElementById("argument-pH-refusal")).toBeNull();
  });

  it("begins a refusal as a sentence, with the name that the form gives the box", () => {
    open("REMOVAL");
    give("moisture", "150");
    leave("moisture");
    expect(refusal("moisture")).toBe("▲ Moisture must be between 0 and 90 %; got 150.");
    button("‹ All functions").click();
    open("LIMENEED");
    give("targetPH", "65");
    leave("targetPH");
    expect(refusal("targetPH")).toMatch(/^▲ Target pH must be between/);
  });

  it("names the words that go in place of a number, and counts them where they are many", () => {
    open("PASSCOST");
    document.querySelector<HTMLButtonElement>("[aria-expanded=false]")?.click();
    expect(byId("argument-load-hint").textContent).toContain("Takes 20 to 100 % of rated power, or “average”.");
    button("‹ All functions").click();
    open("LEGUMECREDIT");
    document.querySelector<HTMLButtonElement>("[aria-expanded=false]")?.click();
    expect(byId("argument-stand-hint").textContent).toContain(", or “good”, “fair” or “poor”.");
    button("‹ All functions").click();
    open("LIQUIDRATE");
    expect(document.body.textContent).toMatch(/, or one of \d+ words that come up as you type\./);
  });

  it("puts the dollar sign of an amount in front", () => {
    open("PASSCOST");
    expect(byId("argument-price-hint").textContent).toContain("Takes $0 to $100,000,000.");
  });

  it("has a list to choose from for short word lists, and words that come up for long ones", () => {
    open("REMOVAL");
    expect(box("crop")).toBeInstanceOf(HTMLSelectElement);
    button("‹ All functions").click();
    open("UNITCONVERT");
    const words = byId("argument-from-words");
    expect(box("from").getAttribute("list")).toBe(words.id);
    expect([...words.children].map((word) => word.getAttribute("value"))).toContain("bu/ac");
  });

  it("takes a list with commas, and a table with semicolons between its rows", () => {
    open("STANDCOUNT");
    give("counts", "30, 28, 31");
    expect(formula()).toBe("=LOAM.STANDCOUNT({30,28,31})");
    button("‹ All functions").click();
    open("LEASTCOSTMIX");
    give("needs", "1,200, 40");
    give("analyses", "46, 0; 18, 46");
    expect(formula()).toBe("=LOAM.LEASTCOSTMIX({1200,40}, {46,0;18,46})");
  });

  it("writes a date as a date", () => {
    open("REPLANTGAIN");
    if (!document.getElementById("argument-keepDate")) document.querySelector<HTMLElement>("[aria-expanded]")?.click();
    give("keepDate", "4/28/2026");
    expect(formula()).toContain("DATE(2026,4,28)");
  });

  it.each(allFunctions.map((fn) => [fn.name, fn] as const))(
    "brings the example of %s into the boxes and gives its answer",
    (name, fn) => {
      open(name);
      button("Fill in the example").click();
      expect(document.querySelectorAll(".field-refused")).toHaveLength(0);
      const { gives } = fn.example;
      const first = Array.isArray(gives) ? gives[0]?.[0] : gives;
      const rows = Array.isArray(gives) ? gives.length : 1;
      if (typeof first === "string" && first !== "") expect(answer()).toContain(first);
      if (rows > 1) expect(answer()).toContain(`Fills ${rows} rows`);
      else expect(document.querySelector("#function-answer .because")).toBeNull();
      // A gap in a list is written as an empty text, which formulas can hold; a date as a date.
      // One value needs no braces.
      const squeezed = (text: string): string =>
        text
          .replace(/\s/g, "")
          .replace(/(?<=[{,;])(?=[,;}])/g, '""')
          .replace(/\{([^{},;]*)\}/g, "$1");
      if (!/DATE\(/.test(formula())) expect(squeezed(formula())).toBe(squeezed(exampleFormula(fn)));
    },
  );

  it("empties its boxes", () => {
    open("REMOVAL");
    button("Fill in the example").click();
    button("Empty the boxes").click();
    expect(formula()).toBe("=LOAM.REMOVAL()");
  });

  it("keeps what was given while another function is open", () => {
    open("REMOVAL");
    give("yield", "180");
    button("‹ All functions").click();
    open("LIMENEED");
    button("‹ All functions").click();
    open("REMOVAL");
    expect(box("yield").value).toBe("180");
  });
});

describe("taking values from the sheet", () => {
  it("takes the address of the selected cell, shows what stands there and answers with it", async () => {
    open("REMOVAL");
    await pick("crop", "Fields!C2");
    await pick("yield", "Fields!D2");
    give("nutrient", "K2O");
    expect(document.querySelectorAll(".picked")[1]?.textContent).toBe("Fields!D2 shows 200 per ac");
    expect(formula()).toBe('=LOAM.REMOVAL(Fields!C2, Fields!D2, "K2O")');
    // 200 bu × 0.20 lb/bu = 40 lb.
    expect(answer()).toContain("40 lb/ac");
  });

  it("fills one cell for each of a picked range", async () => {
    open("REMOVAL");
    await pick("crop", "Fields!C2:C3");
    await pick("yield", "Fields!D2:D3");
    give("nutrient", "K2O");
    expect(answer()).toContain("Fills 2 rows and 1 column");
  });

  it("keeps the focus on its button, and goes back to typing", async () => {
    open("REMOVAL");
    byId("pick-yield").focus();
    await pick("yield", "Fields!D2");
    expect(document.activeElement).toBe(byId("pick-yield"));
    button("Type a value instead").click();
    expect(document.activeElement).toBe(box("yield"));
    expect(formula()).toBe("=LOAM.REMOVAL()");
  });

  it("passes on what stands in the way of the cell", async () => {
    open("REMOVAL");
    await pick("yield", "Fields!D4");
    expect(refusal("yield")).toContain("#N/A");
  });

  it("tells why the selected cells could not be taken", async () => {
    open("REMOVAL");
    host.readSelection = () => host.read("nowhere");
    await pick("yield", "Fields!D2");
    expect(refusal("yield")).toContain("There is nothing named nowhere.");
  });
});

describe("putting the formula into a cell", () => {
  it("writes what the form says", async () => {
    open("REMOVAL");
    button("Fill in the example").click();
    await insert();
    expect(host.inserted).toEqual(['=LOAM.REMOVAL("corn", 200, "K2O")']);
    expect(outcome()).toBe("The formula stands in the selected cell.");
  });

  it("says how many rows and columns a table fills", async () => {
    open("PROFITGRID");
    button("Fill in the example").click();
    await insert();
    expect(host.inserted).toHaveLength(1);
    expect(outcome()).toMatch(/fills \d rows and \d columns\.$/);
  });

  it("goes to the box of what is missing", async () => {
    open("REMOVAL");
    give("crop", "corn");
    await insert();
    expect(host.inserted).toEqual([]);
    expect(document.activeElement).toBe(box("yield"));
    expect(refusal("yield")).toContain("This is still missing.");
  });

  it("goes to the box of what does not fit", async () => {
    open("REMOVAL");
    button("Fill in the example").click();
    give("yield", "lots");
    await insert();
    expect(document.activeElement).toBe(box("yield"));
    expect(refusal("yield")).toContain('got "lots"');
  });

  it("writes no formula whose typed values have no answer", async () => {
    open("REMOVAL");
    give("crop", "corn");
    give("yield", "200");
    give("nutrient", "B");
    const { textContent } = byId("function-answer");
    await insert();
    expect([host.inserted, outcome()]).toEqual([[], textContent]);
  });

  it("takes cells that are still blank, and none that do not fit", async () => {
    open("REMOVAL");
    button("Fill in the example").click();
    await pick("yield", "Fields!Z9");
    await insert();
    expect(host.inserted).toEqual(['=LOAM.REMOVAL("corn", Fields!Z9, "K2O")']);
    await pick("yield", "Fields!C2");
    await insert();
    expect(host.inserted).toHaveLength(1);
    expect(outcome()).toContain('got "corn"');
  });

  it("tells that the selected cell is not empty", async () => {
    open("REMOVAL");
    button("Fill in the example").click();
    host.refusal = { of: "insertFormula", says: "B2 is not empty. Select an empty cell." };
    await insert();
    expect(outcome()).toBe("B2 is not empty. Select an empty cell.");
  });

  it("writes nothing over its own cells", async () => {
    open("REMOVAL");
    button("Fill in the example").click();
    await pick("yield", "Sheet1!H1");
    await insert("Sheet1!H1");
    expect(host.inserted).toEqual([]);
    expect(outcome()).toContain("where yield is taken from");
  });

  it("sees that a table has the room it needs", async () => {
    open("PROFITGRID");
    button("Fill in the example").click();
    await insert("Fields!G2");
    expect(host.inserted).toEqual([]);
    expect(outcome()).toMatch(/from G2, and H3 is not empty\. Select a cell with more room\.$/);
  });
});

describe("functions opened lately", () => {
  const recent = (): (string | null)[] =>
    [...document.querySelectorAll(".recent button")].map(({ textContent }) => textContent);

  it("stand at the head of the list, the last one first, also at the next visit", () => {
    for (const name of ["REMOVAL", "LIMENEED", "REMOVAL"]) {
      open(name);
      button("‹ All functions").click();
    }
    button("Clear the search").click();
    expect(recent()).toEqual(["REMOVAL", "LIMENEED"]);
    mount();
    expect(recent()).toEqual(["REMOVAL", "LIMENEED"]);
  });

  it("leaves out whatever is remembered that is no function", () => {
    kept.set("loamsheet.recent", '["REMOVAL","NOSUCH",7]');
    mount();
    expect(recent()).toEqual(["REMOVAL"]);
  });
});
