import { UNITS, type UnitId } from '../core/units';
import { isCellError, type AnyFunction, type ArgSpec, type Block, type Cell, type Example } from './define';

/** How arguments and results are said in words, for every place that shows help. */
const labelOf = (unit: UnitId): string => UNITS[unit].label;

export const isRepeating = (spec: ArgSpec): boolean => 'repeating' in spec && spec.repeating === true;

const mayBeBlank = (spec: ArgSpec): boolean =>
  spec.optional === true ||
  ('default' in spec && spec.default !== undefined) ||
  ('forgiving' in spec && spec.forgiving === true);

/** How many of the arguments a call must name: an argument is omissible when it and all after it may be blank. */
export const requiredCount = (fn: AnyFunction): number =>
  Object.values(fn.args as Record<string, ArgSpec>).reduce((count, spec, i) => (mayBeBlank(spec) ? count : i + 1), 0);

/** "low, high, [lineSpacing]" */
export const signatureOf = (fn: AnyFunction): string => {
  const required = requiredCount(fn);
  return Object.entries(fn.args as Record<string, ArgSpec>)
    .map(([key, spec], i) => (i < required ? key : `[${key}]`) + (isRepeating(spec) ? ', …' : ''))
    .join(', ');
};

/** "°C:%", "mV/g", or '' where no unit applies. */
export const unitOf = (spec: ArgSpec): string => {
  if (spec.kind === 'curve') return `${labelOf(spec.x)}:${labelOf(spec.y)}`;
  return 'unit' in spec ? labelOf(spec.unit) : '';
};

/** "> 0, ≤ 100" in the documented unit, or the choices; '' where anything is allowed. */
export const limitsOf = (spec: ArgSpec): string => {
  if (spec.kind === 'choice') return spec.choices.join(' | ');
  const { above, atLeast, below, atMost } = spec as {
    above?: number;
    atLeast?: number;
    below?: number;
    atMost?: number;
  };
  const rules: [string, number | undefined][] = [
    ['>', above],
    ['≥', atLeast],
    ['<', below],
    ['≤', atMost],
  ];
  return rules.flatMap(([sign, value]) => (value === undefined ? [] : [`${sign} ${value}`])).join(', ');
};

/** What a blank cell means: a default value, "none", "incomplete", or '' where the argument is needed. */
export const blankOf = (spec: ArgSpec): string => {
  if ('default' in spec && spec.default !== undefined) return String(spec.default);
  if ('forgiving' in spec && spec.forgiving) return 'incomplete';
  return spec.optional ? 'none' : '';
};

const formOf = (spec: ArgSpec): string => {
  if (spec.kind === 'curve') return `pairs ${unitOf(spec)} in one cell, or two columns`;
  if (spec.kind === 'list') return ['one or more numbers', unitOf(spec)].filter(Boolean).join(' in ');
  return unitOf(spec);
};

/** One line for a tool tip: what it is, unit, limits, and what a blank means. */
export const argumentHint = (spec: ArgSpec): string => {
  const blank = blankOf(spec);
  const facts = [formOf(spec), limitsOf(spec), blank && (blank === 'none' ? 'may be blank' : `blank: ${blank}`)];
  const said = facts.filter(Boolean).join('; ');
  return said ? `${spec.text} (${said})` : spec.text;
};

/** "g", "°C … Hz" for a row, "text" or "block". */
export const resultUnitOf = (fn: AnyFunction): string => {
  const { result } = fn;
  if (result.kind === 'text' || result.kind === 'block') return result.kind;
  if (result.kind === 'row') return result.columns.map((c) => `${c.title} ${labelOf(c.unit)}`.trim()).join(', ');
  return labelOf(result.unit) || 'ratio';
};

const literal = (cell: Cell): string => {
  if (cell === null) return '';
  if (isCellError(cell)) return cell.error;
  if (typeof cell === 'string') return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
};
/** A blank cannot stand in an array constant; an empty text reads the same. */
const arrayConstant = (block: Block): string =>
  `{${block.map((row) => row.map((cell) => (cell === null ? '""' : literal(cell))).join(',')).join(';')}}`;

/** One argument as it is typed into a formula. */
export const argumentText = (arg: Example['args'][number]): string =>
  Array.isArray(arg) ? arrayConstant(arg) : literal(arg as Cell);

/** The example as it is typed into a cell, without the leading equals sign: "CHAN.MASS.SHIFT(0.02)". */
export const exampleFormula = (fullName: string, example: Example): string =>
  `${fullName}(${example.args.map(argumentText).join(',')})`;
