import { readQuantity } from '../core/text/quantity';
import { toSi, UNITS, type UnitId } from '../core/units';
import { PURPOSES, type Purpose } from './fields';
import { changed, PLAN_ORIGIN } from './json-limits';
import { DEFAULT_LIMITS, type Bound, type Limits, type ScopedLimit } from './limits';
import type { Misread } from './misread';
import type { RowReading } from './table-row';

type LimitKey = ScopedLimit['limit'];
interface LimitName {
  readonly limit: LimitKey;
  readonly unit: UnitId;
  /** A purpose that the name itself says. */
  readonly purpose?: Purpose;
}

const NAMED: Readonly<Record<string, LimitName>> = {
  'Signal to noise': { limit: 'signalToNoise', unit: 'dB' },
  Headroom: { limit: 'headroom', unit: 'dB' },
  'Mass ratio, survey': { limit: 'massRatio', unit: '1', purpose: 'survey' },
  'Mass ratio, modal': { limit: 'massRatio', unit: '1', purpose: 'modal' },
  'Mass ratio, shock': { limit: 'massRatio', unit: '1', purpose: 'shock' },
  'Thermal tolerance': { limit: 'thermalTolerance', unit: '%' },
  'Span tolerance': { limit: 'spanTolerance', unit: '%' },
};
/** Names of the limits a plan can set, and the unit of their bounds. */
export const LIMIT_UNITS: Readonly<Record<string, UnitId>> = Object.fromEntries(
  Object.entries(NAMED).map(([name, { unit }]) => [name, unit]),
);

const folded = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
const NAMES = new Map<string, LimitName>([
  ...Object.entries(NAMED).map(([name, of]) => [folded(name), of] as const),
  ['mass ratio', { limit: 'massRatio', unit: '1' }],
]);
export const limitNames = (): readonly (LimitName & { readonly name: string })[] =>
  Object.entries(NAMED).map(([name, of]) => ({ name, ...of }));
export const limitNamed = (typed: unknown): LimitName | undefined =>
  typeof typed === 'string' ? NAMES.get(folded(typed)) : undefined;

/** For which rows a limit holds: all, those of a purpose, of a structure part, or of both. */
export const scopeKey = (limit: LimitKey, purpose: string | undefined, group: string | undefined): string =>
  [limit, purpose ?? '', folded(group ?? '')].join('\n');

/** The rows of a limits table over the defaults. */
export const limitsOf = (rows: readonly RowReading[], misreads: Misread[]): Limits => {
  const own = new Map<string, ScopedLimit>();
  for (const row of rows) {
    const read = limitOf(row, misreads);
    if (!read) continue;
    const key = scopeKey(read.limit, read.purpose, read.group);
    if (!own.has(key)) own.set(key, read);
    else
      misreads.push({
        place: { kind: 'cell', table: 'limits', row: row.at, heading: 'Limit', key: 'limit' },
        read: String(row.values['limit']),
        expected: 'a limit that no row above sets for the same rows; the first is used',
      });
  }
  // What holds for the whole plan needs no look at a row; a mass ratio has a limit for each purpose anyway.
  const whole = (limit: LimitKey, bound: Bound, purpose?: Purpose): Bound =>
    [own.get(scopeKey(limit, undefined, undefined)), purpose && own.get(scopeKey(limit, purpose, undefined))].reduce(
      (under, given) => (given ? changed(under, given.pass, given.warn, given.origin) : under),
      bound,
    );
  const scoped = [...own.values()].filter(
    ({ limit, purpose, group }) => group !== undefined || (purpose !== undefined && limit !== 'massRatio'),
  );
  return {
    ...DEFAULT_LIMITS,
    ...(scoped.length > 0 && { scoped }),
    signalToNoise: whole('signalToNoise', DEFAULT_LIMITS.signalToNoise),
    headroom: whole('headroom', DEFAULT_LIMITS.headroom),
    massRatio: Object.fromEntries(
      PURPOSES.map((purpose) => [purpose, whole('massRatio', DEFAULT_LIMITS.massRatio[purpose], purpose)]),
    ) as Record<Purpose, Bound>,
    thermalTolerance: whole('thermalTolerance', DEFAULT_LIMITS.thermalTolerance),
    spanTolerance: whole('spanTolerance', DEFAULT_LIMITS.spanTolerance),
  };
};

/** A limit whose purpose or part cannot be read must not hold for all. */
const limitOf = ({ at, values, unread }: RowReading, misreads: Misread[]): ScopedLimit | undefined => {
  const refuse = (heading: string, read: string, expected: string): undefined => {
    misreads.push({ place: { kind: 'cell', table: 'limits', row: at, heading }, read, expected });
    return undefined;
  };
  const typed = String(values['limit'] ?? '');
  const named = limitNamed(typed);
  if (!named) return refuse('Limit', typed, `one of ${Object.keys(LIMIT_UNITS).join('; ')}`);
  if (unread.includes('purpose') || unread.includes('group')) return undefined;
  const purpose = values['purpose'] as Purpose | undefined;
  const group = values['group'] as string | undefined;
  if (named.purpose && purpose && named.purpose !== purpose)
    return refuse('Purpose', purpose, `${named.purpose}, as the limit’s name says, or a blank`);
  const { unit } = named;
  const unitText = values['limitUnit'] as string | undefined;
  const bound = (key: 'pass' | 'warn', heading: string): number | undefined => {
    const number = values[key] as number | undefined;
    if (number === undefined) return undefined;
    const si = inUnit(number, unitText, unit);
    return si ?? refuse('Unit', unitText ?? '', `a unit of ${UNITS[unit].quantity} for ${heading}`);
  };
  const origin = (values['origin'] as string | undefined) ?? PLAN_ORIGIN;
  return {
    limit: named.limit,
    purpose: named.purpose ?? purpose,
    group,
    pass: bound('pass', 'Pass'),
    warn: bound('warn', 'Warn'),
    origin: [origin, purpose, group?.trim()].filter(Boolean).join('; '),
  };
};

/** The bounds carry the row's unit; blank is the limit's own. */
const inUnit = (number: number, unitText: string | undefined, unit: UnitId): number | undefined => {
  if (unitText === undefined || unitText === UNITS[unit].label || unitText === unit) return toSi(number, unit);
  if (unit === '1' && unitText === '%') return toSi(number, '%');
  const reading = readQuantity(`${number} ${unitText}`, unit);
  return reading.ok ? reading.value.si : undefined;
};
