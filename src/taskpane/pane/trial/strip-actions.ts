import { words } from "../../words";
import type { Action, Desk } from "../action";
import { parted } from "../parts/parted";
import { changeKept, changeTrial, holdsSomething, telling } from "./change-trial";
import { pastedStrips } from "./yields";

const say = words.trial;

/** "3.weight:3400": one entry of one strip. */
export const writeStrip: Action = {
  name: "trial.strip",
  perform(desk, value) {
    const [place, text] = parted(value);
    const [index = "", part = ""] = place.split(".");
    const { strips } = desk.state().trial.kept;
    changeKept(desk, {
      strips: strips.map((strip, at) => (at === Number(index) ? { ...strip, [part]: text } : strip)),
    });
  },
};

export const writeCost: Action = {
  name: "trial.cost",
  perform(desk, value) {
    const [index, text] = parted(value);
    const { costs } = desk.state().trial.kept;
    changeKept(desk, { costs: costs.map((cost, at) => (at === Number(index) ? text : cost)) });
  },
};

export const typePaste: Action = {
  name: "trial.paste",
  perform: (desk, pasted) => changeTrial(desk, { pasted, said: undefined }),
};

/** Puts the pasted column into the strips, in their order. */
export const putPasted: Action = {
  name: "trial.pasted",
  label: say.pasteNow,
  perform: (desk) => fillStrips(desk, desk.state().trial.pasted),
};

/** The selected cells as if they had been copied and pasted. */
export const takeSelected: Action = {
  name: "trial.take",
  label: say.take,
  perform: (desk) =>
    telling(desk, "paste", async () => {
      const { values } = await desk.host.readSelection();
      fillStrips(desk, values.map((row) => row.map((cell) => String(cell ?? "")).join("\t")).join("\n"));
    }),
};

function fillStrips(desk: Desk, text: string): void {
  const { kept } = desk.state().trial;
  if (text.trim() === "") {
    return changeTrial(desk, { said: { at: "paste", says: say.pasteNothing, done: false } }, "trial-paste");
  }
  const lines = pastedStrips(text, kept.form.entry);
  const strips = kept.strips.map((strip, index) => lines[index] ?? strip);
  const count = strips.filter((strip, index) => lines[index] !== undefined && holdsSomething(strip)).length;
  const over = lines.length > strips.length ? ` ${say.pastedMore(lines.length, strips.length)}` : "";
  changeKept(
    desk,
    { strips },
    { pasted: "", said: { at: "paste", says: say.pasted(count) + over, done: over === "" } },
  );
}

export const stripActions: readonly Action[] = [writeStrip, writeCost, typePaste, putPasted, takeSelected];
