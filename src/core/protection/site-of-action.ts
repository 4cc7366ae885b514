import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import type { Cited } from "../../reference/table";
import { herbicideGroups, herbicides, type HerbicideKey } from "../../reference/protection/herbicides";
import {
  formerNumbers,
  highestSiteNumber,
  sitesOfAction,
  type FormerNumber,
} from "../../reference/protection/sites-of-action";

/** An active ingredient by name, or the group number that its label prints. */
export type NamedHerbicide = { readonly active: HerbicideKey } | { readonly siteNumber: number };

export const siteLimit = { min: 1, max: highestSiteNumber, unit: "group number" } as const;

export interface SiteOfAction {
  readonly site: number;
  /** As a person would name it: the ingredient, or "group 9". */
  readonly name: string;
  /** What the group does in the plant; nothing where a label's number is not in the list. */
  readonly does?: string;
  readonly family?: string;
  /** The number given was a former one. */
  readonly former?: FormerNumber;
  readonly cited: readonly Cited[];
}

const rowOf = new Map(herbicideGroups.rows.map((row) => [row.active as HerbicideKey, row]));
const does = new Map(Object.entries(sitesOfAction).map(([site, says]) => [Number(site), says as string]));

/**
 * Group of a herbicide by the numbers that HRAC and WSSA share; a former number is brought up to date.
 *
 * @source hrac-classification
 */
export function siteOfAction(named: NamedHerbicide): SiteOfAction {
  return "active" in named ? ofActive(named.active) : ofNumber(named.siteNumber);
}

function ofActive(active: HerbicideKey): SiteOfAction {
  const row = rowOf.get(active);
  if (!row) refuse({ kind: "notPublished", what: `group of ${active}`, where: `"${herbicideGroups.title}"` });
  return {
    site: row.site,
    name: herbicides[active].label,
    does: sitesOfAction[row.site],
    family: row.family,
    cited: [row],
  };
}

function ofNumber(siteNumber: number): SiteOfAction {
  within("activeIngredient", siteNumber, siteLimit);
  if (!Number.isInteger(siteNumber)) {
    refuseArgument("activeIngredient", `${siteNumber} is no group number: they are whole.`);
  }
  const former = formerNumbers.find((one) => one.former === siteNumber);
  const site = former?.now ?? siteNumber;
  const says = does.get(site);
  return {
    site,
    name: `group ${siteNumber}`,
    ...(says && { does: says }),
    ...(former && { former }),
    cited: former ? [former] : [],
  };
}
