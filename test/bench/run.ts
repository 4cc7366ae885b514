import { browserSpeeds } from "./browser";
import { engineSpeeds } from "./engine";
import { print } from "./figure";
import { figuresOf } from "./shipped";
import { sizes } from "./sizes";
import { startUp } from "./start-up";

/** `npm run bench`: every figure the project states about itself, printed with its limit and its ratio. */
async function run(): Promise<void> {
  print("Sizes (of the build in dist)", sizes());
  print("Functions", [...startUp(), ...figuresOf("functions.ts")]);
  print("Grid engine", await engineSpeeds());
  print("Browser page (of the build in dist)", await browserSpeeds());
  // The engine keeps timers of its own running.
  process.exit(0);
}

void run();
