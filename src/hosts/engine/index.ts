export { calculate } from "./calculate";
