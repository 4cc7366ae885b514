/** Order of the V and R stages of corn and soybean: VE, VC, V1 … V30, VT, R1 … R8. */
export function stageOrder(code: string): number | undefined {
  const match = /^(VE|VC|VT|V(\d{1,2})|R([1-8]))$/.exec(code.trim().toUpperCase());
  if (!match) return undefined;
  if (match[1] === "VE") return -1;
  if (match[1] === "VC") return 0;
  if (match[1] === "VT") return 50;
  return match[2] === undefined ? 50 + Number(match[3]) : inLeaves(Number(match[2]));
}

function inLeaves(leaves: number): number | undefined {
  return leaves >= 1 && leaves <= 30 ? leaves : undefined;
}

/** Whether a span of stage codes covers a stage; true where the span is not tied to codes. */
export function coversStage(span: { readonly first?: string; readonly last?: string }, code: string): boolean {
  const at = stageOrder(code);
  const first = span.first === undefined ? undefined : stageOrder(span.first);
  const last = span.last === undefined ? undefined : stageOrder(span.last);
  if (at === undefined || first === undefined || last === undefined) return true;
  return at >= first && at <= last;
}
