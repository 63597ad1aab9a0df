import type { Statistic } from '../issue';
import { UNITS, type QuantityName, type UnitId } from '../units';
import { reduce, sameDimensions, type Reduced } from './unit-algebra';
import { spellUnit, type Spelled } from './unit-text';
import { contextOf } from './unit-words';

export type UnitFound =
  | { kind: 'factor'; toSi: number; statistic?: Statistic }
  | { kind: 'ambiguous'; readings: readonly [string, string] }
  /** A unit, but of something else, or no unit we know. */
  | { kind: 'wrong' }
  /** No unit at all. */
  | { kind: 'malformed' };

/** Enough for every unit spelling of a large plan; then the memory starts afresh. */
const REMEMBERED = 512;
const memory = new Map<string, UnitFound>();
const exemplars = new Map<QuantityName, Reduced>();

const reduced = (spelled: Extract<Spelled, { kind: 'unit' }>): Reduced =>
  reduce(spelled.factors.map(([name, power]) => `${name}^${power}`).join(' '));

/** Dimensions of a quantity, taken from the first unit we document for it. */
const exemplarOf = (quantity: QuantityName): Reduced => {
  let exemplar = exemplars.get(quantity);
  if (!exemplar) {
    const id = (Object.keys(UNITS) as UnitId[]).find((key) => UNITS[key].quantity === quantity) ?? '1';
    const spelled = id === '1' ? undefined : spellUnit(plainLabel(id), contextOf(quantity));
    exemplar = spelled?.kind === 'unit' ? reduced(spelled) : reduce('');
    exemplars.set(quantity, exemplar);
  }
  return exemplar;
};
const plainLabel = (id: UnitId): string =>
  id.replace('µ', 'u').replaceAll('²', '^2').replaceAll('³', '^3').replaceAll('·', '*');

const lookUp = (text: string, quantity: QuantityName): UnitFound => {
  let answer: UnitFound = { kind: 'wrong' };
  for (const tight of [false, true]) {
    const spelled = spellUnit(text, contextOf(quantity), tight);
    if (spelled.kind === 'malformed' || spelled.kind === 'ambiguous') return spelled;
    if (spelled.kind === 'unknown') return { kind: 'wrong' };
    const { statistic } = spelled;
    if (spelled.factors.length === 0) return { kind: 'wrong' };
    const unit = reduced(spelled);
    const measures = sameDimensions(unit, exemplarOf(quantity));
    const share = quantity === 'ratio' && sameDimensions(unit, exemplarOf('fraction'));
    if (measures || share) return { kind: 'factor', toSi: unit.factor, statistic };
    answer = { kind: 'wrong' };
  }
  return answer;
};

/** Factor to SI of a spelled unit (already in plain characters), when it measures this quantity. */
export const unitFactor = (text: string, quantity: QuantityName): UnitFound => {
  const key = `${quantity}|${text}`;
  const known = memory.get(key);
  if (known) return known;
  const found = lookUp(text, quantity);
  if (memory.size >= REMEMBERED) memory.clear();
  memory.set(key, found);
  return found;
};
