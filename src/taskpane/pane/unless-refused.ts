import { HostError } from "../../hosts/port";

/**
 * Does work with the host. Where the host could not do it, the sentence it says is handed on; whatever nobody foresaw
 * goes on to where that is told.
 */
export async function unlessRefused<Done, Refused>(
  work: () => Promise<Done>,
  refused: (says: string) => Refused,
): Promise<Done | Refused> {
  try {
    return await work();
  } catch (thrown) {
    if (!(thrown instanceof HostError)) throw thrown;
    return refused(thrown.message);
  }
}
