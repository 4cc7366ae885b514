import type { FillReceipt } from "../../../hosts/port";
import type { Said } from "../parts/outcome";

/** "grid", "tornado", "trial", or a table of the workbook: "ledger-PotashLedger", "drift-PotashLedger". */
export type PictureKey = string;

export interface PicturesState {
  /** The picture that is on its way into the workbook or out of it. */
  readonly busy?: PictureKey | undefined;
  /** What was added while the pane was open, oldest first. */
  readonly added: readonly { readonly key: PictureKey; readonly receipt: FillReceipt }[];
  /** Asking whether the last sheet of this picture is to be taken away. */
  readonly asking?: PictureKey | undefined;
  readonly said?: (Said & { readonly key: PictureKey }) | undefined;
}

export const firstPictures: PicturesState = { added: [] };

/** The last sheet that a picture was put on. */
export function lastAdded({ added }: PicturesState, key: PictureKey): FillReceipt | undefined {
  return added.filter((one) => one.key === key).at(-1)?.receipt;
}
