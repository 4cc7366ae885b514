import { waitFor } from "../../core/fault";
import type { NamedHerbicide } from "../../core/protection/site-of-action";
import {
  programGroups as programGroupsOf,
  type GroupCount,
  type ProgramGroups,
  type ProgramUse,
} from "../../core/protection/program-groups";
import { sameLength } from "../../core/same-length";
import { herbicideGroups } from "../../reference/protection/herbicides";
import { mixingSurvey, programRule } from "../../reference/protection/program-rules";
import { formerNumbers } from "../../reference/protection/sites-of-action";
import { choice, line, list, listWithGaps, optional, text, worksheetFunction, type CellOut } from "../frame";
import { checkLines } from "../check-lines";
import { herbicide } from "./herbicide-argument";
import { programFlags } from "./program-flags";
import { controlWords } from "./protection-words";
import { controlIsTheLabels, labelLaw } from "../cautions";

const notSaid = "not said";

export const programGroups = worksheetFunction({
  name: "PROGRAMGROUPS",
  family: "protection",
  summary: "Distinct and effective herbicide groups of a season's program by pass, repeats, and what to look at.",
  asks: [
    "how diverse is my herbicide program",
    "herbicide resistance in my program",
    "am I using the same group twice",
  ],
  args: {
    activeIngredients: listWithGaps(herbicide, {
      says: "active ingredients of the season, one a row, by common name; or the group number on the label",
    }),
    control: optional(
      listWithGaps(choice(controlWords, { says: "control" }), {
        says: "does each control your driver weed: yes or no, from its label and from what you know of your weeds",
      }),
      null,
      "not said: effective groups are then not counted",
    ),
    passes: optional(
      listWithGaps(text({ says: "pass" }), { says: "pass of each; a blank goes with the pass above" }),
      null,
      "the season is taken whole",
    ),
    lastSeason: optional(
      list(herbicide, { says: "active ingredients or groups of last season" }),
      null,
      "repeats are not judged",
    ),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row per pass and for the season: groups, how many differ, how many are effective; then sentences",
  },
  sources: ["hrac-classification", "program-practice", "evans-2016"],
  cautions: [labelLaw, controlIsTheLabels],
  example: {
    call: [
      [["S-metolachlor"], ["metribuzin"], ["glyphosate"], ["fomesafen"]],
      [["yes"], ["yes"], ["no"], ["yes"]],
      [["pre"], ["pre"], ["post"], ["post"]],
      [["glyphosate"], ["acetochlor"]],
    ],
    gives: [
      ["Pass", "Groups", "Distinct groups", "Effective on the driver weed", "Effective groups"],
      ["pre", "5 + 15", 2, 2, "5 + 15"],
      ["post", "9 + 14", 2, 1, "14"],
      ["Whole season", "5 + 9 + 14 + 15", 4, 3, "5 + 14 + 15"],
      ["Last season", "9 + 15", 2, "", ""],
      ["In both seasons", "9 + 15", 2, 1, "15"],
      [
        "Look at",
        'Pass "post" leans on group 14 alone against your driver weed; the usual rule is 2 effective groups in a pass.',
        "",
        "",
        "",
      ],
      ["Look at", "Groups 9 and 15 were used last season too.", "", "", ""],
    ],
    because: "by hand: groups 15, 5, 9, 14; glyphosate said not to control, so 14 stands alone in the post pass",
  },
  compute: ({ activeIngredients, control, passes, lastSeason }) =>
    programGroupsOf({ uses: usesOf(activeIngredients, control, passes), lastSeason }),
  value: (program) => [
    ["Pass", "Groups", "Distinct groups", "Effective on the driver weed", "Effective groups"],
    ...program.passes.map((pass) => groupRow(pass.pass, pass)),
    groupRow("Whole season", program.season),
    ...lastRows(program),
    ...programFlags(program).map((sentence): CellOut[] => ["Look at", sentence, "", "", ""]),
  ],
  working: (program) => [
    line("Uses read", program.uses),
    line("Distinct groups in the season", program.season.sites.length),
    line("Effective groups in the season", program.season.effective?.length ?? notSaid),
    line("Used most", `group ${program.commonest.site}: ${program.commonest.uses} of ${program.uses} uses`),
    line("Rule of thumb", `${programRule.leastEffectivePerPass} effective groups in a pass, 2 to 3 in a season`),
    line("What a survey found", mixingSurvey.says),
    ...checkLines([...program.cited, programRule]),
  ],
  cites: (program) => [...program.cited, programRule, mixingSurvey],
  everyRow: () => [...herbicideGroups.rows, ...formerNumbers, programRule, mixingSurvey],
});

function usesOf(
  actives: readonly (NamedHerbicide | null)[],
  control: readonly ("yes" | "no" | null)[] | null,
  passes: readonly (string | null)[] | null,
): ProgramUse[] {
  if (control) sameLength("activeIngredients", actives, "control", control);
  if (passes) sameLength("activeIngredients", actives, "passes", passes);
  let pass: string | null = null;
  const uses = actives.flatMap((named, row): ProgramUse[] => {
    pass = passes?.[row] ?? pass;
    const said = control?.[row] ?? null;
    return named === null ? [] : [{ pass, herbicide: named, isEffective: said === null ? null : said === "yes" }];
  });
  return uses.length > 0 ? uses : waitFor("activeIngredients");
}

function groupRow(name: string, { sites, effective }: GroupCount): CellOut[] {
  return [name, added(sites), sites.length, effective?.length ?? notSaid, effective ? added(effective) : notSaid];
}

function lastRows({ lastSeason, repeated, season }: ProgramGroups): CellOut[][] {
  if (lastSeason === null) return [];
  const effective = season.effective && repeated.filter((site) => season.effective?.includes(site));
  return [
    ["Last season", added(lastSeason), lastSeason.length, "", ""],
    [
      "In both seasons",
      added(repeated),
      repeated.length,
      effective?.length ?? notSaid,
      effective ? added(effective) : notSaid,
    ],
  ];
}

/** A text even for one group, so that a column of groups stays text. */
function added(sites: readonly number[]): string {
  return sites.length === 0 ? "none" : sites.join(" + ");
}
