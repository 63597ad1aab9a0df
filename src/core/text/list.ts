import type { Read } from '../issue';
import { read } from '../issue';
import type { UnitId } from '../units';
import { readQuantity, type ReadingOptions } from './quantity';

export const readList = (text: string, unit: UnitId, options?: ReadingOptions): Read<number[]> => {
  if (['none', 'dc', '–', '-'].includes(text.trim().toLowerCase())) return read([]);
  const values: number[] = [];
  for (const part of text.split(';')) {
    const one = readQuantity(part, unit, options);
    if (!one.ok) return one;
    values.push(one.value.si);
  }
  return read(values);
};
