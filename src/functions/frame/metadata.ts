import type { Argument } from "./arguments";
import type { WorksheetFunction } from "./declaration";
import type { Vocabulary } from "./vocabulary";

/** The page that is made of all functions, relative to the site. */
export const helpPage = "help/functions.html";

/** The registration file a spreadsheet reads: what each function and argument is called. */
export interface FunctionsMetadata {
  readonly allowCustomDataForDataTypeAny: boolean;
  readonly allowErrorForDataTypeAny: boolean;
  readonly enums: readonly EnumMetadata[];
  readonly functions: readonly FunctionMetadata[];
}

export interface EnumMetadata {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly type: "any"; readonly dimensionality: "matrix" };
}

export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: "any";
  readonly dimensionality: "matrix";
  readonly optional?: true;
  readonly customEnumId?: string;
}

/**
 * Every parameter is declared as a range of anything: one cell arrives as 1 × 1, errors and blanks arrive as they
 * are, and reading and refusing them stays in one place.
 *
 * @param site address the pages are served from, without a closing slash
 */
export function metadataFor(functions: readonly WorksheetFunction[], site: string): FunctionsMetadata {
  const vocabularies = new Map<string, Vocabulary<string>>();
  for (const fn of functions) {
    for (const { vocabulary } of Object.values<Argument>(fn.args)) {
      if (vocabulary) vocabularies.set(vocabulary.name, vocabulary);
    }
  }
  return {
    allowCustomDataForDataTypeAny: false,
    allowErrorForDataTypeAny: true,
    enums: [...vocabularies.values()].map(enumFor),
    functions: functions.map((fn) => ({
      id: fn.name,
      name: fn.name,
      description: fn.summary,
      helpUrl: `${site}/${helpPage}#${fn.name}`,
      parameters: parametersFor(Object.entries<Argument>(fn.args)),
      result: { type: "any", dimensionality: "matrix" },
    })),
  };
}

function enumFor(words: Vocabulary<string>): EnumMetadata {
  return {
    id: enumId(words),
    type: "string",
    values: Object.values(words.words).map(({ label, also }) => ({
      name: label,
      stringValue: label,
      tooltip: also.length > 0 ? `also: ${also.join(", ")}` : label,
    })),
  };
}

function enumId(words: Vocabulary<string>): string {
  return words.name.toUpperCase().replace(/[^A-Z]/g, "_");
}

/** Spreadsheets take a parameter as optional only behind all others; before them it is left blank instead. */
function parametersFor(args: readonly [string, Argument][]): ParameterMetadata[] {
  const lastNeeded = args.map(([, { shape }]) => shape !== "optional").lastIndexOf(true);
  return args.map(([name, argument], index) => parameterFor(name, argument, index > lastNeeded));
}

function parameterFor(name: string, argument: Argument, optional: boolean): ParameterMetadata {
  return {
    name,
    description: describeArgument(argument),
    type: "any",
    dimensionality: "matrix",
    ...(optional && { optional: true as const }),
    ...(argument.vocabulary && { customEnumId: enumId(argument.vocabulary) }),
  };
}

/** One sentence about an argument: what it is, its unit, and what a blank means. */
export function describeArgument(argument: Argument): string {
  const unit = argument.unit ? ` (${argument.unit})` : "";
  const blank = argument.shape === "optional" ? `; when left out: ${argument.whenBlankSays}` : "";
  return `${argument.says}${unit}${blank}`;
}
