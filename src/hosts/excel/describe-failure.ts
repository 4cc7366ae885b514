import { HostError } from "../port";

/** What happened and what to do, by the code that Excel gives; its own wording is for programmers. */
const sentences: Readonly<Record<string, string>> = {
  AccessDenied: "Excel does not allow changes here: the workbook or sheet is protected or open for reading only.",
  InvalidOperation:
    "Excel does not do that with these cells: they may be part of an array formula or of a merged cell.",
  InvalidOperationInCellEditMode: "A cell is being typed in. Press Enter or Esc in the sheet, then try again.",
  InvalidSelection: "Select one block of cells, then try again.",
  InvalidReference: "Excel does not find that range in this workbook.",
  ItemNotFound: "Excel does not find that sheet or range; it may have been renamed or deleted meanwhile.",
  ItemAlreadyExists: "A sheet, table or name with that name is already in the workbook.",
  OperationCellsExceedLimit: "That range is too large for Excel to hand over. Select fewer rows.",
  RequestPayloadSizeLimitExceeded: "That is more than Excel takes at once. Try a starter with fewer fields.",
  ResponsePayloadSizeLimitExceeded: "That range is too large for Excel to hand over. Select fewer rows.",
  RequestAborted: "Excel stopped before it was done. Try again.",
  ServiceNotAvailable: "Excel does not answer at the moment. Wait a little, then try again.",
  Timeout: "Excel took too long to answer. Try again.",
  ApiNotFound: "This version of Excel is too old for that. Update Excel, then try again.",
  UnsupportedOperation: "This version of Excel cannot do that here.",
};

/** Whatever was thrown while talking to Excel, worded for the person. */
export function hostErrorFrom(thrown: unknown): HostError {
  if (thrown instanceof HostError) return thrown;
  const code = codeOf(thrown);
  return new HostError(sentences[code] ?? `Excel could not do that (${code}). Try again.`, code, { cause: thrown });
}

function codeOf(thrown: unknown): string {
  if (typeof thrown !== "object" || thrown === null) return "Unknown";
  if ("code" in thrown && typeof thrown.code === "string" && thrown.code !== "") return thrown.code;
  return thrown instanceof Error ? thrown.name : "Unknown";
}
