import { allFunctions } from "../../src/functions";
import { guardTests } from "./guard-tests";

describe.each(allFunctions.map((fn) => [fn.name, fn] as const))("%s", (_name, fn) => guardTests(fn));
