/** What a piece of a formula is. Texts, quoted sheet names and brackets are single pieces: nothing inside them moves. */
export type TokenKind = "text" | "quoted" | "bracket" | "name" | "number" | "error" | "space" | "mark";

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
}

const pieces: readonly (readonly [TokenKind, RegExp])[] = [
  ["text", /"(?:[^"]|"")*"/y],
  ["quoted", /'(?:[^']|'')*'/y],
  ["error", /#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!)/y],
  ["number", /(?:\d+(?:\.\d*)?|\.\d+)(?:E[+-]?\d+)?(?![\w.])/iy],
  ["name", /[$\p{L}_\\\d][$\p{L}\p{N}_.\\?]*/uy],
  ["space", /\s+/y],
];

/** Splits a formula without its leading "=" into pieces that join up to the same text again. */
export function formulaTokens(formula: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < formula.length) {
    const token = formula[at] === "[" ? bracketAt(formula, at) : pieceAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

function pieceAt(formula: string, at: number): Token {
  for (const [kind, shape] of pieces) {
    shape.lastIndex = at;
    const text = shape.exec(formula)?.[0];
    if (text) return { kind, text };
  }
  return { kind: "mark", text: formula.charAt(at) };
}

/** Brackets of a table reference may nest; an apostrophe in them makes the next sign an ordinary one. */
function bracketAt(formula: string, start: number): Token {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const sign = formula[at];
    if (sign === "'") at += 1;
    else if (sign === "[") depth += 1;
    else if (sign === "]" && --depth === 0) return { kind: "bracket", text: formula.slice(start, at + 1) };
  }
  throw new Error(`A bracket is not closed in =${formula}`);
}

export function isMark(token: Token | undefined, sign: string): boolean {
  return token?.kind === "mark" && token.text === sign;
}

/** Is this piece a function name: directly followed by an opening parenthesis? */
export function isCall(tokens: readonly Token[], index: number): boolean {
  return tokens[index]?.kind === "name" && isMark(tokens[index + 1], "(");
}
