import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const src = path.resolve(__dirname, "../../src");

/** Where the sentences of a layer stand; everything else in it takes them from there. */
const wordFolders = /[/\\](?:taskpane|hosts)[/\\]words[/\\]|[/\\]grid-words\.ts$/;

/** What reads like a sentence and is not shown: labels of our own sheets and answers that are looked for in them. */
const lookedFor = new Set(["An acre of", "Price that covers all costs", "In words"]);

function filesUnder(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const place = path.join(folder, name);
    if (statSync(place).isDirectory()) return filesUnder(place);
    return /\.tsx?$/.test(name) && !wordFolders.test(place) ? [place] : [];
  });
}

/** Attributes whose text is read out or shown. */
const shownAttributes = new Set(["aria-label", "title", "alt", "placeholder"]);

/** Pieces of text in a file that a person would see. */
function shownWords(text: string): string[] {
  const file = ts.createSourceFile("file.tsx", text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || isForProgrammers(node)) return;
    if (isText(node) && (isSentence(node.text) || isShown(node))) found.push(node.text.trim());
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found.filter((one) => !lookedFor.has(one));
}

/** A slip of our own, which no person can do anything about. */
function isForProgrammers(node: ts.Node): boolean {
  return ts.isNewExpression(node) && node.expression.getText() === "Error";
}

type Text = ts.StringLiteral | ts.NoSubstitutionTemplateLiteral | ts.TemplateHead | ts.TemplateMiddle | ts.TemplateTail;

function isText(node: ts.Node): node is Text {
  return (
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isTemplateHead(node) ||
    ts.isTemplateMiddle(node) ||
    ts.isTemplateTail(node)
  );
}

/** Two words with a capital before them or an end behind: class names and selectors have neither. */
function isSentence(text: string): boolean {
  if (text.includes("<")) return false;
  return /^\s*[A-Z][a-z']* [a-z]+/.test(text) || /[a-z]+ [a-z]+[.?!:]\s*$/.test(text);
}

/** What stands inside an element, or in an attribute that is read out. */
function isShown(node: Text): boolean {
  if (!/[A-Za-z]{2,}/.test(node.text)) return false;
  const { parent } = node;
  if (ts.isCallExpression(parent)) {
    return parent.expression.getText() === "element" && parent.arguments.findIndex((part) => part === node) > 1;
  }
  if (!ts.isPropertyAssignment(parent) || parent.initializer !== node) return false;
  return shownAttributes.has(parent.name.getText().replace(/"/g, ""));
}

describe("one place for the words", () => {
  it("sees what it is meant to judge", () => {
    const sample = `
      const a = element("p", { class: "plain list", "aria-label": "Close" }, "Done", say.more);
      throw new HostError(\`\${name} is not here. Select another.\`, "NotHere");
      const b = closest("button[data-action], a[data-action]");
      const c = "Nothing was written";
    `;
    expect(shownWords(sample)).toEqual(["Close", "Done", "is not here. Select another.", "Nothing was written"]);
  });

  it.each(
    ["taskpane", "hosts"]
      .flatMap((layer) => filesUnder(path.join(src, layer)))
      .map((file) => [path.relative(src, file), file]),
  )("%s shows none of its own", (_name, file) => {
    expect(shownWords(readFileSync(file, "utf8"))).toEqual([]);
  });
});
