import type { SheetPlan } from "../../../workbook/plan";
import { areaAddress } from "../../address";
import type { Requests } from "./requests";

/** How a sheet comes out on paper. */
export async function writePrint({ name, print }: SheetPlan, requests: Requests): Promise<void> {
  await requests.makeRoom({ steps: 12 });
  const { pageLayout } = requests.sheet(name);
  const { wide, tall } = print.fit;
  pageLayout.orientation = print.orientation === "landscape" ? "Landscape" : "Portrait";
  pageLayout.zoom = { horizontalFitToPages: wide, ...(tall > 0 && { verticalFitToPages: tall }) };
  if (print.repeatRows) pageLayout.setPrintTitleRows(`$${print.repeatRows.first + 1}:$${print.repeatRows.last + 1}`);
  if (print.area) pageLayout.setPrintArea(areaAddress(print.area));
  const { left, center, right } = footerParts(print.footer);
  const footer = pageLayout.headersFooters.defaultForAllPages;
  if (left) footer.leftFooter = left;
  if (center) footer.centerFooter = center;
  if (right) footer.rightFooter = right;
}

/** "&LFarm&CPage &P" in its parts; text before any mark belongs to the middle, as spreadsheets have it. */
function footerParts(footer: string): { left: string; center: string; right: string } {
  const parts = { left: "", center: "", right: "" };
  const marks = { L: "left", C: "center", R: "right" } as const;
  let part: keyof typeof parts = "center";
  for (const piece of footer.split(/(&[LCR])/)) {
    const mark = /^&([LCR])$/.exec(piece)?.[1];
    if (mark === "L" || mark === "C" || mark === "R") part = marks[mark];
    else parts[part] += piece;
  }
  return parts;
}
