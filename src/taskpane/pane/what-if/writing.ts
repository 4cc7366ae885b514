import type { WrittenBlock } from "../../../hosts/port";
import { words } from "../../words";
import type { Action } from "../action";
import { numberIn } from "../parts/read-number";
import type { PaneState } from "../state";
import { readQuantity } from "./case";
import { changeKept, changeWhatIf, telling } from "./change-what-if";
import { quantities, type Quantity } from "./quantities";
import { readSheet } from "./reading";
import type { WhatIfState } from "./state";

const say = words.whatIf;

/** One number on its way into the sheet. */
export interface Put {
  readonly quantity: Quantity;
  /** Missing where the sheet works the value out, or where no cell is tied. */
  readonly entry?: { readonly address: string; readonly value: number | null };
  readonly shownAddress?: string;
  readonly now: number;
}

/** The numbers that differ from what the sheet says. */
export function putsOf(state: WhatIfState): Put[] {
  return quantities.flatMap((quantity) => {
    if (state.kept.typed[quantity] === undefined) return [];
    const now = numberIn(readQuantity(state, quantity));
    const bound = state.bound[quantity];
    if (now === undefined || now === bound?.value) return [];
    return [
      {
        quantity,
        now,
        ...(bound?.entry && { entry: bound.entry }),
        ...(bound && { shownAddress: bound.address }),
      },
    ];
  });
}

function blocksOf(state: WhatIfState): { readonly now: WrittenBlock[]; readonly former: WrittenBlock[] } {
  const entries = putsOf(state).flatMap(({ entry, now }) => (entry ? [{ ...entry, now }] : []));
  return {
    now: entries.map(({ address, now }) => ({ address, rows: [[now]] })),
    former: entries.map(({ address, value }) => ({ address, rows: [[value]] })),
  };
}

const hasPuts = ({ whatIf }: PaneState): boolean => blocksOf(whatIf).now.length > 0;

export const askPut: Action = {
  name: "what-if.ask",
  label: say.put,
  perform(desk) {
    if (hasPuts(desk.state())) changeWhatIf(desk, { asking: true, said: undefined }, "what-if-question");
    else changeWhatIf(desk, { asking: false, said: { at: "sheet", says: say.nothingToPut, done: false } });
  },
};

export const leaveSheet: Action = {
  name: "what-if.leave",
  label: say.putNot,
  perform: (desk) => changeWhatIf(desk, { asking: false }, "what-if-put"),
};

/** Writes the numbers that were asked about; what stood there can be put back. */
export const putNow: Action = {
  name: "what-if.put",
  allowed: (state) => state.whatIf.asking && hasPuts(state),
  perform: (desk) =>
    telling(desk, "sheet", async () => {
      const { now, former } = blocksOf(desk.state().whatIf);
      changeWhatIf(desk, { asking: false }, "what-if-put");
      await desk.host.write(now, "typedValues");
      changeKept(desk, { typed: {} }, { former, said: { at: "sheet", says: say.putDone, done: true } });
      await readSheet.perform(desk, "");
    }),
};

export const putBack: Action = {
  name: "what-if.back",
  label: say.putBack,
  allowed: (state) => state.whatIf.former !== undefined,
  perform: (desk) =>
    telling(desk, "sheet", async () => {
      const { former } = desk.state().whatIf;
      if (!former) return;
      await desk.host.write(former, "typedValues");
      changeWhatIf(
        desk,
        { former: undefined, said: { at: "sheet", says: say.putBackDone, done: true } },
        "what-if-put",
      );
      await readSheet.perform(desk, "");
    }),
};

/** Lets go of everything tried: the pane shows what the sheet says. */
export const backToSheet: Action = {
  name: "what-if.own",
  label: say.own,
  async perform(desk) {
    changeKept(desk, { typed: {} }, { said: { at: "sheet", says: say.ownDone, done: true } });
    await readSheet.perform(desk, "");
  },
};
