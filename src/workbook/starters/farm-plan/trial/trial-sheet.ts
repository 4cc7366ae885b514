import { cautions } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { farmSheets } from "../farm-sheets";
import type { PracticeContext } from "../practices/practice-context";
import { stripBlock } from "./strip-block";
import { trialLinesBlock } from "./trial-lines-block";
import { trialsOf } from "./trial";
import { drawnBlock, trialChart } from "./trial-chart";
import { trialResultBlock } from "./trial-result-block";

/** A sheet for each strip trial: how the strips lie, what they yielded, and what that says. */
export function trialSheets(context: PracticeContext): SheetModel[] {
  return trialsOf(context).map((trial) => ({
    key: trial.key,
    name: farmSheets[trial.key].name,
    tabColor: tabColors.input,
    title: `Strip trial ${trial.index + 1}`,
    answers: "What the treated strips gained over the check beside them, how sure that is, and whether it pays.",
    blocks: [
      trialLinesBlock(trial),
      stripBlock(trial),
      trialResultBlock(trial),
      trialChart(trial),
      cautions(
        "One strip is one observation, however many points the yield monitor wrote. Two pairs settle nothing by themselves.",
        "A trial speaks for its field and season. Not clearly different is not the same as no effect.",
        "Plant the layout as drawn: drawing again until it looks right brings the bias back. Strips at least one header wide and 300 ft long, off the headlands.",
      ),
      drawnBlock(trial),
    ],
    widths: [31, 26, 14, 11, 11, 11, 11, 10, 10, 12],
    print: { orientation: "portrait", onePage: true },
  }));
}
