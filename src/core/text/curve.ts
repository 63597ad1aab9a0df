import type { Curve } from '../curve';
import type { Read } from '../issue';
import { read, unread } from '../issue';
import type { UnitId } from '../units';
import { readQuantity, type ReadingOptions } from './quantity';

export const readCurve = (text: string, xUnit: UnitId, yUnit: UnitId, options?: ReadingOptions): Read<Curve> => {
  const x: number[] = [];
  const y: number[] = [];
  for (const pair of text.split(';').filter((p) => p.trim() !== '')) {
    const [left = '', right = ''] = pair.split(':');
    const at = readQuantity(left, xUnit, options);
    const value = readQuantity(right, yUnit, options);
    if (!at.ok) return at;
    if (!value.ok) return value;
    x.push(at.value.si);
    y.push(value.value.si);
  }
  const rising = x.every((value, i) => i === 0 || value > (x[i - 1] ?? Number.NaN));
  return x.length > 0 && rising
    ? read({ x, y })
    : unread({ code: 'bad-curve', given: text, rule: 'x:y pairs with rising x, separated by semicolons' });
};
