import { HostError } from "../../../hosts/port";
import { words } from "../../words";
import { always, type Action, type Desk } from "../action";
import { reportSelection } from "./report";
import type { WorkingState } from "./state";

function changeWorking(desk: Desk, part: Partial<WorkingState>): void {
  desk.change((state) => ({ ...state, working: { ...state.working, ...part } }));
}

/** Reads the selected cell and shows how its answer came about. */
export const showWorking: Action = {
  name: "working.read",
  label: words.working.readAgain,
  allowed: always,
  async perform(desk) {
    const reading = desk.state().working.reading + 1;
    changeWorking(desk, { reading });
    const part = await readSelected(desk);
    if (desk.state().working.reading === reading) changeWorking(desk, part);
  },
};

async function readSelected(desk: Desk): Promise<Partial<WorkingState>> {
  try {
    return { report: await reportSelection(desk.host), refused: undefined };
  } catch (thrown) {
    if (thrown instanceof HostError) return { report: undefined, refused: thrown.message };
    throw thrown;
  }
}

export const workingActions: readonly Action[] = [showWorking];
