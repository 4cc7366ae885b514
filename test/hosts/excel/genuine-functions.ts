import type { CellIn, Matrix } from "../../../src/functions/frame/cell";
import { answerRequests, type GenuineOffice, type HostBridge } from "./genuine-office";
import type { RequestBody } from "./memory/request-processor";

/** One call from a cell. */
export interface FunctionCall {
  readonly name: string;
  /** One entry per declared parameter, null where left out, as Excel hands them over. */
  readonly args: readonly (Matrix<CellIn> | null)[];
}

/** What came back for one call, as it crosses to the spreadsheet. */
export type FunctionResult =
  | { readonly cells: readonly (readonly unknown[])[] | unknown }
  | { readonly thrown: ThrownError; readonly message: string };

/** The spreadsheet error behind the runtime's number for it. */
export type ThrownError = "#N/A" | "#DIV/0!" | "#NUM!" | "#VALUE!" | "#NULL!" | "unknown";

const thrownErrors: Readonly<Record<number, ThrownError>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

const setResults = "SetInvocationArrayResults";
/** Error values come with the call only where the metadata allows them. */
const errorsAllowed = 4;

/** Calls functions through the genuine runtime: the way in and the way out are the library's own. */
export async function callFunctions(
  office: GenuineOffice,
  calls: readonly FunctionCall[],
): Promise<readonly FunctionResult[]> {
  const results = new Map<number, FunctionResult>();
  answerRequests(office, (body) => {
    for (const { id, result } of resultsIn(body)) results.set(id, result);
    return { Results: body.Actions.map(({ Id }) => ({ ActionId: Id, Value: {} })) };
  });
  const bridge: HostBridge = { sendMessageToHost: () => undefined };
  office.window.OfficeExtension.HostBridge.init(bridge);
  const entries = calls.map(({ name, args }, id) => [
    1,
    1000,
    "",
    [id, name, crossing(args), "", errorsAllowed, null],
    id,
  ]);
  bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
  for (let tries = 0; results.size < calls.length; tries++) {
    if (tries > 1000) throw new Error(`${calls.length - results.size} calls were never answered.`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  return calls.map((_, id) => results.get(id) ?? { cells: undefined });
}

function crossing(args: FunctionCall["args"]): unknown[] {
  return args.map((matrix) => matrix && matrix.map((row) => row.map(crossingCell)));
}

function crossingCell(cell: CellIn): unknown {
  return typeof cell === "object" && cell !== null ? { type: "CustomFunctionError", code: cell.code } : cell;
}

function resultsIn({ Actions }: RequestBody): { id: number; result: FunctionResult }[] {
  return Actions.filter(({ Name }) => Name === setResults)
    .flatMap(({ ArgumentInfo }) => (ArgumentInfo?.Arguments?.[0] ?? []) as [number, boolean, unknown, number?][]) // the runtime's own form
    .map(([id, went, value, code]) => ({
      id,
      result: went ? { cells: value } : { thrown: thrownErrors[code ?? -1] ?? "unknown", message: String(value) },
    }));
}
