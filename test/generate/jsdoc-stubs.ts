import type { AnyFunction, ArgSpec } from '../../src/functions/define';
import { argumentHint, isRepeating, requiredCount } from '../../src/functions/describe';
import { helpUrlOf, spills } from '../../src/generate/metadata';

const typeOf = (spec: ArgSpec): string => {
  const one = spec.kind === 'curve' || spec.kind === 'list' || spec.kind === 'block' ? 'any[][]' : 'any';
  return isRepeating(spec) ? `${one}[]` : one;
};

/** The catalogue as the annotated source that Microsoft's generator expects: one declaration per function, bodies left out. */
export const jsdocStubs = (functions: readonly AnyFunction[]): string =>
  functions
    .map((fn, i) => {
      const args = Object.entries(fn.args as Record<string, ArgSpec>);
      const required = requiredCount(fn);
      // A repeating argument is one array of ranges, not a rest argument: that is how Excel hands it over.
      const declared = args.map(([name, spec], k) => `${name}${k >= required ? '?' : ''}: ${typeOf(spec)}`);
      return [
        '/**',
        ` * ${fn.summary}`,
        ` * @customfunction ${fn.name} ${fn.name}`,
        ` * @helpurl ${helpUrlOf(fn, 'en')}`,
        ...args.map(([name, spec]) => ` * @param ${name} ${argumentHint(spec)}`),
        ' */',
        `export function stub${i}(${declared.join(', ')}): ${spills(fn) ? 'any[][]' : 'any'} { return null as any; }`,
      ].join('\n');
    })
    .join('\n');
