import { IFunctionService } from "@univerjs/engine-formula";
import { allFunctions } from "../../../functions";
import { fullName } from "../../engine/engine-function";
import type { HostFacts } from "../../port";
import type { Grid } from "./start-grid";
import { hostWords } from "../../words";

/** What the grid of this page knows of ours. */
export function gridFacts({ univer }: Grid): HostFacts {
  const known = univer.__getInjector().get(IFunctionService);
  return {
    program: hostWords.browser.program,
    functions: allFunctions.filter((fn) => known.hasExecutor(fullName(fn))).map(({ name }) => name),
    missing: [],
  };
}
