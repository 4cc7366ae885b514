import { refuseTaken } from "../../src/hosts/refuse-taken";
import { plan, sheet } from "./plan-parts";

const wanted = plan(
  [sheet("Fields", [], { tables: [{ name: "Soil", area: { top: 0, left: 0, bottom: 2, right: 1 }, totals: false }] })],
  [{ name: "corn_price", sheet: "Fields", area: { top: 4, left: 0, bottom: 4, right: 0 }, says: "corn price" }],
);
const say = {
  sheet: (name: string) => `sheet ${name}`,
  table: (name: string) => `table ${name}`,
  name: (name: string) => `name ${name}`,
};
const none = { sheets: [], tables: [], names: [] };

describe("refuseTaken", () => {
  it("lets a plan pass that uses nothing of the workbook, sheets and tables of one name included", () => {
    expect(() => refuseTaken(wanted, none, say)).not.toThrow();
    const other = { sheets: ["Soil", "corn_price"], tables: ["Fields"], names: ["Field"] };
    expect(() => refuseTaken(wanted, other, say)).not.toThrow();
  });

  it.each([
    [{ ...none, sheets: ["FIELDS"] }, "sheet Fields"],
    [{ ...none, tables: ["soil"] }, "table Soil"],
    [{ ...none, names: ["Soil"] }, "table Soil"],
    [{ ...none, names: ["Corn_Price"] }, "name corn_price"],
    [{ ...none, tables: ["corn_price"] }, "name corn_price"],
  ])("stops at what %j uses already, capitals or not", (taken, says) => {
    expect(() => refuseTaken(wanted, taken, say)).toThrow(says);
  });
});
