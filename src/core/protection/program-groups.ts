import { refuseArgument } from "../fault";
import { foldedName } from "../folded-name";
import type { Cited } from "../../reference/table";
import { programRule } from "../../reference/protection/program-rules";
import { siteOfAction, type NamedHerbicide, type SiteOfAction } from "./site-of-action";

/** One use: an active ingredient in a pass. */
export interface ProgramUse {
  /** null: the person names no passes. */
  readonly pass: string | null;
  readonly herbicide: NamedHerbicide;
  /** Whether it controls the driver weed, as the person reads it from the label; null: not said. */
  readonly isEffective: boolean | null;
}

/** Groups of a pass or a season. Two ingredients of one group count once. */
export interface GroupCount {
  readonly sites: readonly number[];
  /** Groups with an ingredient said to be effective; null: nothing is said on any of its uses. */
  readonly effective: readonly number[] | null;
  /** Uses with no word on control. */
  readonly unsaid: number;
  /** Groups that stand in it with more than one ingredient. */
  readonly doubled: readonly { readonly site: number; readonly names: readonly string[] }[];
}

export interface PassGroups extends GroupCount {
  readonly pass: string;
  readonly isShort: boolean;
}

export interface ProgramGroups {
  readonly passes: readonly PassGroups[];
  readonly season: GroupCount;
  readonly isSeasonShort: boolean;
  readonly uses: number;
  /** The group used most often, with its uses. */
  readonly commonest: { readonly site: number; readonly uses: number };
  /** Groups of last season; null: not given. */
  readonly lastSeason: readonly number[] | null;
  readonly repeated: readonly number[];
  readonly cited: readonly Cited[];
}

interface Placed extends ProgramUse {
  readonly site: SiteOfAction;
}

/** No season holds as many: more is a slip, such as the lists of several years or farms. */
const mostUses = 1000;

export interface ProgramInput {
  readonly uses: readonly ProgramUse[];
  readonly lastSeason: readonly NamedHerbicide[] | null;
}

/**
 * Distinct and effective herbicide groups of a program by pass and season, against the season before.
 *
 *   effective groups: those with at least one ingredient that the person says controls the driver weed
 *
 * @source program-practice
 */
export function programGroups({ uses, lastSeason }: ProgramInput): ProgramGroups {
  if (uses.length > mostUses) {
    const because = `at most ${mostUses.toLocaleString("en-US")} uses in a season; got ${uses.length.toLocaleString("en-US")}.`;
    refuseArgument("activeIngredients", because);
  }
  const placed = uses.map((use) => ({ ...use, site: siteOfAction(use.herbicide) }));
  const before = lastSeason?.map(siteOfAction) ?? null;
  const season = count(placed);
  const lastSites = before && distinct(before.map(({ site }) => site));
  return {
    passes: passesOf(placed),
    season,
    isSeasonShort: isShort(season, programRule.leastEffectivePerSeason),
    uses: placed.length,
    commonest: commonestOf(placed),
    lastSeason: lastSites,
    repeated: season.sites.filter((site) => lastSites?.includes(site)),
    cited: [...new Set([...placed.flatMap(({ site }) => site.cited), ...(before ?? []).flatMap(({ cited }) => cited)])],
  };
}

function passesOf(placed: readonly Placed[]): PassGroups[] {
  const byPass = new Map<string, Placed[]>();
  for (const use of placed) {
    if (use.pass === null) continue;
    const key = foldedName(use.pass);
    const same = byPass.get(key);
    if (same) same.push(use);
    else byPass.set(key, [use]);
  }
  return [...byPass.values()].map((own) => {
    const counted = count(own);
    return {
      ...counted,
      pass: own[0]?.pass?.trim() ?? "",
      isShort: isShort(counted, programRule.leastEffectivePerPass),
    };
  });
}

function count(uses: readonly Placed[]): GroupCount {
  const names = new Map<number, Set<string>>();
  const effective: number[] = [];
  let unsaid = 0;
  for (const { site, isEffective } of uses) {
    const known = names.get(site.site);
    if (known) known.add(site.name);
    else names.set(site.site, new Set([site.name]));
    if (isEffective === null) unsaid += 1;
    if (isEffective) effective.push(site.site);
  }
  const sites = distinct([...names.keys()]);
  const namesOf = (site: number) => [...(names.get(site) ?? [])];
  return {
    sites,
    effective: unsaid < uses.length ? distinct(effective) : null,
    unsaid,
    doubled: sites.map((site) => ({ site, names: namesOf(site) })).filter((one) => one.names.length > 1),
  };
}

/** Short of the rule: by effective groups where the person says so, else by all groups. */
function isShort({ sites, effective }: GroupCount, least: number): boolean {
  return (effective ?? sites).length < least;
}

function commonestOf(placed: readonly Placed[]): ProgramGroups["commonest"] {
  const uses = new Map<number, number>();
  for (const { site } of placed) uses.set(site.site, (uses.get(site.site) ?? 0) + 1);
  return [...uses].reduce((most, [site, times]) => (times > most.uses ? { site, uses: times } : most), {
    site: 0,
    uses: 0,
  });
}

function distinct(sites: readonly number[]): number[] {
  return sites.length > 1 ? [...new Set(sites)].sort((a, b) => a - b) : [...sites];
}
