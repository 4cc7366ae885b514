import { HostError } from "../../../hosts/port";
import type { Picture } from "../../../workbook/pictures/picture";
import { words } from "../../words";
import type { Action, Desk } from "../action";
import { changePart } from "../change-part";
import { readLedgers } from "../tables/ledgers";
import { isIdle } from "../idle";
import { readSheet } from "../what-if/reading";
import { changeWhatIf } from "../what-if/change-what-if";
import { driftPicture, gridPicture, ledgerPicture, tornadoPicture, trialPicture } from "./facts";
import { unlessRefused } from "../unless-refused";
import { lastAdded, type PictureKey, type PicturesState } from "./state";

const say = words.pictures;

export const pictureIds = {
  put: (key: PictureKey) => `put-${key}`,
  take: (key: PictureKey) => `take-${key}`,
  question: "picture-question",
} as const;

const changePictures = changePart("pictures");

/** Puts a picture on a new sheet behind those that are there. */
export const putPicture: Action = {
  name: "pictures.put",
  label: say.put,
  allowed: isIdle,
  perform: (desk, key) =>
    whileBusy(desk, key, say.putting, async () => {
      const picture = await pictureNow(desk, key);
      if (!picture) throw new HostError(say.gone, "NoPicture");
      const { planPicture } = await import("../../../workbook/pictures/plan-picture");
      const madeOn = new Date().toLocaleDateString("en-US", { dateStyle: "long" });
      const receipt = await desk.host.fill(planPicture(picture, madeOn, await desk.host.taken()), { protect: false });
      changePictures(desk, { added: [...desk.state().pictures.added, { key, receipt }] });
      return [say.added(receipt.sheets[0] ?? ""), ...(receipt.leftOut ?? [])].join(" ");
    }),
};

/** The picture as the workbook stands now: rows may have moved since it was drawn. */
async function pictureNow(desk: Desk, key: PictureKey): Promise<Picture | undefined> {
  if (key === "trial") return trialPicture(desk.state().trial.kept);
  if (key === "grid" || key === "tornado") {
    await readSheet.perform(desk, "");
    const { whatIf } = desk.state();
    return key === "grid" ? gridPicture(whatIf) : tornadoPicture(whatIf);
  }
  const ledgers = await readLedgers(desk.host);
  changeWhatIf(desk, { ledgers });
  const of = (kind: string) => ledgers.find(({ table }) => key === `${kind}-${table}`);
  const [ledger, drift] = [of("ledger"), of("drift")];
  if (ledger) return ledgerPicture(ledger);
  return drift && driftPicture(drift);
}

/** Asks before the last sheet of a picture is taken away. */
export const askTake: Action = {
  name: "pictures.ask",
  label: say.take,
  allowed: isIdle,
  perform: (desk, asking) => changePictures(desk, { asking, said: undefined }, pictureIds.question),
};

export const keepPicture: Action = {
  name: "pictures.keep",
  label: say.keep,
  allowed: isIdle,
  perform(desk) {
    const { asking } = desk.state().pictures;
    if (asking !== undefined) changePictures(desk, { asking: undefined }, pictureIds.take(asking));
  },
};

export const takePicture: Action = {
  name: "pictures.take",
  label: say.takeNow,
  allowed: (state) => isIdle(state) && state.pictures.asking !== undefined,
  async perform(desk) {
    const { asking: key, added } = desk.state().pictures;
    const receipt = key === undefined ? undefined : lastAdded(desk.state().pictures, key);
    if (key === undefined || !receipt) return;
    changePictures(desk, { asking: undefined }, pictureIds.put(key));
    await whileBusy(desk, key, say.taking, async () => {
      await desk.host.remove(receipt);
      changePictures(desk, { added: added.filter((one) => one.receipt !== receipt) });
      return say.taken(receipt.sheets[0] ?? "");
    });
  },
};

/** What the host could not do is said beside the button. */
async function whileBusy(desk: Desk, key: PictureKey, doing: string, work: () => Promise<string>): Promise<void> {
  changePictures(desk, { busy: key, asking: undefined, said: { key, says: doing, done: true } });
  let said: PicturesState["said"];
  try {
    said = await unlessRefused(
      async () => ({ key, says: await work(), done: true }),
      (says) => ({ key, says, done: false }),
    );
  } finally {
    changePictures(desk, { busy: undefined, said });
  }
}

export const picturesActions: readonly Action[] = [putPicture, askTake, keepPicture, takePicture];
