import path from "node:path";
import ts from "typescript";

const root = path.resolve(__dirname, "../..");
const inFolder = (node: ts.Node, folder: string) =>
  node.getSourceFile().fileName.startsWith(path.join(root, folder) + "/");

/** A worksheet function, its family, and the golden tests that check what it computes by a printed or second answer. */
export interface SecondAnswer {
  readonly name: string;
  readonly family: string;
  readonly checkedIn: readonly string[];
}

/**
 * Finds, by the sources alone, which worksheet functions stand on a formula of the core that a golden test calls.
 * Golden tests hold printed cases and values made by other programs, never values of ours.
 */
export function secondAnswers(): SecondAnswer[] {
  const files = ts.sys
    .readDirectory(path.join(root, "src/functions"), [".ts"])
    .concat(ts.sys.readDirectory(path.join(root, "test/core"), [".golden.test.ts"]));
  const program = ts.createProgram(files, {
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    resolveJsonModule: true,
    types: [],
    noLib: true,
  });
  const follow = follower(program.getTypeChecker());
  const sources = files.map((file) => program.getSourceFile(file)).filter((source) => source !== undefined);
  const goldens = sources
    .filter((source) => inFolder(source, "test/core"))
    .map((source) => [path.basename(source.fileName, ".golden.test.ts"), follow(source, "test")] as const);
  return sources.flatMap(declarationsIn).map(({ name, family, compute }) => {
    const formulas = [...follow(compute, "src/functions")];
    const checkedIn = goldens.filter(([, called]) => formulas.some((formula) => called.has(formula)));
    return { name, family, checkedIn: checkedIn.map(([golden]) => golden) };
  });
}

interface Declared {
  readonly name: string;
  readonly family: string;
  readonly compute: ts.Node;
}

function declarationsIn(source: ts.SourceFile): Declared[] {
  const found: Declared[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node)) {
      const [name, family, compute] = ["name", "family", "compute"].map((key) => propertyOf(node, key));
      if (name && family && compute && ts.isStringLiteral(name) && ts.isStringLiteral(family)) {
        found.push({ name: name.text, family: family.text, compute });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function propertyOf(literal: ts.ObjectLiteralExpression, key: string): ts.Node | undefined {
  const property = literal.properties.find((each) => each.name?.getText() === key);
  if (property && ts.isPropertyAssignment(property)) return property.initializer;
  return property;
}

/** Gives the formulas of the core that a piece of code names, itself or through code of the folder it lives in. */
function follower(checker: ts.TypeChecker) {
  return (start: ts.Node, folder: string): Set<ts.Node> => {
    const seen = new Set<ts.Node>();
    const formulas = new Set<ts.Node>();
    const visit = (node: ts.Node): void => {
      if (ts.isIdentifier(node)) {
        const declared = meant(checker, node);
        if (declared && !seen.has(declared)) {
          seen.add(declared);
          if (isFormula(declared)) formulas.add(declared);
          else if (inFolder(declared, folder)) visit(declared);
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(start);
    return formulas;
  };
}

function meant(checker: ts.TypeChecker, name: ts.Identifier): ts.Node | undefined {
  const symbol = ts.isShorthandPropertyAssignment(name.parent)
    ? checker.getShorthandAssignmentValueSymbol(name.parent)
    : checker.getSymbolAtLocation(name);
  const target = symbol && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  return target?.declarations?.[0];
}

/** A function in a family's folder of the core; what lies above the families serves all of them. */
function isFormula(node: ts.Node): boolean {
  return (
    ts.isFunctionDeclaration(node) &&
    path.relative(root, node.getSourceFile().fileName).split("/").length > 3 &&
    inFolder(node, "src/core")
  );
}
