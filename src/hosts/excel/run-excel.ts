import { hostErrorFrom } from "./describe-failure";

/**
 * Runs one piece of work in Excel. Waits while a cell is being typed in; failures come out as a HostError.
 *
 * @param undoTogether whether one Undo takes all of it back; only where Excel offers that
 */
export async function runExcel<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
  { undoTogether = false }: { undoTogether?: boolean } = {},
): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true, ...(undoTogether && { mergeUndoGroup: true }) }, work);
  } catch (thrown) {
    throw hostErrorFrom(thrown);
  }
}
