import { isCellError, type CellOut } from "../../functions/frame/cell";
import { runFunction } from "../../functions/frame/run";
import { programGroups } from "../../functions/protection/program-groups";
import { siteOfAction } from "../../functions/protection/site-of-action";
import { cellsGiven, differentCalls, type CallReading } from "./reading/call-reading";
import type { LoneHerbicideGroup } from "./finding";

/** Programs and lists of herbicides that rely on one group alone. */
export function loneHerbicideGroups(calls: readonly CallReading[]): LoneHerbicideGroup[] {
  return [...differentCalls(calls, programGroups.name).flatMap(inProgram), ...inLists(calls)];
}

/** A program with more than one herbicide, whose groups (the effective ones, where that is said) come down to one. */
function inProgram(call: CallReading): LoneHerbicideGroup[] {
  const uses = cellsGiven(call, "activeIngredients").filter((cell) => cell !== null && cell !== "").length;
  const rows = runFunction(
    programGroups,
    Object.keys(programGroups.args).map((name) => call.given[name]),
  );
  if (uses < 2 || rows.length < 2) return [];
  const season = rows.find(([pass]) => pass === "Whole season");
  const inSeason = season && loneGroup(season);
  const facts = { kind: "loneHerbicideGroup", at: call.at, uses } as const;
  if (inSeason !== undefined) return [{ ...facts, group: inSeason, pass: undefined }];
  const passes = rows.slice(1, season ? rows.indexOf(season) : 1);
  return passes.flatMap((row): LoneHerbicideGroup[] => {
    const group = effectiveLoneGroup(row);
    return group === undefined ? [] : [{ ...facts, group, pass: String(row[0]) }];
  });
}

/** Columns: pass, groups, how many differ, how many are effective, effective groups. */
function loneGroup(row: readonly CellOut[]): number | undefined {
  return effectiveLoneGroup(row) ?? (row[2] === 1 ? Number(row[1]) : undefined);
}

function effectiveLoneGroup(row: readonly CellOut[]): number | undefined {
  return row[3] === 1 ? Number(row[4]) : undefined;
}

/** Columns of SITEOFACTION that all show the same group. */
function inLists(calls: readonly CallReading[]): LoneHerbicideGroup[] {
  const lists = new Map<string, { call: CallReading; groups: number[] }>();
  for (const call of calls.filter(({ name }) => name === siteOfAction.name)) {
    const key = `${call.at.sheet}|${call.at.column}`;
    const list = lists.get(key) ?? { call, groups: [] };
    list.groups.push(...groupsOf(call));
    lists.set(key, list);
  }
  return [...lists.values()].flatMap(({ call, groups }): LoneHerbicideGroup[] => {
    const [group, ...others] = groups;
    if (group === undefined || others.length === 0 || others.some((other) => other !== group)) return [];
    return [{ kind: "loneHerbicideGroup", at: call.at, group, uses: groups.length, pass: undefined }];
  });
}

function groupsOf(call: CallReading): number[] {
  return cellsGiven(call, "activeIngredient").flatMap((ingredient) => {
    const [answer] = runFunction(siteOfAction, [ingredient])[0] ?? [];
    return answer === undefined || isCellError(answer) ? [] : [Number(answer)];
  });
}
