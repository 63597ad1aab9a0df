import type { Statistic } from '../issue';
import { UNITS, type QuantityName, type UnitId } from '../units';
import { plainText } from './characters';
import { remembering } from './memory';
import { reduce, sameDimensions, type Reduced } from './unit-algebra';
import type { Spelled } from './unit-scanner';
import { LONGEST_UNIT, spellUnit } from './unit-text';
import { contextOf } from './unit-words';

export type UnitFound =
  | { kind: 'factor'; toSi: number; statistic?: Statistic }
  | { kind: 'ambiguous'; readings: readonly [string, string] }
  /** A unit, but of something else, or no unit we know. */
  | { kind: 'wrong' }
  /** No unit at all. */
  | { kind: 'malformed' };

/** Enough for every unit spelling of a large plan in every quantity it is tried for. */
const REMEMBERED = 2000;
const exemplars = new Map<QuantityName, Reduced>();

const reduced = (spelled: Extract<Spelled, { kind: 'unit' }>): Reduced =>
  reduce(spelled.factors.map(([name, power]) => `${name}^${power}`).join(' '));

/** Dimensions of a quantity, from the first unit documented for it; undefined when its label is no spelled unit. */
const exemplarOf = (quantity: QuantityName): Reduced | undefined => {
  if (quantity === 'ratio') return reduce('');
  const known = exemplars.get(quantity);
  if (known) return known;
  const id = (Object.keys(UNITS) as UnitId[]).find((key) => UNITS[key].quantity === quantity);
  const spelled = spellUnit(plainText(id ?? ''), contextOf(quantity));
  if (spelled.kind !== 'unit') return undefined;
  const exemplar = reduced(spelled);
  exemplars.set(quantity, exemplar);
  return exemplar;
};
const measures = (unit: Reduced, quantity: QuantityName): boolean => {
  const exemplar = exemplarOf(quantity);
  return exemplar !== undefined && sameDimensions(unit, exemplar);
};

const lookUp = (text: string, quantity: QuantityName): UnitFound => {
  // "mV/m s-2" is read both ways; only one of them can measure the quantity.
  for (const tight of [false, true]) {
    const spelled = spellUnit(text, contextOf(quantity), tight);
    if (spelled.kind === 'malformed' || spelled.kind === 'ambiguous') return spelled;
    if (spelled.kind === 'unknown' || spelled.factors.length === 0) return { kind: 'wrong' };
    const unit = reduced(spelled);
    const isShareOfOne = quantity === 'ratio' && measures(unit, 'fraction');
    if (isShareOfOne || measures(unit, quantity)) {
      return { kind: 'factor', toSi: unit.factor, statistic: spelled.statistic };
    }
  }
  return { kind: 'wrong' };
};

const remembered = remembering(REMEMBERED, (key) => {
  const bar = key.indexOf('|');
  return lookUp(key.slice(bar + 1), key.slice(0, bar) as QuantityName);
});

/** Factor to SI of a spelled unit (already in plain characters), when it measures this quantity. */
export const unitFactor = (text: string, quantity: QuantityName): UnitFound =>
  text.length > LONGEST_UNIT ? { kind: 'malformed' } : remembered(`${quantity}|${text}`);
