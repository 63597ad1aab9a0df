import type { Language } from '../../core/language';
import type { UnitId } from '../../core/units';
import { acceleration, inWords, withUnit } from '../numbers-in-words';
import { localised } from './candidate-words';

/** A number with its unit to three digits, levels to a tenth of a dB. Small accelerations in µg, as elsewhere. */
export const numberWords = (si: number, unit: UnitId, language: Language = 'en'): string => {
  if (unit === 'dB') return localised(`${String(Number(si.toFixed(1))).replace('-', '−')} dB`, language);
  return localised(unit === 'g' ? acceleration(si) : withUnit(si, unit), language);
};

/** A dimensionless factor, to two digits. */
export const factorWords = (factor: number, language: Language = 'en'): string =>
  localised(inWords(factor, '1', factor < 100 ? 3 : 2), language);
