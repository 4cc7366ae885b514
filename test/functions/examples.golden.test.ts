import { allFunctions } from "../../src/functions";
import { exampleTests } from "./example-tests";

describe.each(allFunctions.map((fn) => [fn.name, fn] as const))("%s", (_name, fn) => exampleTests(fn));
