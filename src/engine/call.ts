import { failure, outcome, type Issue, type Outcome } from '../core/issue';
import { fromSi } from '../core/units';
import type { AnyFunction, ArgSpec, Cell, QuantityArg, ResultSpec } from '../functions/define';
import { isRepeating, requiredCount } from '../functions/describe';
import { readArgument, readRangePair, type Argument } from './arguments';

export type Called = { ok: true; value: Cell | Cell[][] } | { ok: false; issue: Issue };

interface Prepared {
  readonly keys: readonly string[];
  readonly specs: readonly ArgSpec[];
  readonly repeats: boolean;
  readonly required: number;
}
const prepared = new WeakMap<AnyFunction, Prepared>();

const prepare = (fn: AnyFunction): Prepared => {
  const known = prepared.get(fn);
  if (known) return known;
  const keys = Object.keys(fn.args);
  const specs = keys.map((key) => fn.args[key] as ArgSpec);
  const fresh: Prepared = {
    keys,
    specs,
    repeats: specs.some(isRepeating),
    required: requiredCount(fn),
  };
  prepared.set(fn, fresh);
  return fresh;
};

const finite = (value: number): Outcome<number> =>
  Number.isFinite(value) ? outcome(value) : failure({ code: 'no-result', rule: 'the calculation has no finite value' });

const present = (result: unknown, spec: ResultSpec): Called => {
  if (spec.kind === 'text' || spec.kind === 'block') {
    if (Array.isArray(result)) return { ok: true, value: result.map((row: readonly Cell[]) => [...row]) };
    if (typeof result !== 'number') return { ok: true, value: result as Cell };
    return finite(result);
  }
  if (spec.kind === 'row') {
    const row = (result as readonly number[]).map((si, i) => fromSi(si, spec.columns[i]?.unit ?? '1'));
    const bad = row.map(finite).find((cell) => !cell.ok);
    return bad && !bad.ok ? bad : { ok: true, value: [row] };
  }
  return finite(fromSi(result as number, spec.unit));
};

const isOutcome = (result: unknown): result is Outcome<unknown> =>
  typeof result === 'object' && result !== null && 'ok' in result;

/**
 * One worksheet call: reads the cells, checks limits, computes in SI, presents in the documented unit.
 * Whatever a user typed, this returns a value or an issue.
 */
export const callFunction = (fn: AnyFunction, args: readonly Argument[]): Called => {
  const { keys, specs, repeats, required } = prepare(fn);
  if (args.length > keys.length && !repeats)
    return failure({ code: 'argument-count', given: args.length, rule: `at most ${keys.length}` });
  if (args.length < required) {
    const arg = keys[args.length] as string;
    return args.length === 0 && required > 0
      ? failure({ code: 'argument-count', given: 0, rule: `at least ${required}` })
      : failure({ code: 'missing', arg });
  }
  const values: Record<string, unknown> = {};
  for (let i = 0; i < keys.length; i++) {
    const key = keys[i] as string;
    const spec = specs[i] as ArgSpec;
    if (key in values) continue;
    if ('rangeWith' in spec && spec.rangeWith) {
      const other = keys.indexOf(spec.rangeWith);
      const pair = readRangePair([spec, args[i], key], [specs[other] as QuantityArg, args[other], spec.rangeWith]);
      if (pair && !pair.ok && !spec.forgiving) return pair;
      if (pair) {
        [values[key], values[spec.rangeWith]] = pair.ok ? pair.value : [undefined, undefined];
        continue;
      }
    }
    const givens = repeats && i === keys.length - 1 ? args.slice(i) : args.slice(i, i + 1);
    const reading = readArgument(spec, givens, key);
    if (!reading.ok) return reading;
    values[key] = reading.value;
  }
  const result: unknown = fn.compute(values);
  if (!isOutcome(result)) return present(result, fn.result);
  return result.ok ? present(result.value, fn.result) : result;
};
