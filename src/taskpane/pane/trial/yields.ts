import { limits } from "../../../core/limits";
import { trialLimits } from "../../../core/trials/trial-limits";
import { isCellError } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import { trialStripYield } from "../../../functions/trials/trial-strip-yield";
import { words } from "../../words";
import { numberIn, readNumber, refusalIn, type Read } from "../parts/read-number";
import { sentence } from "../parts/text";
import { groundOf } from "./layout";
import type { KeptTrial, StripText } from "./state";

const say = words.trial;

/** The yields of all strips, worked out from weights where those were written down; blank where nothing was. */
export function readYields(kept: KeptTrial): Read[] {
  return kept.strips.map((strip) => (kept.form.entry === "yields" ? typedYield(strip) : weighedYield(strip, kept)));
}

function typedYield(strip: StripText): Read {
  return readNumber(say.measured.yield, strip.yield, trialLimits.yield);
}

function weighedYield(strip: StripText, { form, strips }: KeptTrial): Read {
  if (strip.weight.trim() === "" && strip.moisture.trim() === "") return "blank";
  const weight = readNumber(say.measured.weight, strip.weight, trialLimits.weight);
  const moisture = readNumber(say.measured.moisture, strip.moisture, limits.moisture);
  const refusal = refusalIn(weight) ?? refusalIn(moisture);
  if (refusal !== undefined) return { refusal };
  const { widthFt = null, lengthFt = null } = groundOf(form, strips.length);
  const call = [numberIn(weight) ?? null, lengthFt, widthFt, numberIn(moisture) ?? null, form.crop || null];
  const [[answer] = []] = runFunction(trialStripYield, call);
  if (typeof answer === "number") return { value: answer };
  return { refusal: isCellError(answer) && answer.message ? sentence(answer.message) : say.waiting };
}

/** The yields as far as they can be read. */
export function yieldsOf(kept: KeptTrial): (number | null)[] {
  return readYields(kept).map((read) => numberIn(read) ?? null);
}

/** Lines of a pasted column, or of two columns: weight and moisture. An empty line is a lost strip. */
export function pastedStrips(text: string, entry: "yields" | "weights"): StripText[] {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n");
  return lines.map((line) => {
    const [first = "", second = ""] = line.split(/\t|;|,\s+|\s{2,}/).map((cell) => cell.trim());
    return entry === "yields"
      ? { yield: first, weight: "", moisture: "" }
      : { yield: "", weight: first, moisture: second };
  });
}
