import type { SelfCheck } from "./self-check";

export interface AboutState {
  readonly selfCheck?: SelfCheck | undefined;
  /** Whether Loamsheet loads with the workbook; undefined until the spreadsheet has said so. */
  readonly loads?: boolean | undefined;
  /** What the spreadsheet said against it. */
  readonly refused?: string | undefined;
}

export const firstAbout: AboutState = {};
