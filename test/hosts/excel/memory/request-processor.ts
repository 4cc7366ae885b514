/** The protocol in which the Office library asks for things: paths to objects, and what to do with them. */
export interface RequestBody {
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
  readonly Actions: readonly Action[];
}

interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface ResponseBody {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  /** The trace marks that were reached: the library waits for them before it counts a listener as added. */
  readonly TraceIds?: readonly number[];
  readonly Error?: { readonly Code: string; readonly Message: string; readonly Location: string };
}

/** Whether a request only lets go of ranges, which the library sends on its own some time after the work. */
export function isCleaningUp({ Actions }: RequestBody): boolean {
  const letsGo = (name: string) => name === "_RemoveReference";
  return Actions.some(({ Name }) => letsGo(Name)) && Actions.every(({ Name }) => Name === "" || letsGo(Name));
}

/** Refused by the spreadsheet, with the code Excel would give. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** An object with members named as in the protocol: properties, methods, and for collections `Items`. */
type Thing = Record<string, unknown>;

const pathTypes = { root: 1, method: 3, property: 4, indexer: 5, reference: 6, nothing: 7 } as const;
const actionTypes = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 } as const;

/** Answers requests from ordinary objects. Objects that Excel keeps references to are kept here too. */
export class RequestProcessor {
  private readonly references = new Map<string, Thing>();

  constructor(private readonly root: Thing) {}

  /**
   * Carries out the actions one after the other; the first that is refused ends the request, and what was done
   * before it stays done, as in Excel.
   */
  process({ ObjectPaths, Actions }: RequestBody, failBefore = Infinity): ResponseBody {
    const found = new Map<number, Thing | null>();
    const resolve = (id: number): Thing | null => {
      const known = found.get(id);
      if (known !== undefined) return known;
      const path = ObjectPaths[id];
      if (path === undefined) throw new Refusal("InvalidRequest", `no path ${id}`);
      const thing = this.follow(path, resolve);
      found.set(id, thing);
      return thing;
    };
    const Results: { ActionId: number; Value: unknown }[] = [];
    try {
      Actions.forEach((action, index) => {
        if (index >= failBefore) throw new Refusal("GeneralException", "injected");
        Results.push({ ActionId: action.Id, Value: this.perform(action, resolve) });
      });
      if (failBefore === Actions.length) throw new Refusal("GeneralException", "the answer was lost");
      const traces = Actions.filter(({ ActionType }) => ActionType === actionTypes.trace);
      return { Results, TraceIds: traces.map(({ Id }) => Id) };
    } catch (thrown) {
      if (!(thrown instanceof Refusal)) throw thrown;
      return { Results, Error: { Code: thrown.code, Message: thrown.message, Location: "" } };
    }
  }

  private follow(path: ObjectPath, resolve: (id: number) => Thing | null): Thing | null {
    const { ObjectPathType: type, Name, ParentObjectPathId } = path;
    if (type === pathTypes.root) return this.root;
    if (type === pathTypes.nothing) return null;
    if (type === pathTypes.reference) return this.references.get(Name) ?? refuse(`reference ${Name}`);
    const parent = resolve(ParentObjectPathId ?? 0);
    if (parent === null) return null;
    if (type === pathTypes.property) return member(parent, Name) as Thing | null;
    const method = type === pathTypes.indexer ? "GetItem" : Name;
    return call(parent, method, argumentsOf(path.ArgumentInfo, resolve)) as Thing | null;
  }

  private perform(
    { ActionType, Name, ObjectPathId, ...action }: Action,
    resolve: (id: number) => Thing | null,
  ): unknown {
    if (ActionType === actionTypes.trace) return null;
    const thing = resolve(ObjectPathId);
    if (thing === null) return null;
    switch (ActionType) {
      case actionTypes.instantiate:
        return this.identity(thing);
      case actionTypes.query:
        return this.query(thing, action.QueryInfo?.Select ?? []);
      case actionTypes.method:
        if (Name === "_KeepReference") return this.identity(thing);
        if (Name === "_RemoveReference") return null;
        return call(thing, Name, argumentsOf(action.ArgumentInfo, resolve)) ?? null;
      case actionTypes.set:
        member(thing, Name);
        thing[Name] = argumentsOf(action.ArgumentInfo, resolve)[0];
        return null;
      default:
        throw new Refusal("NotImplemented", `action ${ActionType}`);
    }
  }

  private query(thing: Thing, select: readonly string[]): unknown {
    const items = thing["Items"];
    const own = select.filter((name) => !name.startsWith("items/")).map((name) => name);
    const pick = (from: Thing, names: readonly string[]) => ({
      ...this.identity(from),
      ...Object.fromEntries(names.filter((name) => name !== "isNullObject").map((name) => pair(from, name))),
    });
    if (!Array.isArray(items)) return pick(thing, own);
    const names = select.map((name) => name.replace(/^items\//, ""));
    return { _Items: items.map((item: Thing) => pick(item, names)) };
  }

  private identity(thing: Thing): Record<string, unknown> {
    const id = thing["Id"] ?? (typeof thing["Name"] === "string" && !("Address" in thing) ? thing["Name"] : undefined);
    if (!("Address" in thing)) return id === undefined ? {} : { _Id: id };
    const key = `reference-${this.references.size + 1}`;
    this.references.set(key, thing);
    return { _ReferenceId: key };
  }
}

function argumentsOf(info: ArgumentInfo | undefined, resolve: (id: number) => Thing | null): unknown[] {
  return (info?.Arguments ?? []).map((argument, index) => {
    const id = info?.ReferencedObjectPathIds?.[index];
    return typeof id === "number" && id > 0 ? resolve(id) : argument;
  });
}

function pair(from: Thing, name: string): [string, unknown] {
  const pascal = name.charAt(0).toUpperCase() + name.slice(1);
  return [pascal, member(from, pascal)];
}

function member(thing: Thing, name: string): unknown {
  return name in thing ? thing[name] : refuse(name);
}

function call(thing: Thing, name: string, args: readonly unknown[]): unknown {
  const method = member(thing, name);
  if (typeof method !== "function") refuse(`${name}()`);
  // What the caller leaves out crosses as null.
  return method.apply(
    thing,
    args.map((argument) => argument ?? undefined),
  ) as unknown;
}

function refuse(what: string): never {
  throw new Refusal("ApiNotFound", `this host has no ${what}`);
}
