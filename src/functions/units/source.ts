import { refuse } from "../../core/fault";
import { guides, type GuideKey } from "../../reference/guides";
import { sources, type Source, type SourceKey } from "../../reference/sources";
import { checkBulletin } from "../../reference/table";
import { citedBy } from "../cited-by";
import { choice, line, optional, vocabulary, worksheetFunction, type WorksheetFunction } from "../frame";
import { guideWords } from "../words";

/** A publication as the list shows it. */
interface Publication extends Source {
  readonly key: SourceKey;
  /** Tables, pages or equations. */
  readonly where: string;
  /** A number from it is quoted from memory and wants a look at the current edition. */
  readonly wantsCheck: boolean;
}

const header = ["Publisher", "Title", "Year", "Where", "Note"] as const;

/**
 * Declares SOURCE over the other functions, whose citations it lists.
 *
 * @param all every other declared function
 */
export function sourceFunction(all: readonly WorksheetFunction[]) {
  const byName = new Map(all.map((fn) => [fn.name, fn]));
  const found = new Map<string, Publication[]>();
  const names = vocabulary(
    "function",
    Object.fromEntries(all.map(({ name }) => [name, { label: name, also: [`LOAM.${name}`] }])),
  );
  return worksheetFunction({
    name: "SOURCE",
    family: "units",
    summary: "The publications behind a function's numbers.",
    asks: ["where do the numbers come from", "which publication is this from", "citation of a function"],
    args: {
      function: choice(names, { says: "name of the function, such as REMOVAL" }),
      guide: optional(
        choice(guideWords, { says: "only this region's guide, where the function knows guides" }),
        null,
        "every guide it knows",
      ),
    },
    returns: { shape: "table", unit: "", says: "publisher, title, year, where in it, and what to check" },
    sources: [],
    example: {
      call: ["SEEDSPACING"],
      gives: [
        [...header],
        [
          "By definition",
          "An acre is 43,560 square feet: 522,720 feet of row at one inch of row width",
          "definition",
          "",
          "",
        ],
      ],
      because: "by reading: the one source that SEEDSPACING declares",
    },
    compute: (values) => {
      const asked = `${values.function} ${values.guide ?? ""}`;
      const fn = byName.get(values.function);
      const publications = found.get(asked) ?? (fn ? publicationsOf(fn, values.guide) : []);
      found.set(asked, publications);
      return publications;
    },
    value: (publications) => [
      [...header],
      ...publications.map(({ publisher, title, year, where, wantsCheck }) => [
        publisher,
        title,
        year,
        where,
        wantsCheck ? checkBulletin : "",
      ]),
    ],
    working: (publications) => [
      line("Publications", publications.length),
      line("With numbers to check against the current edition", publications.filter((one) => one.wantsCheck).length),
    ],
  });
}

function publicationsOf(fn: WorksheetFunction, asked: GuideKey | null): Publication[] {
  const guide = "guide" in fn.args ? asked : null;
  const cited = citedBy(fn, guide === null ? null : guides[guide].label);
  if (guide !== null && fn.cites && cited.length === 0) {
    refuse({ kind: "notPublished", what: `number for ${fn.name}`, where: guides[guide].label });
  }
  const citedKeys = cited.map((row) => row.source);
  const keys = new Set([...fn.sources.filter((key) => isOf(key, guide)), ...citedKeys, ...ownOf(guide)]);
  return [...keys].map((key) => {
    const rows = cited.filter((row) => row.source === key);
    const where = [...new Set(rows.flatMap((row) => row.locator ?? []))].join("; ");
    return { ...sources[key], key, where, wantsCheck: rows.some((row) => row.mark === "M") };
  });
}

function ownOf(guide: GuideKey | null): readonly SourceKey[] {
  return guide === null ? [] : guides[guide].sources;
}

/** Whether a declared source has a place in the list of one guide: it is that guide's, or no guide's. */
function isOf(key: SourceKey, guide: GuideKey | null): boolean {
  if (guide === null || ownOf(guide).includes(key)) return true;
  return !Object.values(guides).some((other) => (other.sources as readonly SourceKey[]).includes(key));
}
