import type { GroupCount, PassGroups, ProgramGroups } from "../../core/protection/program-groups";
import { programRule } from "../../reference/protection/program-rules";

const {
  leastEffectivePerPass: perPass,
  leastEffectivePerSeason: perSeason,
  goodEffectivePerSeason: good,
} = programRule;

/** What to look at in a program, in sentences. */
export function programFlags(program: ProgramGroups): string[] {
  const flags = [
    ...unsaidFlags(program),
    ...program.passes.flatMap(passFlags),
    ...(program.passes.length === 0 ? doubledFlags("The season", program.season) : []),
    ...seasonFlags(program),
    ...commonestFlags(program),
    ...repeatFlags(program),
  ];
  return flags.length > 0 ? flags : ["Nothing stands out by these rules; resistance can still come in from elsewhere."];
}

function unsaidFlags({ season, uses }: ProgramGroups): string[] {
  if (season.effective === null) {
    return [
      "Say which ingredients control your driver weed, from their labels: only effective groups count against resistance.",
    ];
  }
  if (season.unsaid === 0) return [];
  return [`${season.unsaid} of ${uses} uses have no word on control and are not counted as effective.`];
}

function passFlags(pass: PassGroups): string[] {
  const name = `Pass "${pass.pass}"`;
  return [...(pass.isShort ? [shortPass(name, pass)] : []), ...doubledFlags(name, pass)];
}

function shortPass(name: string, { sites, effective }: GroupCount): string {
  if (effective === null) return `${name} holds one group, ${joined(sites)}.`;
  if (effective.length === 0) return `${name} holds no ingredient said to control your driver weed.`;
  return `${name} leans on group ${joined(effective)} alone against your driver weed; the usual rule is ${perPass} effective groups in a pass.`;
}

function doubledFlags(where: string, { doubled }: GroupCount): string[] {
  return doubled.map(
    ({ site, names }) =>
      `${where}: ${names.join(" and ")} ${names.length === 2 ? "are both" : "are all"} group ${site} and count once.`,
  );
}

function seasonFlags({ season, isSeasonShort }: ProgramGroups): string[] {
  const rule = `the usual rule is ${perSeason} to ${good} effective groups`;
  const { effective, sites } = season;
  if (!isSeasonShort) return [];
  if (effective === null) return [`The whole season holds one group, ${joined(sites)}.`];
  if (effective.length === 0) return [`No group of the season is said to control your driver weed; ${rule}.`];
  return [`The whole season leans on group ${joined(effective)} alone against your driver weed; ${rule}.`];
}

function commonestFlags({ commonest, uses }: ProgramGroups): string[] {
  if (commonest.uses < 2) return [];
  return [`Group ${commonest.site} is the one used most: ${commonest.uses} of ${uses} uses.`];
}

function repeatFlags({ lastSeason, repeated, season }: ProgramGroups): string[] {
  if (lastSeason === null || repeated.length === 0) return [];
  const { effective } = season;
  const nothingNew = effective !== null && effective.length > 0 && effective.every((site) => repeated.includes(site));
  return [
    `${repeated.length === 1 ? "Group" : "Groups"} ${joined(repeated)} ${repeated.length === 1 ? "was" : "were"} used last season too.`,
    ...(nothingNew
      ? ["Every effective group was used last season too: nothing new stands against your driver weed."]
      : []),
  ];
}

/** "9", "5 and 15", "5, 9 and 15". */
function joined(sites: readonly number[]): string {
  const last = sites.at(-1);
  return sites.length < 2 ? String(last ?? "none") : `${sites.slice(0, -1).join(", ")} and ${String(last)}`;
}
