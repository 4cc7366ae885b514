import { adjuvantVolume } from "../../core/protection/adjuvant-volume";
import { productFromActive as productFromActiveOf } from "../../core/protection/product-from-active";
import { sprayLimits } from "../../core/protection/spray-limits";
import { tankFill as tankFillOf } from "../../core/protection/tank-fill";
import { tankLoads as tankLoadsOf } from "../../core/protection/tank-loads";
import { fluidOuncePerGallon, ouncePerPound, pintPerGallon } from "../../core/units/units";
import { choice, line, optional, percent, quantity, worksheetFunction, type OneArgument } from "../frame";
import { productFormWords } from "./protection-words";
import { labelLaw, mixingLaw } from "../cautions";

export const tankGallons = quantity(sprayLimits.tank, { says: "spray that the tank holds when filled" });
export const gallonsPerAcre = quantity(sprayLimits.volume, { says: "spray volume" });

const concentrationCell = quantity(sprayLimits.concentration, {
  says: "lb of active per gallon of a liquid, or percent of a dry product, from the label",
});

/** A percent sign says by itself that the product is dry. */
const concentration: OneArgument<{ readonly amount: number; readonly isPercent: boolean }> = {
  ...concentrationCell,
  read: (cell, argument) => ({
    amount: concentrationCell.read(cell, argument),
    isPercent: typeof cell === "string" && cell.includes("%"),
  }),
};

export const productFromActive = worksheetFunction({
  name: "PRODUCTFROMACTIVE",
  family: "protection",
  summary: "Product per acre that carries a rate of active ingredient.",
  asks: ["product rate from active ingredient", "pounds of active to gallons of product"],
  args: {
    activeRate: quantity(sprayLimits.activeRate, { says: "active ingredient or acid equivalent wanted" }),
    concentration,
    form: optional(
      choice(productFormWords, { says: "liquid or dry" }),
      null,
      "asked for, unless the concentration is typed with a % sign, which means dry",
    ),
  },
  returns: { shape: "one", unit: "gal/ac or lb/ac", says: "product: gal/ac of a liquid, lb/ac of a dry one" },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw, "Take both amounts on one basis: active ingredient with active ingredient, acid with acid."],
  example: { call: [2, 80, "dry"], gives: 2.5, because: "printed: 2 lb of active from an 80 % product is 2.5 lb" },
  compute: (values) =>
    productFromActiveOf({
      activeLbPerAc: values.activeRate,
      concentration: values.concentration.amount,
      form: values.form ?? (values.concentration.isPercent ? "dry" : null),
    }),
  value: (result) => result.productPerAc,
  working: ({ form, productPerAc }) =>
    form === "liquid"
      ? [
          line("Product", productPerAc, "gal/ac"),
          line("In pints", productPerAc * pintPerGallon, "pt/ac"),
          line("In fluid ounces", productPerAc * fluidOuncePerGallon, "fl oz/ac"),
        ]
      : [line("Product", productPerAc, "lb/ac"), line("In ounces", productPerAc * ouncePerPound, "oz/ac")],
});

export const tankFill = worksheetFunction({
  name: "TANKFILL",
  family: "protection",
  summary: "Product to put into a tank, full or for the last acres.",
  asks: ["how much product in the tank", "how much for the last load"],
  args: {
    ratePerAcre: quantity(sprayLimits.rate, { says: "product rate, in any unit per acre" }),
    tankGallons,
    gallonsPerAcre,
    acresLeft: optional(
      quantity(sprayLimits.acres, { says: "acres still to spray; fewer than a full tank does make a part load" }),
      null,
      "a full tank",
    ),
  },
  returns: { shape: "one", unit: "per tank", says: "product for this fill, in the unit of the rate" },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw, mixingLaw],
  example: { call: [32, 800, 15], gives: 1706.667, because: "by hand: 800 / 15 = 53.33 ac; × 32" },
  compute: (values) =>
    tankFillOf({
      ratePerAc: values.ratePerAcre,
      tankGal: values.tankGallons,
      volumeGalPerAc: values.gallonsPerAcre,
      acresLeft: values.acresLeft,
    }),
  value: (result) => result.productPerTank,
  working: (result) => [
    line("A full tank sprays", result.fullTankAcres, "ac"),
    ...(result.isPartLoad ? [line("This part load sprays", result.acres, "ac")] : []),
    line("Spray to mix", result.sprayGal, "gal"),
    line("Product", result.productPerTank, "in the unit of the rate"),
  ],
});

export const tankLoads = worksheetFunction({
  name: "TANKLOADS",
  family: "protection",
  summary: "Tank loads for a field, and what the last one has to spray.",
  asks: ["how many tank loads", "how many fills for the field"],
  args: { acres: quantity(sprayLimits.acres, { says: "acres to spray" }), tankGallons, gallonsPerAcre },
  returns: { shape: "one", unit: "loads", says: "fills, the last part load counted as one" },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw],
  example: { call: [154, 800, 15], gives: 3, because: "by hand: 154 × 15 / 800 = 2.89, rounded up" },
  compute: (values) =>
    tankLoadsOf({ acres: values.acres, tankGal: values.tankGallons, volumeGalPerAc: values.gallonsPerAcre }),
  value: (result) => result.loads,
  working: (result) => [
    line("A full tank sprays", result.acresPerLoad, "ac"),
    line("Full loads", result.fullLoads, "loads"),
    line("Last part load sprays", result.lastAcres, "ac"),
    line("Last part load", result.lastGal, "gal"),
    line("Spray in all", result.totalGal, "gal"),
  ],
});

export const sprayAdjuvant = worksheetFunction({
  name: "SPRAYADJUVANT",
  family: "protection",
  summary: "Adjuvant for a tank when its label gives percent by volume.",
  asks: ["how much surfactant in the tank", "adjuvant percent by volume", "0.25 % v/v of 800 gallons"],
  args: {
    percentVolume: percent(sprayLimits.adjuvant, { says: "adjuvant, percent by volume", smallIsUsual: true }),
    tankGallons: quantity(sprayLimits.tank, { says: "gallons of spray in this load" }),
  },
  returns: { shape: "one", unit: "gal", says: "adjuvant for the load" },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw, mixingLaw],
  example: { call: [0.25, 800], gives: 2, because: "by hand: 0.25 / 100 × 800" },
  compute: (values) => adjuvantVolume({ volumePct: values.percentVolume, sprayGal: values.tankGallons }),
  value: (result) => result.gallons,
  working: (result) => [
    line("Adjuvant", result.gallons, "gal"),
    line("In quarts", result.quarts, "qt"),
    line("In fluid ounces", result.ounces, "fl oz"),
  ],
});
