import { hostErrorFrom } from "./describe-failure";

/** Whether this Excel can load an add-in when the workbook opens. */
export function canOpenByItself(): boolean {
  // Older copies of the library and of Excel have no part for the add-in itself.
  const addIn: Partial<typeof Office.addin> | undefined = Office.addin;
  return (
    Office.context.requirements.isSetSupported("SharedRuntime", "1.1") &&
    typeof addIn?.setStartupBehavior === "function" &&
    typeof addIn.getStartupBehavior === "function"
  );
}

/** Loading with the workbook: kept in the workbook, and off until a person turns it on. */
export const startup = {
  isOn: () => told(async () => (await Office.addin.getStartupBehavior()) === Office.StartupBehavior.load),
  set: (on: boolean) =>
    told(() => Office.addin.setStartupBehavior(on ? Office.StartupBehavior.load : Office.StartupBehavior.none)),
};

async function told<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (thrown) {
    throw hostErrorFrom(thrown);
  }
}
