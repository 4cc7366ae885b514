import { leaseForms } from "../../../src/reference/money/lease-forms";

describe("flexible leases", () => {
  it("are frozen: five forms, two of them seen in print", () => {
    const forms = Object.values(leaseForms);
    expect(forms).toHaveLength(5);
    expect(forms.filter(({ mark }) => mark === "V").map(({ label }) => label)).toEqual([
      "share of gross",
      "base plus bonus",
    ]);
  });
  it("name the usual shares of the publication: 25-40 % of gross, a third to a half of the revenue above the base", () => {
    expect(leaseForms.shareOfGross.usual).toMatchObject({ from: 0.25, to: 0.4 });
    expect(leaseForms.basePlusBonus.usual).toMatchObject({ from: 1 / 3, to: 0.5 });
  });
});
