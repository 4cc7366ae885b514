import { machineryLimits } from "../../../../core/machinery/machinery-limits";
import { fieldMachineWords } from "../../../../functions/cover/cover-words";
import { fieldCapacity } from "../../../../functions/cover/field-work";
import { passCost } from "../../../../functions/cover/pass-cost";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { lookUp, orBlank, quiet, whenNamed, whenNumbers, wordsInRow } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, computedWords, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { typedEntry } from "../../../model/entries";
import { tableBlock, type TableBlock } from "../../../model/table";
import { machineExamples, machineTerms } from "../../../scenario/tillage-examples";
import { labelsOf } from "../../word-lists";
import type { FarmContext } from "../farm-context";
import { named } from "../names";
import { machineTable, passCostTable } from "./tillage-headers";

const rows = 8;
const term = (key: string) => place(`machinery.${key}`);

export function machineTermsBlock(): EntriesBlock {
  const { dieselUsdPerGal, wageUsdPerHour } = machineTerms;
  return {
    kind: "entries",
    key: "machinery",
    title: "Fuel and labor",
    entries: [
      typedEntry(
        { key: "diesel", label: "Diesel", unit: "$/gal", format: formats.cents },
        dieselUsdPerGal,
        within(machineryLimits.fuelPrice, "Price of diesel"),
      ),
      typedEntry(
        { key: "wage", label: "An hour of labor", unit: "$/h", format: formats.cents, says: "Hired or your own." },
        wageUsdPerHour,
        within(machineryLimits.wage, "Worth of an hour of labor"),
      ),
    ],
  };
}

/** The machines and what was paid for them. */
export function machineBlock({ withDemo }: FarmContext): TableBlock {
  const machines = withDemo ? machineExamples : [];
  const whole = { width: 11, format: formats.whole };
  const one = { width: 11, format: formats.one };
  const { width, mph, acres, price, years, horsepower, hoursPerYear } = machineryLimits;
  return tableBlock(
    machineTable,
    { title: "Machines", rows },
    {
      machine: typedWords(pick(machines, "machine"), {
        width: 22,
        note: "A name of its own for each machine or set-up.",
      }),
      kind: typedWords(pick(machines, "kind"), {
        width: 20,
        allow: oneOf(labelsOf(fieldMachineWords), "Kind of machine: its usual efficiency, wear and repairs."),
      }),
      width: typedNumber(pick(machines, "widthFt"), { ...one, allow: within(width, "Working width") }),
      mph: typedNumber(pick(machines, "mph"), { ...one, allow: within(mph, "Speed in the field") }),
      acres: typedNumber(pick(machines, "acresPerYear"), {
        ...whole,
        allow: within(acres, "Acres it goes over in a year, all passes"),
      }),
      price: typedNumber(pick(machines, "priceUsd"), {
        width: 12,
        format: formats.dollars,
        allow: within(price, "Price"),
      }),
      years: typedNumber(pick(machines, "years"), { ...whole, allow: within(years, "Years it is kept") }),
      horsepower: typedNumber(pick(machines, "horsepower"), {
        ...whole,
        allow: within(horsepower, "Rated horsepower of the tractor or its own engine"),
      }),
      tractor: typedNumber(pick(machines, "tractorUsd"), {
        width: 12,
        format: formats.dollars,
        allow: within(price, "Price paid for the tractor"),
        note: "Blank where the machine has an engine of its own.",
      }),
      tractorHours: typedNumber(pick(machines, "tractorHours"), {
        ...whole,
        allow: within(hoursPerYear, "All hours of the tractor in a year"),
        note: "All its hours, not only those with this machine; needed with the tractor's price.",
      }),
    },
  );
}

const own = passCostTable.own;

/** What a pass with each machine costs, part by part. */
export function passCostBlock(): TableBlock {
  const money = { width: 11, format: formats.cents };
  return tableBlock(
    passCostTable,
    { title: "What a pass costs", rows },
    {
      machine: computedWords(wordsInRow(machineTable.all("machine"), passCostTable.rowNumber), { width: 22 }),
      hours: computed(known(formula`1/${acresPerHour()}`), { width: 20, format: formats.upToThree }),
      own: computed(part(2), money),
      repair: computed(part(3), money),
      tractorOwn: computed(part(4), money),
      tractorRepair: computed(part(5), money),
      fuel: computed(part(6), { ...money, note: "At the average load of a season; heavy tillage takes more." }),
      oil: computed(part(7), money),
      labor: computed(part(8), { ...money, note: "A tenth more than the machine's hours." }),
      total: computed(part(9), money),
      diesel: computed(
        whenNumbers([own("fuel")], formula`IF(${term("diesel")}>0,${own("fuel")}/${term("diesel")},"")`),
        {
          width: 11,
          format: formats.two,
        },
      ),
    },
  );
}

/** Nothing until the machine of this row has its figures. */
function known(value: Expression): Expression {
  const needed = (["width", "mph", "price", "acres", "horsepower"] as const).map(fact);
  return whenNamed(own("machine"), quiet(whenNumbers(needed, value)));
}

/** A fact of the machine of this row; blank stays blank. */
function fact(column: keyof typeof machineTable.headers): Expression {
  return lookUp(own("machine"), machineTable.all("machine"), machineTable.all(column));
}

function acresPerHour(): Expression {
  return call(fieldCapacity, { width: fact("width"), mph: fact("mph"), efficiency: fact("kind") });
}

/** A line of the cost of a pass: 2 to 5 own and repair, 6 fuel, 7 oil, 8 labor, 9 the total; dollars an acre. */
function part(line: number): Expression {
  const table = call(passCost, {
    implement: fact("kind"),
    width: fact("width"),
    mph: fact("mph"),
    price: fact("price"),
    acresPerYear: fact("acres"),
    horsepower: fact("horsepower"),
    fuelPrice: term("diesel"),
    wage: term("wage"),
    rate: named("interestRate"),
    years: orBlank(fact("years")),
    tractorPrice: orBlank(fact("tractor")),
    tractorHours: orBlank(fact("tractorHours")),
  });
  return known(formula`INDEX(${table},${line},2)`);
}
