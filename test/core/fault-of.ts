import { FormulaError, type Fault } from "../../src/core/fault";

/** The fault that a formula stops with; nothing when it answers. Anything else that is thrown is a bug and goes on. */
export function faultOf(run: () => unknown): Fault | undefined {
  try {
    run();
  } catch (thrown) {
    if (thrown instanceof FormulaError) return thrown.fault;
    throw thrown;
  }
  return undefined;
}
