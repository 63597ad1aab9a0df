import { UNITS, type UnitId } from '../../core/units';
import type { AnyFunction, ArgSpec } from '../../functions/define';

const labelOf = (unit: UnitId): string => UNITS[unit].label;
const inUnit = (unit: UnitId): string => (labelOf(unit) ? `In ${labelOf(unit)}. ` : '');

const unitNote = (spec: ArgSpec): string => {
  if (spec.kind === 'curve') return `Pairs of ${labelOf(spec.x)} and ${labelOf(spec.y)}. `;
  if (spec.kind === 'choice') return `One of ${spec.choices.join(', ')}. `;
  return 'unit' in spec ? inUnit(spec.unit) : '';
};

const defaultNote = (spec: ArgSpec): string => {
  if ('default' in spec && spec.default !== undefined) return `${spec.default} if left out. `;
  return spec.optional ? 'May be left out. ' : '';
};

/** The text beside an argument in the grid's function help. */
export const describeArgument = (spec: ArgSpec): string => `${spec.text} ${unitNote(spec)}${defaultNote(spec)}`.trim();

/** The argument as the first worked example gives it; a range is shown as one. */
export const exampleOf = (fn: AnyFunction, index: number): string => {
  const given = fn.examples[0]?.args[index];
  if (given === undefined || given === null) return '';
  if (Array.isArray(given)) return 'A1:B9';
  return typeof given === 'string' ? `"${given}"` : String(given);
};
