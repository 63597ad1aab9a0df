import { UNITS, type QuantityName, type UnitId } from '../units';
import { plainText } from './characters';
import { remembering } from './memory';
import { LONGEST_UNIT } from './unit-text';
import { isMultiplier, scaleValue } from './value';

/** One thing a unit text can mean. "mg" has two: milli-g in an acceleration, milligram in a mass. */
export interface UnitMeaning {
  quantity: QuantityName;
  /** The first documented unit of the quantity. */
  field: UnitId;
  toSi: (value: number) => number;
  fromSi: (si: number) => number;
}

const FIELDS: ReadonlyMap<QuantityName, UnitId> = new Map(
  (Object.keys(UNITS) as UnitId[]).reverse().map((id) => [UNITS[id].quantity, id]),
);
const isDocumentedId = (text: string): text is UnitId => Object.hasOwn(UNITS, text);

const linear = (field: UnitId, offset: number, slope: number): UnitMeaning => ({
  quantity: UNITS[field].quantity,
  field,
  toSi: (value) => offset + slope * value,
  fromSi: (si) => (si - offset) / slope,
});

const meaningIn = (field: UnitId, text: string): UnitMeaning | undefined => {
  if (isDocumentedId(text) && UNITS[text].quantity === UNITS[field].quantity) return linear(field, 0, UNITS[text].toSi);
  const plain = plainText(text);
  if (plain === '' || isMultiplier(plain, field)) return undefined;
  const zero = scaleValue(0, plain, field, text);
  const one = scaleValue(1, plain, field, text);
  return zero.ok && one.ok && !one.assumed ? linear(field, zero.si, one.si - zero.si) : undefined;
};

/** °C or °F alone is a temperature, never a difference. */
const allMeanings = (text: string): UnitMeaning[] => {
  const meanings = [...FIELDS.values()].map((field) => meaningIn(field, text)).filter((m) => m !== undefined);
  const scale = meanings.find(({ quantity }) => quantity === 'temperature');
  // 0 K is −273.15 °C; no other zero lies that low.
  const isKelvin = scale !== undefined && scale.toSi(0) < -200;
  return scale && !isKelvin ? meanings.filter(({ quantity }) => quantity !== 'temperature difference') : meanings;
};

const remembered = remembering(100, allMeanings);

/** Every quantity the unit text can measure. */
export const unitMeanings = (text: string): readonly UnitMeaning[] =>
  text.length > LONGEST_UNIT ? [] : remembered(text.trim());
