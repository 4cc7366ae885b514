import type { WorkbookHost } from "../../../hosts/port";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { readLedgers } from "../tables/ledgers";
import { memoryOf } from "../memory";
import { changeKept, changeWhatIf, telling } from "./change-what-if";
import { keptOf } from "./memory";
import { boundTo, placesIn, readPlace, readQuietly, sheetOf } from "./places";
import { isQuantity, quantities, type Quantity } from "./quantities";
import type { Bound, WhatIfState } from "./state";

const say = words.whatIf;

/** Reads the cells that quantities are tied to, and finds again what was tried in this workbook. */
export const readSheet: Action = {
  name: "what-if.read",
  label: say.readAgain,
  perform: (desk) =>
    telling(desk, "take", async () => {
      const reading = desk.state().whatIf.reading + 1;
      changeWhatIf(desk, { reading });
      const workbook = await workbookOf(desk);
      const { whatIf } = desk.state();
      // A workbook without a name is the same one when it gets its name.
      const sameBook = whatIf.workbook === workbook || whatIf.workbook === "";
      const kept = sameBook ? whatIf.kept : keptOf(memoryOf(desk.environment, "whatIf").recall(), workbook);
      const read = await readBound(desk.host, kept);
      if (desk.state().whatIf.reading !== reading) return;
      changeWhatIf(desk, {
        ...read,
        workbook,
        kept: sameBook ? desk.state().whatIf.kept : kept,
        ...(!sameBook && { asking: false, said: undefined, former: undefined, ledgers: undefined }),
      });
    }),
};

/** What tells the open workbook from others; a workbook not saved yet goes without a name. */
async function workbookOf({ environment }: Desk): Promise<string> {
  if (environment.workbookId) return environment.workbookId();
  const open = (await environment.workbooks?.list())?.find(({ isOpen }) => isOpen);
  return open?.id ?? "";
}

/** The cells of the chosen place, and over them those that the person tied. */
async function readBound(
  host: WorkbookHost,
  kept: WhatIfState["kept"],
): Promise<Pick<WhatIfState, "bound" | "crop" | "places">> {
  const { names } = await host.taken();
  const found = placesIn(names);
  const readings = await Promise.all(found.map((place) => readPlace(host, place, names)));
  const chosen = Math.max(
    0,
    found.findIndex(({ key }) => key === kept.place),
  );
  const own = await Promise.all(
    quantities.map(async (quantity) => {
      const address = kept.cells[quantity];
      const cell = address === undefined ? undefined : await readQuietly(host, address);
      return cell ? ([[quantity, boundTo(cell)]] as const) : [];
    }),
  );
  const tied: Partial<Record<Quantity, Bound>> = Object.fromEntries(own.flat());
  return {
    places: found.map(({ key }, index) => ({ key, sheet: sheetOf(readings[index]?.bound.yield?.address ?? "") })),
    crop: readings[chosen]?.crop ?? "",
    bound: { ...readings[chosen]?.bound, ...tied },
  };
}

export const choosePlace: Action = {
  name: "what-if.place",
  async perform(desk, place) {
    changeKept(desk, { place, typed: {} });
    await readSheet.perform(desk, "");
  },
};

/** Ties a quantity to the cell that is selected. */
export const takeCell: Action = {
  name: "what-if.take",
  label: say.take,
  perform: (desk, quantity) =>
    telling(desk, "take", async () => {
      if (!isQuantity(quantity)) return;
      const cell = await desk.host.readSelection();
      const { address, value } = boundTo(cell);
      const refuse = (says: string) => changeWhatIf(desk, { said: { at: "take", says, done: false } });
      if (cell.values.length > 1 || (cell.values[0]?.length ?? 0) > 1) return refuse(say.oneCell);
      if (value === null) return refuse(say.tookNothing(address));
      const { kept, bound } = desk.state().whatIf;
      const typed = Object.fromEntries(Object.entries(kept.typed).filter(([key]) => key !== quantity));
      changeKept(
        desk,
        { cells: { ...kept.cells, [quantity]: address }, typed },
        { bound: { ...bound, [quantity]: boundTo(cell) } },
      );
    }),
};

export const drawPictures: Action = {
  name: "what-if.pictures",
  label: words.charts.read,
  perform: (desk) => telling(desk, "take", async () => changeWhatIf(desk, { ledgers: await readLedgers(desk.host) })),
};
