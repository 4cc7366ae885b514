import { print } from "./figure";
import { functionSpeeds } from "./functions";
import { sizes } from "./sizes";

/** `npm run bench`: every figure the project states about itself, printed with its limit and its ratio. */
print("Sizes", sizes());
print("Functions", functionSpeeds());
