import { areaAddress, parseAddress, sheetAddress } from "../../../../hosts/address";
import { areaFrom } from "../../../../workbook/area";
import type { WorkbookHost } from "../../../../hosts/port";
import type { Area } from "../../../../workbook/plan";
import { words } from "../../../words";
import { fillsSeveral, type Size } from "./call";
import type { Entries } from "./entry";

const say = words.find;

/** Why an answer of this size cannot stand at the selected cell; nothing where it can. */
export async function whyNoRoom(
  host: WorkbookHost,
  selected: string,
  size: Size,
  entries: Entries,
): Promise<string | undefined> {
  const place = parseAddress(selected);
  if (place?.sheet === undefined) return undefined;
  const { top, left } = place.area;
  const first = { row: top, column: left };
  const area = areaFrom(first, size);
  const own = ownInput(place.sheet, area, entries);
  if (own !== undefined) return say.ownInput(areaAddress(area), own);
  if (!fillsSeveral(size)) return undefined;
  const taken = await firstTaken(host, place.sheet, area);
  return taken === undefined ? undefined : say.noRoom(size.rows, size.columns, areaAddress(areaFrom(first)), taken);
}

/** The argument whose own cells the answer would cover: it would then wait for itself. */
function ownInput(sheet: string, area: Area, entries: Entries): string | undefined {
  const covered = Object.entries(entries).find(([, { picked }]) => {
    const place = picked && parseAddress(picked.reference);
    return place?.sheet === sheet && meet(place.area, area);
  });
  return covered?.[0];
}

function meet(one: Area, other: Area): boolean {
  return one.top <= other.bottom && other.top <= one.bottom && one.left <= other.right && other.left <= one.right;
}

/** The first cell beside the selected one that is not empty. The host itself looks after the selected one. */
async function firstTaken(host: WorkbookHost, sheet: string, area: Area): Promise<string | undefined> {
  const { values } = await host.read(sheetAddress(sheet, area));
  for (const [down, row] of values.entries()) {
    for (const [across, value] of row.entries()) {
      if ((down === 0 && across === 0) || value === null) continue;
      const at = { top: area.top + down, left: area.left + across };
      return areaAddress({ ...at, bottom: at.top, right: at.left });
    }
  }
  return undefined;
}
