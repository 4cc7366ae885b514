/** @jest-environment jsdom */
import { checkForm } from "../../../src/taskpane/pane/start/check";
import { firstForm, formFrom, type StartForm } from "../../../src/taskpane/pane/start/form";
import { allFarmParts } from "../../../src/workbook/starters";
import { choiceProblems } from "../../../src/workbook/starters/choice-problems";

const ready: StartForm = { ...firstForm(), guide: "IN-MI-OH" };

function refusals(form: StartForm): Record<string, string> {
  const checked = checkForm(form);
  return "refusals" in checked ? Object.fromEntries(checked.refusals.map(({ field, says }) => [field, says])) : {};
}

function withSoybean(price: string): StartForm {
  return { ...ready, crops: { ...ready.crops, soybean: { ...ready.crops.soybean, price } } };
}

describe("checkForm", () => {
  it("asks for a guide and for nothing else on a fresh form", () => {
    expect(Object.keys(refusals(firstForm()))).toEqual(["start-guide"]);
  });

  it("makes choices that the starters accept", () => {
    const checked = checkForm(ready);
    expect("choices" in checked && choiceProblems(checked.choices)).toEqual([]);
  });

  it.each(["10.60", "$10.60", " 10.6 ", "$ 10.60 / bu", "10.60 per bu", "10.60 $/bu"])(
    "reads a price typed as “%s”",
    (text) => {
      const checked = checkForm(withSoybean(text));
      expect("choices" in checked && checked.choices.crops.find(({ crop }) => crop === "soybean")?.priceUsdPerBu).toBe(
        10.6,
      );
    },
  );

  it("names the field, what came, the range and the unit of a price out of range", () => {
    expect(refusals(withSoybean("1060"))["start-price-soybean"]).toBe(
      "Price of soybean must be between 0.01 and 100 $/bu; got 1,060.",
    );
  });

  it("names what came in place of a number", () => {
    expect(refusals(withSoybean("ten"))["start-price-soybean"]).toBe(
      'Price of soybean must be a number ($/bu); got "ten".',
    );
  });

  it("says what a number that is left out should be", () => {
    expect(refusals(withSoybean(" "))["start-price-soybean"]).toBe(
      "Price of soybean is missing. Type a number between 0.01 and 100 $/bu.",
    );
  });

  it("does not ask for the price of a crop that is not grown", () => {
    const form = withSoybean("ten");
    const crops = { ...form.crops, soybean: { ...form.crops.soybean, grown: false } };
    expect(refusals({ ...form, crops })).toEqual({});
  });

  it("asks for at least one crop", () => {
    const none = { grown: false, price: "1", yieldGoal: "1" };
    expect(refusals({ ...ready, crops: { corn: none, soybean: none, wheat: none } })).toEqual({
      "start-crops": "Tick at least one crop.",
    });
  });

  it("counts fields only where rows are empty", () => {
    const form = { ...ready, farmName: "Home", fields: "2.5" };
    expect(refusals({ ...form, figures: "demo" })).toEqual({});
    expect(refusals({ ...form, figures: "empty" })).toEqual({
      "start-fields": "Number of fields is a whole number; got 2.5.",
    });
  });

  it("wants every part of the farm plan until one is unticked", () => {
    const chosen = (form: StartForm) => {
      const checked = checkForm(form);
      return "choices" in checked ? checked.choices.parts : undefined;
    };
    expect(chosen(ready)).toEqual(allFarmParts);
    expect(chosen({ ...ready, without: ["harvest"] })).toEqual(allFarmParts.filter((part) => part !== "harvest"));
    expect(chosen({ ...ready, starter: "client-budget", without: ["harvest"] })).toEqual(allFarmParts);
  });

  it("asks for a name of the farm that fits", () => {
    expect(refusals({ ...ready, farmName: "  " })["start-farm"]).toMatch(/missing/);
    expect(refusals({ ...ready, farmName: "x".repeat(61) })["start-farm"]).toMatch(/up to 60 letters; got 61/);
  });
});

describe("formFrom", () => {
  it("brings a remembered form back", () => {
    const typed: StartForm = { ...ready, farmName: "Far Bottoms", fields: "seven", without: ["harvest"] };
    expect(formFrom(JSON.parse(JSON.stringify(typed)))).toEqual(typed);
  });

  it("leaves out no sheet that it does not know, and takes a form kept before sheets could be left out", () => {
    const { without, ...older } = ready;
    expect(without).toEqual([]);
    expect(formFrom(older)).toEqual(ready);
    expect(formFrom({ ...ready, without: ["harvest", "orchard", 3] }).without).toEqual(["harvest"]);
    expect(formFrom({ ...ready, without: "harvest" }).without).toEqual([]);
  });

  it.each([undefined, null, 3, "x", {}, { crops: { corn: 4 } }])(
    "begins afresh where %p was remembered",
    (remembered) => {
      expect(formFrom(remembered)).toEqual(firstForm());
    },
  );
});
