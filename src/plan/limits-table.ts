import { readQuantity } from '../core/text/quantity';
import { toSi, UNITS, type UnitId } from '../core/units';
import { PURPOSES, type Purpose } from './fields';
import { changed, PLAN_ORIGIN } from './json-limits';
import { DEFAULT_LIMITS, type Bound, type Limits } from './limits';
import type { Misread } from './misread';
import type { RowReading } from './table-row';

/** Names of the limits a plan can set, and the unit of their bounds. */
export const LIMIT_UNITS: Readonly<Record<string, UnitId>> = {
  'Signal to noise': 'dB',
  Headroom: 'dB',
  'Mass ratio, survey': '1',
  'Mass ratio, modal': '1',
  'Mass ratio, shock': '1',
  'Thermal tolerance': '%',
  'Span tolerance': '%',
};

const folded = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
const NAMES = new Map(Object.keys(LIMIT_UNITS).map((name) => [folded(name), name]));

/** The rows of a limits table over the defaults. */
export const limitsOf = (rows: readonly RowReading[], misreads: Misread[]): Limits => {
  const own = new Map<string, Partial<Bound>>();
  for (const { at, values } of rows) {
    const typed = String(values['limit'] ?? '');
    const name = NAMES.get(folded(typed));
    const refuse = (heading: string, read: string, expected: string): undefined => {
      misreads.push({ place: { kind: 'cell', table: 'limits', row: at, heading }, read, expected });
      return undefined;
    };
    if (!name) {
      refuse('Limit', typed, `one of ${Object.keys(LIMIT_UNITS).join('; ')}`);
      continue;
    }
    const unit = LIMIT_UNITS[name]!;
    const unitText = values['limitUnit'] as string | undefined;
    const bound = (key: 'pass' | 'warn', heading: string): number | undefined => {
      const number = values[key] as number | undefined;
      if (number === undefined) return undefined;
      const si = inUnit(number, unitText, unit);
      return si ?? refuse('Unit', unitText ?? '', `a unit of ${UNITS[unit].quantity} for ${heading}`);
    };
    own.set(name, {
      pass: bound('pass', 'Pass'),
      warn: bound('warn', 'Warn'),
      origin: (values['origin'] as string | undefined) ?? PLAN_ORIGIN,
    });
  }
  const merged = (name: string, bound: Bound): Bound => {
    const given = own.get(name);
    return given ? changed(bound, given.pass, given.warn, given.origin) : bound;
  };
  return {
    ...DEFAULT_LIMITS,
    signalToNoise: merged('Signal to noise', DEFAULT_LIMITS.signalToNoise),
    headroom: merged('Headroom', DEFAULT_LIMITS.headroom),
    massRatio: Object.fromEntries(
      PURPOSES.map((purpose) => [purpose, merged(`Mass ratio, ${purpose}`, DEFAULT_LIMITS.massRatio[purpose])]),
    ) as Record<Purpose, Bound>,
    thermalTolerance: merged('Thermal tolerance', DEFAULT_LIMITS.thermalTolerance),
    spanTolerance: merged('Span tolerance', DEFAULT_LIMITS.spanTolerance),
  };
};

/** The bounds carry the row's unit; blank is the limit's own. */
const inUnit = (number: number, unitText: string | undefined, unit: UnitId): number | undefined => {
  if (unitText === undefined || unitText === UNITS[unit].label || unitText === unit) return toSi(number, unit);
  if (unit === '1' && unitText === '%') return toSi(number, '%');
  const reading = readQuantity(`${number} ${unitText}`, unit);
  return reading.ok ? reading.value.si : undefined;
};
