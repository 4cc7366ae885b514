import { HostError } from "../port";
import { hostWords } from "../words";

const say = hostWords.excel;

/** Whatever was thrown while talking to Excel, worded for the person. */
export function hostErrorFrom(thrown: unknown): HostError {
  if (thrown instanceof HostError) return thrown;
  const code = codeOf(thrown);
  return new HostError(say.failures[code] ?? say.otherFailure(code), code, { cause: thrown });
}

function codeOf(thrown: unknown): string {
  if (typeof thrown !== "object" || thrown === null) return "Unknown";
  if ("code" in thrown && typeof thrown.code === "string" && thrown.code !== "") return thrown.code;
  return thrown instanceof Error ? thrown.name : "Unknown";
}
