import { allFunctions } from "../../functions";
import { register } from "./register";

/** Excel loads this script for the functions alone: neither a page nor the rest of Office need be there. */
register(allFunctions, CustomFunctions);
