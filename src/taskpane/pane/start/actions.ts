import { HostError, type FillReceipt } from "../../../hosts/port";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { isIdle } from "../idle";
import { demoFarmName } from "../../../workbook/scenario/windmill-hollow";
import { isFarmPart, starterCrops, type StarterChoices } from "../../../workbook/starters";
import { parted } from "../parts/parted";
import { unlessRefused } from "../unless-refused";
import { checkForm } from "./check";
import { fieldIds } from "./field-ids";
import { ownFigures, starterOf, type CropLine, type StartForm } from "./form";
import type { Refusal } from "./state";

const say = words.start;

const changeStart = changePart("start");

/** Takes over what was typed; a sentence that no longer holds goes away at once. */
function changeForm(desk: Desk, part: Partial<StartForm>): void {
  const { start } = desk.state();
  const form = { ...start.form, ...part };
  const still = refusalsOf(form);
  const refusals = start.refusals.flatMap(({ field }) => still.filter((refusal) => refusal.field === field));
  changeStart(desk, { form, refusals, summary: start.summary && refusals.length > 0 });
}

function refusalsOf(form: StartForm): readonly Refusal[] {
  const checked = checkForm(form);
  return "refusals" in checked ? checked.refusals : [];
}

/** An action that takes over one field of the form. */
function entry(name: string, part: (value: string, form: StartForm) => Partial<StartForm>): Action {
  return {
    name: `start.${name}`,
    perform: (desk, value) => changeForm(desk, part(value, desk.state().start.form)),
  };
}

export const chooseStarter = entry("starter", (starter) => ({ starter }));
export const chooseGuide = entry("guide", (guide) => ({ guide }));
export const nameFarm = entry("farm", (farmName) => ({ farmName }));

export const chooseFigures = entry("figures", (value, form) =>
  value === "empty"
    ? ownFigures(form)
    : { figures: "demo", farmName: form.farmName.trim() === "" ? demoFarmName : form.farmName },
);

export const countFields = entry("fields", (fields) => ({ fields }));
export const chooseProtect = entry("protect", (value) => ({ protect: value === "yes" }));

export const tickCrop = entry("grown", (value, form) => {
  const [crop, ticked] = parted(value);
  return withCrop(form, crop, { grown: ticked === "yes" });
});

export const tickPart = entry("part", (value, { without }) => {
  const [part, ticked] = parted(value);
  if (!isFarmPart(part)) return {};
  const others = without.filter((each) => each !== part);
  return { without: ticked === "yes" ? others : [...others, part] };
});

export const priceCrop = entry("price", (value, form) => {
  const [crop, price] = parted(value);
  return withCrop(form, crop, { price });
});

export const yieldCrop = entry("yield", (value, form) => {
  const [crop, yieldGoal] = parted(value);
  return withCrop(form, crop, { yieldGoal });
});

function withCrop(form: StartForm, name: string, part: Partial<CropLine>): Partial<StartForm> {
  const crop = starterCrops.find((known) => known === name);
  return crop ? { crops: { ...form.crops, [crop]: { ...form.crops[crop], ...part } } } : {};
}

/** On leaving a field: says what does not fit in it, and nothing about fields not yet visited. */
export const leaveField: Action = {
  name: "start.leave",
  perform(desk, field) {
    const { form, refusals } = desk.state().start;
    const found = refusalsOf(form).filter((refusal) => refusal.field === field);
    if (found.length === 0 || refusals.some((refusal) => refusal.field === field)) return;
    changeStart(desk, { refusals: [...refusals, ...found] });
  },
};

/** From the summary to the field it names. */
export const goToField: Action = {
  name: "start.go",
  perform: (_desk, value) => document.getElementById(value)?.focus(),
};

/** Writes the starter into the workbook, or says what is still missing. */
export const fill: Action = {
  name: "start.fill",
  label: say.fill,
  allowed: isIdle,
  async perform(desk) {
    const { form } = desk.state().start;
    const checked = checkForm(form);
    if ("refusals" in checked) {
      changeStart(desk, { refusals: checked.refusals, summary: true, done: undefined }, fieldIds.summary);
      return;
    }
    changeStart(desk, { ...quiet, filling: { share: 0, doing: say.beginning } });
    await telling(desk, async () => {
      const receipt = await write(desk, form, checked.choices);
      const receipts = [...desk.state().start.receipts, receipt];
      changeStart(
        desk,
        {
          receipts,
          done: { says: say.added(receipt.sheets.length), sheets: receipt.sheets, leftOut: receipt.leftOut ?? [] },
        },
        fieldIds.done,
      );
    });
  },
};

const quiet = { refusals: [], summary: false, done: undefined, refused: undefined, asking: false } as const;

async function write(desk: Desk, form: StartForm, choices: StarterChoices): Promise<FillReceipt> {
  const starter = starterOf(form);
  if (!starter) throw new HostError(say.starterMissing, "NoStarter");
  const { makePlan } = await import("../../../workbook/starters/make-plan");
  const plan = makePlan(starter, choices, await desk.host.taken());
  return desk.host.fill(plan, {
    protect: form.protect,
    onProgress: (filling) => changeStart(desk, { filling }),
  });
}

/** Asks before what a fill added is taken away. */
export const askRemove: Action = {
  name: "start.ask",
  label: say.remove,
  allowed: (state) => isIdle(state) && state.start.receipts.length > 0,
  perform: (desk) => changeStart(desk, { asking: true }, fieldIds.question),
};

export const keepAdded: Action = {
  name: "start.keep",
  label: say.keep,
  allowed: isIdle,
  perform: (desk) => changeStart(desk, { asking: false }, fieldIds.done),
};

/** Takes away what the last fill added. */
export const removeAdded: Action = {
  name: "start.remove",
  label: say.removeNow,
  allowed: (state) => isIdle(state) && state.start.asking,
  async perform(desk) {
    const receipts = desk.state().start.receipts;
    const last = receipts.at(-1);
    if (!last) return;
    changeStart(desk, { ...quiet, filling: { share: 0, doing: say.removing } });
    await telling(desk, async () => {
      await desk.host.remove(last);
      changeStart(
        desk,
        { receipts: receipts.slice(0, -1), done: { says: say.removed, sheets: [], leftOut: [] } },
        fieldIds.done,
      );
    });
  },
};

/** What the host could not do is told beside the button; everything typed stays. */
async function telling(desk: Desk, work: () => Promise<void>): Promise<void> {
  try {
    await unlessRefused(work, (refused) => changeStart(desk, { refused }, fieldIds.refused));
  } finally {
    changeStart(desk, { filling: undefined });
  }
}

export const startActions: readonly Action[] = [
  chooseStarter,
  chooseGuide,
  nameFarm,
  chooseFigures,
  countFields,
  chooseProtect,
  tickCrop,
  tickPart,
  priceCrop,
  yieldCrop,
  leaveField,
  goToField,
  fill,
  askRemove,
  keepAdded,
  removeAdded,
];
