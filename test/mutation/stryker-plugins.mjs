import { createHash } from "node:crypto";

/** Words for people: their wording may change without a test's leave. */
const sentences = {
  shouldIgnore: ({ node }) => (isSentence(node) ? "words for people" : undefined),
};

function isSentence({ type, value, quasis }) {
  if (type === "StringLiteral") return threeWords(value);
  return type === "TemplateLiteral" && threeWords(quasis.map((part) => part.value.raw).join("…"));
}

const threeWords = (text) => text.trim().split(/\s+/).length >= 3;

/** "3/8": the fourth of eight equal parts of all mutants, dealt out by their own hash; "0/1" is all of them. */
const [part, parts] = (process.env.MUTATE_SAMPLE ?? "0/1").split("/").map(Number);

function isInSample({ fileName, mutatorName, replacement, location: { start } }) {
  const file = fileName.replaceAll("\\", "/").replace(/^.*\/src\/core\//, "");
  const name = [file, start.line, start.column, mutatorName, replacement].join(" ");
  return createHash("sha256").update(name).digest().readUInt32BE() % parts === part;
}

class Sample {
  async init() {}
  async group(mutants) {
    return [mutants.map(({ id }) => id)];
  }
  async check(mutants) {
    return Object.fromEntries(
      mutants.map((mutant) => [
        mutant.id,
        isInSample(mutant) ? { status: "passed" } : { status: "compileError", reason: "outside the sample" },
      ]),
    );
  }
}

export const strykerPlugins = [
  { kind: "Ignore", name: "sentences", value: sentences },
  { kind: "Checker", name: "sample", injectableClass: Sample },
];
