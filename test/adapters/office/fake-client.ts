/**
 * The rules of Office.js proxies, as its documentation states them: nothing is done and nothing is known before
 * context.sync(); a property can be read only after it was loaded and synced; an …OrNullObject call tells by
 * isNullObject that there is nothing; a failing instruction ends its batch and leaves what came before it done.
 */
export class OfficeError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}
export const refuse = (code: string, message = code): never => {
  throw new OfficeError(code, message);
};

export interface Limits {
  readonly requestBytes: number;
  readonly responseBytes: number;
}

/** What one sync sent and got. */
export interface Exchange {
  readonly request: number;
  readonly response: number;
}

interface Instruction {
  readonly bytes: number;
  readonly act: () => number | void;
}

export class Queue {
  private instructions: Instruction[] = [];
  roundTrips = 0;

  constructor(
    private readonly limits: Limits,
    private readonly log: Exchange[] = [],
  ) {}

  add(bytes: number, act: () => number | void): void {
    this.instructions.push({ bytes, act });
  }

  /** Carries the batch out; returns nothing, like Office.js, and throws at the first instruction that fails. */
  flush(): void {
    const batch = this.instructions;
    this.instructions = [];
    this.roundTrips += 1;
    const request = batch.reduce((sum, { bytes }) => sum + bytes, 0);
    if (request > this.limits.requestBytes)
      refuse('RequestPayloadSizeLimitExceeded', 'The request payload size has exceeded the limit.');
    let answer = 0;
    for (const { act } of batch) answer += act() ?? 0;
    this.log.push({ request, response: answer });
    if (answer > this.limits.responseBytes)
      refuse('ResponsePayloadSizeLimitExceeded', 'The response payload size has exceeded the limit.');
  }
}

/** What a kind of client object can do, over its state in the workbook. */
export interface Kind<S> {
  /** Properties that must be loaded before they are read. */
  readonly read?: Readonly<Record<string, (state: S) => unknown>>;
  readonly write?: Readonly<Record<string, (state: S, value: unknown) => void>>;
  /** Members that exist at once: other client objects and methods. */
  readonly members?: (self: Self<S>) => Readonly<Record<string, unknown>>;
  /** The members of a collection, for load('items/…'). */
  readonly items?: (state: S, self: Self<S>) => unknown[];
}

export interface Self<S> {
  readonly queue: Queue;
  /** The state, while a batch runs. Throws ItemNotFound when there is none. */
  state(): S;
  queueAct(bytes: number, act: (state: S) => number | void): void;
  child<C>(kind: Kind<C>, find: (state: S) => C | undefined, orNull?: boolean): unknown;
}

const utf8 = new TextEncoder();
const sizeOf = (value: unknown): number => utf8.encode(JSON.stringify(value) ?? '').length;

export const clientObject = <S>(queue: Queue, kind: Kind<S>, find: () => S | undefined, orNull = false): unknown => {
  const loaded = new Map<string, unknown>();
  let nullness: boolean | undefined;
  let found: S | undefined;
  const state = (): S => (found ??= find()) ?? refuse('ItemNotFound', "The requested resource doesn't exist.");
  const isNull = (): boolean => orNull && (found ??= find()) === undefined;
  if (orNull)
    queue.add(60, () => {
      nullness = isNull();
    });

  const self: Self<S> = {
    queue,
    state,
    queueAct: (bytes, act) => queue.add(bytes, () => act(state())),
    child: (childKind, findChild, childOrNull) =>
      clientObject(queue, childKind, () => (isNull() ? undefined : findChild(state())), childOrNull || orNull),
  };
  const members = kind.members?.(self) ?? {};

  /** Loads "a,b", "items/name" or "items"; returns the bytes of the answer. */
  const loadNow = (paths: readonly string[]): number => {
    nullness = isNull();
    if (nullness) return 0;
    let bytes = 0;
    const items = paths.filter((path) => path === 'items' || path.startsWith('items/'));
    if (items.length > 0) {
      if (!kind.items) refuse('InvalidArgument', 'no items here');
      const list = kind.items!(state(), self) as Loadable[];
      loaded.set('items', list);
      const below = items.flatMap((path) => (path === 'items' ? [] : [path.slice(6)]));
      bytes += list.reduce((sum, item) => sum + item[LOAD_NOW](below), 0);
    }
    for (const path of paths.filter((p) => !items.includes(p))) {
      const reader = kind.read?.[path] ?? refuse('InvalidArgument', `no property ${path}`);
      const value = reader(state());
      loaded.set(path, value);
      bytes += sizeOf(value);
    }
    return bytes;
  };

  const load = (names: string | string[]) => {
    const paths = (Array.isArray(names) ? names : names.split(',')).map((path) => path.trim());
    queue.add(40 + sizeOf(paths), () => loadNow(paths));
    return proxy;
  };

  const proxy: unknown = new Proxy(
    {},
    {
      get(_target, name) {
        if (name === LOAD_NOW) return loadNow;
        if (typeof name === 'symbol' || name === 'then') return undefined;
        if (name === 'load') return load;
        if (name === 'isNullObject')
          return nullness ?? refuse('PropertyNotLoaded', 'isNullObject is not known before context.sync()');
        if (name in members) return members[name];
        if (!(name in (kind.read ?? {})) && name !== 'items') throw new Error(`the fake has no member ${name}`);
        if (!loaded.has(name))
          refuse('PropertyNotLoaded', `The property '${name}' is not available. Call load() and context.sync() first.`);
        return loaded.get(name);
      },
      set(_target, name, value: unknown) {
        const write = kind.write?.[String(name)];
        if (!write) throw new Error(`the fake cannot write ${String(name)}`);
        queue.add(80 + sizeOf(value), () => write(state(), value));
        return true;
      },
    },
  );
  return proxy;
};

const LOAD_NOW = Symbol('load now');
interface Loadable {
  [LOAD_NOW](paths: readonly string[]): number;
}
