export { calculate } from "./calculate";
export { namespace, sheetName } from "./engine-function";
