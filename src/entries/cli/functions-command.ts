import { argumentHint, exampleFormula, resultUnitOf, signatureOf } from '../../functions/describe';
import type { AnyFunction, ArgSpec } from '../../functions/define';
import { FUNCTIONS, NAMESPACE } from '../../functions/index';
import { STATUS } from './status';
import { Pen, type Io } from './terminal';
import { hanging } from './wrap';

const fullName = (fn: AnyFunction): string => `${NAMESPACE}.${fn.name}`;

const everything = (fn: AnyFunction) => ({
  ...fn,
  name: fullName(fn),
  signature: `${fullName(fn)}(${signatureOf(fn)})`,
  args: Object.entries(fn.args as Record<string, ArgSpec>).map(([name, spec]) => ({
    name,
    ...spec,
    hint: argumentHint(spec),
  })),
  resultUnit: resultUnitOf(fn),
  examples: fn.examples.map((example) => ({ ...example, formula: `=${exampleFormula(fullName(fn), example)}` })),
});

/** The catalogue: name, arguments, what it gives. */
export const functionsCommand = (json: boolean, io: Io): number => {
  if (json) {
    io.out(`${JSON.stringify(FUNCTIONS.map(everything), null, 1)}\n`);
    return STATUS.good;
  }
  const pen = new Pen(io.colour);
  for (const family of new Set(FUNCTIONS.map((fn) => fn.family))) {
    io.out(`${pen.strong(`${family.charAt(0).toUpperCase()}${family.slice(1)}`)}\n`);
    for (const fn of FUNCTIONS.filter((other) => other.family === family)) {
      io.out(`${hanging('  ', `${fullName(fn)}(${signatureOf(fn)})`, io.columns)}\n`);
      io.out(`${hanging('      ', `${fn.summary} Gives ${resultUnitOf(fn)}.`, io.columns)}\n`);
    }
    io.out('\n');
  }
  return STATUS.good;
};
