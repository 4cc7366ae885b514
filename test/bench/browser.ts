import { serveBuiltPages, until } from "../browser/page";
import { planOf } from "../workbook/starters/shown-sheet";
import type { Figure } from "./figure";

/** The built page in a real browser: until it answers, and until the farm plan stands calculated in it. */
export async function browserSpeeds(): Promise<Figure[]> {
  const pages = await serveBuiltPages();
  try {
    const begun = performance.now();
    const { page } = await pages.open("index.html");
    await until(() => page.evaluate(() => window.loamsheet !== undefined), "the workbook was open");
    const interactive = performance.now() - begun;
    const filled = await page.evaluate(async (plan) => {
      const start = performance.now();
      await window.loamsheet?.fill(plan, { protect: false });
      return performance.now() - start;
    }, planOf("farm-plan"));
    return [
      { what: "browser page, until interactive", value: interactive, unit: "ms", limit: 4000 },
      { what: "farm plan filled and calculated in the page", value: filled, unit: "ms", limit: 3000 },
    ];
  } finally {
    await pages.stop();
  }
}
