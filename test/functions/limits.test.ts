import { callFunction } from '../../src/engine/call';
import type { Argument } from '../../src/engine/arguments';
import type { AnyFunction, ArgSpec, QuantityArg } from '../../src/functions/define';
import { FUNCTIONS } from '../../src/functions/index';

const FAMILIES = ['level and dynamic range', 'frequency span', 'mass loading', 'thermal', 'trust'];
const functions = FUNCTIONS.filter((fn) => FAMILIES.includes(fn.family));

/** Any number makes sense for these: either sign, any size. */
const UNBOUNDED = ['THERMAL.RESIDUAL slope', 'THERMAL.ZERO drift'];

/** Optional arguments that other arguments of the same call make necessary. */
const CONDITIONAL = ['CEILING', 'CEILING.CAUSE', 'FREQUENCY.', 'LEVEL.SINE', 'SIGNAL.TO.NOISE.NEEDED'];

interface Bounded {
  readonly fn: AnyFunction;
  readonly arg: string;
  readonly position: number;
  readonly spec: QuantityArg;
}
const quantities: Bounded[] = functions.flatMap((fn) =>
  Object.entries(fn.args as Record<string, ArgSpec>)
    .map(([arg, spec], position) => ({ fn, arg, position, spec }))
    .filter((entry): entry is Bounded => (entry.spec.kind ?? 'quantity') === 'quantity')
    .filter(({ spec }) => !spec.forgiving),
);
const beyond = ({ above, atLeast, below, atMost }: QuantityArg): number[] =>
  [above, below, atLeast === undefined ? undefined : atLeast - 1, atMost === undefined ? undefined : atMost + 1].filter(
    (value) => value !== undefined,
  );

/** The first example with one argument replaced. */
const withArgument = (fn: AnyFunction, position: number, value: Argument): Argument[] => {
  const args = [...(fn.examples[0]?.args ?? [])] as Argument[];
  while (args.length <= position) args.push(null);
  args[position] = value;
  return args;
};

describe('every quantity of a calculating function', () => {
  it('is covered here', () => expect(quantities.length).toBeGreaterThan(250));

  it.each(quantities.map((entry) => [`${entry.fn.name} ${entry.arg}`, entry] as const))(
    '%s has a limit and is refused just outside it',
    (name, { fn, arg, position, spec }) => {
      const outside = beyond(spec);
      if (UNBOUNDED.includes(name)) expect(outside).toEqual([]);
      else expect(outside.length).toBeGreaterThan(0);
      for (const value of outside) {
        expect(callFunction(fn, withArgument(fn, position, value))).toMatchObject({
          ok: false,
          issue: { code: 'out-of-range', arg, given: expect.closeTo(value, 6) },
        });
      }
    },
  );

  it.each(quantities.map((entry) => [`${entry.fn.name} ${entry.arg}`, entry] as const))(
    '%s is missing when blank, unless it has a default, and an error when its cell is one',
    (_, { fn, arg, position, spec }) => {
      const blank = callFunction(fn, withArgument(fn, position, null));
      const isFilledByRange = Object.values(fn.args as Record<string, QuantityArg>).some((s) => s.rangeWith === arg);
      if (spec.optional || spec.default !== undefined) {
        const isConditional = CONDITIONAL.some(
          (name) => fn.name === name || (name.endsWith('.') && fn.name.startsWith(name)),
        );
        if (!blank.ok && !isConditional) expect(blank.issue).not.toMatchObject({ code: 'missing', arg });
      } else if (!isFilledByRange) expect(blank).toMatchObject({ ok: false, issue: { code: 'missing', arg } });
      expect(callFunction(fn, withArgument(fn, position, { error: '#REF!' }))).toMatchObject({
        ok: false,
        issue: { code: 'cell-error', arg },
      });
    },
  );
});
