import { headersOf } from "../../../model/table";

export const machineTable = headersOf("Machines", {
  machine: "Machine",
  kind: "Kind",
  width: "Width ft",
  mph: "Speed mph",
  acres: "Acres a year",
  price: "Price paid $",
  years: "Years kept",
  horsepower: "Engine hp",
  tractor: "Tractor paid $",
  tractorHours: "Tractor h/yr",
});

export const passCostTable = headersOf("PassCosts", {
  machine: "Machine",
  hours: "Machine h/ac",
  own: "Owning it $/ac",
  repair: "Its repairs $/ac",
  tractorOwn: "Owning tractor $/ac",
  tractorRepair: "Tractor repairs $/ac",
  fuel: "Fuel $/ac",
  oil: "Oil $/ac",
  labor: "Labor $/ac",
  total: "A pass costs $/ac",
  diesel: "Diesel gal/ac",
});

export const passTable = headersOf("TillagePasses", {
  pass: "Pass",
  system: "System",
  machine: "Machine used",
  hired: "Hired $/ac",
  diesel: "Diesel used gal/ac",
  hours: "Machine time h/ac",
  cost: "Cost of pass $/ac",
});

/** Names of passes to choose from. */
export const passNames = headersOf("PassNames", { pass: "Pass" });
