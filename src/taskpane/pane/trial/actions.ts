import { words } from "../../words";
import type { Action, Desk } from "../action";
import { printPart } from "../parts/print";
import { numberIn, readNumber, refusalIn } from "../parts/read-number";
import { headingId } from "../parts/text";
import { trialLimits } from "../../../core/trials/trial-limits";
import { designWords } from "../../../functions/trials/design-words";
import { parted } from "../parts/parted";
import { changeKept, changeTrial, holdsSomething, telling } from "./change-trial";
import { trialBlock } from "./insert";
import { layoutFor, trialIds } from "./layout";
import { firstTrial, noStrip } from "./state";
import { stripActions } from "./strip-actions";

const say = words.trial;

/** Any field of the form: "width:30". What was refused in it is forgotten until the next layout. */
export const fillIn: Action = {
  name: "trial.form",
  perform(desk, value) {
    const { kept, refusals } = desk.state().trial;
    const [field, text] = parted(value);
    if (!(field in kept.form)) return;
    const others = Object.fromEntries(Object.entries(refusals).filter(([id]) => id !== `trial-${field}`));
    changeKept(desk, { form: { ...kept.form, [field]: text } }, { refusals: others });
  },
};

export const chooseDesign: Action = {
  name: "trial.design",
  perform(desk, value) {
    const design = designWords.find(value);
    if (design) changeKept(desk, { form: { ...desk.state().trial.kept.form, design } }, { refusals: {} });
  },
};

export const chooseEntry: Action = {
  name: "trial.entry",
  perform(desk, value) {
    const entry = value === "weights" ? "weights" : "yields";
    changeKept(desk, { form: { ...desk.state().trial.kept.form, entry } });
  },
};

export const chooseCrop: Action = {
  name: "trial.crop",
  perform: (desk, crop) => changeKept(desk, { form: { ...desk.state().trial.kept.form, crop } }),
};

/** Makes a layout; asks first where yields would go. */
export const makeLayout: Action = {
  name: "trial.make",
  label: say.make,
  perform(desk) {
    const { kept } = desk.state().trial;
    if (kept.strips.some(holdsSomething)) changeTrial(desk, { asking: "replace" }, "trial-question");
    else draw(desk);
  },
};

export const replaceLayout: Action = { name: "trial.replace", label: say.replaceNow, perform: draw };

function draw(desk: Desk): void {
  const { form, costs, layout: before } = desk.state().trial.kept;
  const typed = readNumber(say.seed, form.seed, trialLimits.seed);
  const seedRefusal = refusalIn(typed);
  if (seedRefusal !== undefined) {
    return changeTrial(desk, { refusals: { [trialIds.seed]: seedRefusal }, asking: undefined }, trialIds.seed);
  }
  const seed = numberIn(typed) ?? drawnSeed();
  const made = layoutFor(form, seed);
  if ("refusals" in made) {
    return changeTrial(desk, { refusals: made.refusals, asking: undefined }, Object.keys(made.refusals)[0]);
  }
  const { layout } = made;
  const costOf = (name: string) => costs[before?.treatments.indexOf(name) ?? -1] ?? "";
  changeKept(
    desk,
    {
      layout,
      form: { ...form, seed: String(seed) },
      strips: layout.strips.map(() => noStrip),
      costs: layout.treatments.map(costOf),
    },
    { refusals: {}, asking: undefined },
    "trial-map-head",
  );
}

/** Four digits are easy to write on the field sheet. */
function drawnSeed(): number {
  const [drawn = 1] = crypto.getRandomValues(new Uint16Array(1));
  return 1000 + (drawn % 9000);
}

/** Takes back a question that is open. */
export const leaveAsIs: Action = {
  name: "trial.leave",
  perform: (desk, focus) => changeTrial(desk, { asking: undefined }, focus),
};

/** The number of blocks that TRIALSIZE asks for. */
export const useBlocks: Action = {
  name: "trial.blocks",
  perform: (desk, blocks) =>
    changeKept(desk, { form: { ...desk.state().trial.kept.form, blocks } }, {}, trialIds.blocks),
};

/** Asks where the trial goes, from the selected cell on. */
export const askInsert: Action = {
  name: "trial.insert",
  label: say.insert,
  allowed: ({ trial }) => trial.kept.layout !== undefined,
  perform: (desk) =>
    telling(desk, "insert", async () => {
      const { kept } = desk.state().trial;
      if (!kept.layout) return;
      const { address } = await desk.host.readSelection();
      const block = trialBlock(kept, kept.layout, address);
      changeTrial(desk, { asking: "insert", target: block.address, said: undefined }, "trial-question");
    }),
};

export const insertNow: Action = {
  name: "trial.inserting",
  label: say.insertNow,
  allowed: ({ trial }) => trial.asking === "insert",
  perform: (desk) =>
    telling(desk, "insert", async () => {
      const { kept, target } = desk.state().trial;
      if (!kept.layout || target === undefined) return;
      changeTrial(desk, { asking: undefined }, "trial-insert");
      const block = trialBlock(kept, kept.layout, target);
      await desk.host.write([block], "nothing");
      changeTrial(desk, { said: { at: "insert", says: say.inserted(block.address), done: true } });
    }),
};

export const printMap: Action = {
  name: "trial.print",
  label: say.print,
  perform: () => printPart("trial-map"),
};

export const askEmpty: Action = {
  name: "trial.empty",
  label: say.startOver,
  perform: (desk) => changeTrial(desk, { asking: "empty" }, "trial-question"),
};

export const emptyNow: Action = {
  name: "trial.emptying",
  label: say.startOverNow,
  allowed: ({ trial }) => trial.asking === "empty",
  perform: (desk) => desk.change((state) => ({ ...state, trial: firstTrial() }), headingId("trial")),
};

export const trialActions: readonly Action[] = [
  fillIn,
  chooseDesign,
  chooseEntry,
  chooseCrop,
  makeLayout,
  replaceLayout,
  leaveAsIs,
  useBlocks,
  ...stripActions,
  askInsert,
  insertNow,
  printMap,
  askEmpty,
  emptyNow,
];
