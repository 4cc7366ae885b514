/** @jest-environment jsdom */
import { mountPane } from "../../src/taskpane/pane";
import { pastedStrips } from "../../src/taskpane/pane/trial/yields";
import { letterOf } from "../../src/taskpane/pane/trial/layout";
import { trialLayout } from "../../src/core/trials/trial-layout";
import { FakeHost } from "./fake-host";
import { byId, field, press, storageIn, type } from "./on-page";

let host: FakeHost;
let stored: Map<string, string>;

function mount(): void {
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, { kind: "excel", storage: () => storageIn(stored) });
  press("Strip trials");
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 10));
const page = (): string => document.body.textContent ?? "";

/** Two treatments in six pairs, drawn by 9, strips 20 ft by 600 ft. */
function layOut(name = "fungicide in Home Quarter"): void {
  type("trial-name", name);
  type("trial-treatments", "check\nfungicide");
  document.querySelector<HTMLInputElement>("#trial-design-pairs")?.click();
  type("trial-blocks", "6");
  type("trial-width", "20");
  type("trial-length", "600");
  type("trial-seed", "9");
  press("Make the layout");
}

const check = [180, 176, 171, 183, 190, 174];
const treated = [187.1, 179.4, 180.8, 188.2, 188.5, 180.6];

/** The yields in the order of the strips that the seed draws. */
function column(): string {
  return trialLayout({ treatments: ["check", "fungicide"], blocks: 6, seed: 9, design: "pairs" })
    .map(({ block, treatment }) => (treatment === "check" ? check : treated)[block - 1])
    .join("\n");
}

function paste(text: string): void {
  type("trial-paste", text);
  press("Put it into the strips");
}

beforeEach(() => {
  stored = new Map();
  host = new FakeHost();
  mount();
});

describe("the layout", () => {
  it("draws the strips that TRIALLAYOUT gives, with their edges and the ground they take", () => {
    layOut();
    expect(document.activeElement?.id).toBe("trial-map-head");
    const expected = trialLayout({ treatments: ["check", "fungicide"], blocks: 6, seed: 9, design: "pairs" });
    const rows = [...byId("trial-map").querySelectorAll("tbody tr")].map((row) =>
      [...row.children].map(({ textContent }) => textContent),
    );
    expect(rows).toEqual(
      expected.map(({ strip, block, treatment }) => [
        String(strip),
        String(block),
        `${treatment === "check" ? "A" : "B"} ${treatment}`,
        String((strip - 1) * 20),
        String(strip * 20),
      ]),
    );
    // 12 × 20 × 600 / 43,560
    expect(page()).toContain("12 strips, 240 ft across, 3.31 ac in all.");
    expect(byId("strip-map-alt").textContent).toContain(
      expected.map(({ strip, treatment }) => `${strip} ${treatment}`).join(", "),
    );
    expect(page()).toContain("Plant the layout as drawn");
  });

  it("draws a number of its own when none is typed, and keeps it", () => {
    type("trial-treatments", "check\npotash");
    press("Make the layout");
    expect(Number(field("trial-seed").value)).toBeGreaterThanOrEqual(1000);
    expect(page()).toContain(`Drawn with the number ${field("trial-seed").value}`);
  });

  it.each([
    ["trial-treatments", "check", "Treatments: name at least two, the untreated check among them."],
    ["trial-blocks", "1", "Blocks or pairs must be between 2 and 100 blocks; got 1."],
    ["trial-width", "900", "Width of a strip must be between 1 and 200 ft; got 900."],
    ["trial-seed", "many", 'Number to draw by must be a number; got "many".'],
  ])("says at %s what does not fit and goes there", (id, text, sentence) => {
    type("trial-treatments", "check\npotash");
    type(id, text);
    press("Make the layout");
    expect(document.activeElement?.id).toBe(id);
    expect(byId(`${id}-refusal`).textContent).toContain(sentence);
  });

  it("asks before a new layout empties yields", () => {
    layOut();
    paste(column());
    press("Make a new layout");
    expect(document.activeElement?.id).toBe("trial-question");
    press("Keep the layout");
    expect(field("trial-yield-0").value).not.toBe("");
    press("Make a new layout");
    press("Make it and empty the yields");
    expect(field("trial-yield-0").value).toBe("");
  });
});

describe("yields and result", () => {
  it("tells the gain, its range and the chance to pay, as the printed pairs do", () => {
    layOut();
    expect(page()).toContain("The result shows here once at least two blocks have their yields.");
    paste(column());
    expect(page()).toContain("12 strips filled.");
    type("trial-price", "$4.50");
    type("trial-cost-1", "18.50");
    // Differences 7.1, 3.4, 9.8, 5.2, −1.5, 6.6: mean 5.1, ± 2.015 × 1.579; 18.5 / 4.5 = 4.1 pays.
    expect(page()).toContain(
      "The gain is 5.1 bu/ac, likely between 1.9 and 8.3; at $4.50/bu and a cost of $18.50/ac the chance that it pays is 72 %.",
    );
    expect(byId("differences-alt").textContent).toContain(
      "Pair 1 7.1; Pair 2 3.4; Pair 3 9.8; Pair 4 5.2; Pair 5 −1.5",
    );
    expect(byId("differences").textContent).toContain("Dashed line: 4.1 bu/ac, the gain that pays.");
  });

  it("leaves a lost strip out and says how many cannot be read", () => {
    layOut();
    paste(column());
    type("trial-yield-0", "");
    expect(page()).toMatch(/Pairs\s*5/);
    type("trial-yield-0", "lost");
    expect(byId("trial-unread").textContent).toBe(
      '1 strip cannot be read yet. Yield must be a number (bu/ac); got "lost".',
    );
    expect(field("trial-yield-0").getAttribute("aria-invalid")).toBe("true");
  });

  it("turns strip weights into yields at market moisture", () => {
    layOut();
    document.querySelector<HTMLInputElement>("#trial-entry-weights")?.click();
    type("trial-crop", "corn");
    paste("3400\t19.2\n\n");
    // By hand: 3,400 × 80.8 / 84.5 / 56 = 58.056 bu on 600 × 20 / 43,560 = 0.27548 ac.
    expect(field("trial-weight-0").closest("tr")?.textContent).toContain("210.7");
  });

  it("compares several treatments in blocks", () => {
    type("trial-treatments", "A\nB\nC");
    type("trial-blocks", "3");
    type("trial-seed", "5");
    press("Make the layout");
    const means: Record<string, readonly number[]> = { A: [28, 29, 31], B: [30, 31, 34], C: [40, 43, 40] };
    const strips = trialLayout({ treatments: ["A", "B", "C"], blocks: 3, seed: 5, design: "blocks" });
    paste(strips.map(({ block, treatment }) => means[treatment]?.[block - 1]).join("\n"));
    // C over A: 41 − 29.333 = 11.667
    expect(page()).toContain("The gain of C over A is 11.7 bu/ac");
    expect(byId("differences-alt").textContent).toContain("Gain of each treatment over the check");
  });

  it("takes the selected cells and says when there are more lines than strips", async () => {
    host = new FakeHost({
      cells: Object.fromEntries(Array.from({ length: 14 }, (_, row) => [`Sheet1!B${row + 1}`, { value: 170 + row }])),
    });
    mount();
    layOut();
    host.selected = "Sheet1!B1:B14";
    press("Take the selected cells");
    await settled();
    expect(field("trial-yield-11").value).toBe("181");
    expect(page()).toContain("14 lines were pasted for 12 strips; the last ones found no strip.");
  });

  it("remembers everything, and empties it when told so", () => {
    layOut();
    paste(column());
    mount();
    expect(field("trial-name").value).toBe("fungicide in Home Quarter");
    expect(page()).toContain("The gain is 5.1 bu/ac");
    press("Empty the trial");
    press("Empty it");
    expect(field("trial-name").value).toBe("");
    expect(document.getElementById("trial-map")).toBeNull();
  });

  it("begins afresh from a memory that makes no sense", () => {
    stored.set("loamsheet.trial", '{"form":{"blocks":7},"layout":{"strips":"none"},"strips":3}');
    mount();
    expect(field("trial-blocks").value).toBe("4");
  });
});

describe("how many blocks", () => {
  it("asks TRIALSIZE and puts its answer into the form: a gain of one SD of a difference takes 10", () => {
    type("trial-gainToSee", "10");
    type("trial-stripSd", "7.0711");
    type("trial-confidence-size", "95");
    expect(page()).toContain("10 blocks see that gain 80 times in a hundred.");
    press("Lay out 10 blocks");
    expect(field("trial-blocks").value).toBe("10");
  });
});

describe("into the workbook", () => {
  it("asks, and fills empty cells with the layout, the yields and a formula for the result", async () => {
    layOut();
    paste(column());
    type("trial-price", "4.50");
    type("trial-cost-1", "18.50");
    host.selected = "'Trial page'!B4";
    press("Put the trial into the sheet");
    await settled();
    expect(page()).toContain("Write into 'Trial page'!B4:K32, all of it empty now?");
    expect(host.written).toEqual([]);
    press("Write it");
    await settled();
    const [written] = host.written;
    const rows = written?.blocks[0]?.rows ?? [];
    expect(written?.mayReplace).toBe("nothing");
    expect(rows[0]?.[0]).toBe("Strip trial: fungicide in Home Quarter");
    expect(rows[2]?.slice(0, 6)).toEqual(["Strip", "Pair", "Treatment", "From ft", "To ft", "Yield bu/ac"]);
    expect(rows.slice(3, 15).map((row) => row[5])).toEqual(column().split("\n").map(Number));
    const formula = rows[16]?.[0];
    const first = trialLayout({ treatments: ["check", "fungicide"], blocks: 6, seed: 9, design: "pairs" })[0]
      ?.treatment;
    const costs = first === "check" ? "{0;18.5}" : "{18.5;0}";
    expect(formula).toEqual({ formula: `=LOAM.TRIALBLOCKS(D7:D18,C7:C18,G7:G18,90,"check",4.5,${costs})` });
    expect(rows.every((row) => row.length === 10)).toBe(true);
    expect(page()).toContain("It stands in 'Trial page'!B4:K32.");
  });

  it("writes weights with a formula for each yield", async () => {
    layOut();
    document.querySelector<HTMLInputElement>("#trial-entry-weights")?.click();
    type("trial-crop", "corn");
    paste("3400\t19.2");
    press("Put the trial into the sheet");
    await settled();
    press("Write it");
    await settled();
    expect(host.written[0]?.blocks[0]?.rows[3]?.slice(5, 8)).toEqual([
      { formula: '=IF(COUNT(G4:H4)=2,LOAM.TRIALSTRIPYIELD(G4,600,20,H4,"corn"),"")' },
      3400,
      19.2,
    ]);
  });

  it("tells what is in the way", async () => {
    layOut();
    host.refusal = { of: "write", says: "Sheet1!C5 is not empty." };
    press("Put the trial into the sheet");
    await settled();
    press("Write it");
    await settled();
    expect(page()).toContain("Sheet1!C5 is not empty.");
  });
});

describe("printing the map", () => {
  it("prints a copy of the map alone, with patterns of its own, and takes it away again", () => {
    const print = jest.spyOn(window, "print").mockImplementation(() => {
      const copy = document.querySelector(".print-page");
      expect(copy?.textContent).toContain("Strips of fungicide in Home Quarter");
      const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(copy?.querySelector("rect[fill^='url(#print-']")).not.toBeNull();
      window.dispatchEvent(new Event("afterprint"));
    });
    layOut();
    press("Print the map");
    expect(print).toHaveBeenCalledTimes(1);
    expect(document.querySelector(".print-page")).toBeNull();
    print.mockRestore();
  });
});

describe("printing a map whose name reads like markup", () => {
  it("keeps every word as it was typed", () => {
    const name = 'id="north" url(#south) <b>';
    let printed = "";
    const print = jest.spyOn(window, "print").mockImplementation(() => {
      const copy = document.querySelector(".print-page");
      printed = `${copy?.querySelectorAll("b").length} b, ${copy?.textContent}`;
      window.dispatchEvent(new Event("afterprint"));
    });
    layOut(name);
    press("Print the map");
    expect(printed).toMatch(/^0 b, /);
    expect(printed).toContain(`Strips of ${name}`);
    print.mockRestore();
  });
});

describe("small things", () => {
  it("reads a pasted column, an empty line being a lost strip", () => {
    expect(pastedStrips("180\r\n\r\n171\r\n", "yields").map((strip) => strip.yield)).toEqual(["180", "", "171"]);
    expect(pastedStrips("3,400\t19.2", "weights")).toEqual([{ yield: "", weight: "3,400", moisture: "19.2" }]);
  });

  it("letters treatments A to Z and on", () => {
    expect([0, 25, 26, 27].map(letterOf)).toEqual(["A", "Z", "AA", "AB"]);
  });
});
