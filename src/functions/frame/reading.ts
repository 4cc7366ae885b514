import { FormulaError, type Fault } from "../../core/fault";
import { ArrivedError, type Argument, type OneArgument, type Present } from "./arguments";
import { isBlank, isCellError, toMatrix, type CellError, type CellIn, type RawArgument } from "./cell";
import { errorFor } from "./describe-fault";

type Waiting = Extract<Fault, { kind: "waiting" }>;

/** Why an argument gave no value: an error to show, or a blank that is waited for. */
export class Problem {
  private constructor(
    readonly rank: number,
    private readonly what: CellError | Waiting,
  ) {}

  /** A spreadsheet error that came in; passed on unchanged, before anything else. */
  static arrived(code: string): Problem {
    return new Problem(0, { code });
  }
  /** A value that does not fit. */
  static refused(error: CellError): Problem {
    return new Problem(1, error);
  }
  /** A needed cell that is still empty: quiet, and only when nothing else is wrong. */
  static waiting(fault: Waiting): Problem {
    return new Problem(2, fault);
  }

  get isWaiting(): boolean {
    return this.rank === 2;
  }

  get cell(): CellError {
    return "kind" in this.what ? errorFor(this.what) : this.what;
  }

  /** The one to show of two. */
  static worse(first: Problem | undefined, second: Problem): Problem {
    return first && first.rank <= second.rank ? first : second;
  }
}

/** How one argument of a function is read; worked out once per function. */
export interface Reader {
  readonly name: string;
  /** One cell a time, against a whole range at once. */
  readonly takesOneCell: boolean;
  /** Optional and of one cell: left out, it has its stated value without being read. */
  readonly mayBeLeftOut: boolean;
  /** The value of an argument left out; a problem where it is needed. */
  readonly whenBlank: unknown;
  readCell(cell: CellIn): unknown;
  readRange(raw: RawArgument): unknown;
}

export function readerFor(name: string, argument: Argument): Reader {
  const optional = argument.shape === "optional";
  const inner = optional ? argument.inner : argument;
  const whenBlank = optional ? argument.whenBlank : Problem.waiting({ kind: "waiting", argument: name });
  return {
    name,
    takesOneCell: inner.shape === "one",
    mayBeLeftOut: optional && inner.shape === "one",
    whenBlank,
    readCell: inner.shape === "one" ? (cell) => readOne(inner, cell, name, whenBlank) : () => whenBlank,
    readRange(raw) {
      const cells = toMatrix(raw);
      if (inner.shape === "one") return readOne(inner, cells[0]?.[0] ?? null, name, whenBlank);
      if (optional && cells.every((row) => row.every(isBlank))) return whenBlank;
      try {
        return inner.readMany(cells, name);
      } catch (thrown) {
        return problemFrom(thrown);
      }
    },
  };
}

/** The error cell behind something thrown; a bug of ours says so. */
export function errorFrom(thrown: unknown): CellError {
  if (thrown instanceof FormulaError) return errorFor(thrown.fault);
  if (thrown instanceof ArrivedError) return { code: thrown.cell.code };
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  return {
    code: "#VALUE!",
    message: `Something in Loamsheet itself went wrong (${detail}). Please report it with this formula.`,
  };
}

function readOne(argument: OneArgument<unknown>, cell: CellIn, name: string, whenBlank: unknown): unknown {
  if (isBlank(cell) || (cell === 0 && argument.zeroIsBlank)) return whenBlank;
  if (isCellError(cell)) return Problem.arrived(cell.code);
  if (typeof cell === "number" && !Number.isFinite(cell)) return Problem.arrived("#NUM!");
  try {
    return argument.read(cell as Present, name);
  } catch (thrown) {
    return problemFrom(thrown);
  }
}

function problemFrom(thrown: unknown): Problem {
  if (thrown instanceof ArrivedError) return Problem.arrived(thrown.cell.code);
  if (thrown instanceof FormulaError && thrown.fault.kind === "waiting") return Problem.waiting(thrown.fault);
  return Problem.refused(errorFrom(thrown));
}
