import { isWanted, type StarterSheet } from "../starter-sheet";
import type { FarmPart } from "../farm-parts";

/** The sheets of a farm plan in order: what each is called and what it is for. Preview and start page list them. */
export const farmSheets = {
  "start-here": { name: "Start here", purpose: "what to fill in, in which order, and what the colors and signs mean" },
  assumptions: { name: "Assumptions", purpose: "your guide, prices, crops, lime and interest" },
  materials: {
    name: "Materials",
    purpose: "fertilizer on offer, what a pound of nutrient costs in it, the cheapest mix",
  },
  fields: { name: "Fields", purpose: "acres, last and next crop, yields, and what was put on" },
  "soil-tests": { name: "Soil tests", purpose: "what the laboratory found, with the guide's word for it" },
  "potash-ledger": {
    name: "Potash ledger",
    purpose: "potash put on, taken and left, and the test with and without the plan",
  },
  "phosphate-ledger": { name: "Phosphate ledger", purpose: "the same for phosphate" },
  "lime-plan": { name: "Lime plan", purpose: "which fields call for lime, how much, and what it costs" },
  "fertility-plan": {
    name: "Fertility plan",
    purpose: "lime, N, P2O5, K2O, S and Zn for the next crop, field by field",
  },
  "rotation-plan": { name: "Rotation plan", purpose: "the same over the next crop and the one after it" },
  "product-plan": { name: "Product plan", purpose: "pounds of product and cost, field by field" },
  "shopping-list": { name: "Shopping list", purpose: "tons and dollars of each material for the farm" },
  guides: { name: "Guides", purpose: "what each published guide asks for one field, side by side" },
  "seed-plan": { name: "Seed plan", purpose: "seeds to plant, units to buy and cost, field by field" },
  stand: {
    name: "Stand and replant",
    purpose: "what a stand counted in spring may yield, and keep or replant",
    parts: ["stand"],
  },
  protection: {
    name: "Protection program",
    purpose: "herbicide groups, cost and tank, crop by crop",
    parts: ["protection"],
  },
  tillage: {
    name: "Passes and tillage",
    purpose: "cost of a pass, and two tillage systems side by side",
    parts: ["tillage"],
  },
  drainage: {
    name: "Tile drainage",
    purpose: "spacing, main, cost and worth of tile in one field",
    parts: ["drainage"],
  },
  budgets: { name: "Crop budgets", purpose: "income, costs and break-evens per acre and per bushel" },
  "what-if": { name: "What if", purpose: "profit for other yields and prices of one crop" },
  practices: {
    name: "Practices",
    purpose: "which practices pay, how likely: adopt, test or skip",
    parts: ["practices"],
  },
  "trial-1": { name: "Trial 1", purpose: "a strip trial: layout, yields, what it says", parts: ["practices"] },
  "trial-2": { name: "Trial 2", purpose: "another strip trial", parts: ["practices"] },
  stack: {
    name: "Stack",
    purpose: "which practices to take up together, and what an acre then earns",
    parts: ["practices"],
  },
  "profit-range": {
    name: "Range of profit",
    purpose: "how far profit may range, and the odds of covering costs",
    parts: ["page"],
  },
  "harvest-check": {
    name: "Harvest check",
    purpose: "yield counts, losses, wet or dry, store or sell",
    parts: ["harvest"],
  },
  summary: { name: "Summary", purpose: "the whole farm on one page, with what matters in words" },
  "farm-page": {
    name: "Landlord or lender",
    purpose: "one page to show: plan, ranges, soil, practices",
    parts: ["page"],
  },
  lists: {
    name: "Lists",
    purpose: "the names that long drop-down lists offer",
    parts: ["protection", "tillage"],
  },
} as const satisfies Record<string, StarterSheet>;

export type FarmSheet = keyof typeof farmSheets;

/** Whether a sheet of the plan is made with these parts. */
export function isMade(sheet: FarmSheet, parts: readonly FarmPart[]): boolean {
  return isWanted(farmSheets[sheet], parts);
}
