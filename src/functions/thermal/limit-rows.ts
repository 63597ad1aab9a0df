import { failure, outcome, type Outcome } from '../../core/issue';
import { readQuantity } from '../../core/text/quantity';
import { readRange } from '../../core/text/range';
import type { NamedLimits } from '../../core/thermal/limits';
import { isCellError, type Block, type Cell } from '../define';

const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');

const temperatureOf = (cell: Cell | undefined, arg: string): Outcome<number | undefined> => {
  if (isBlank(cell)) return outcome(undefined);
  if (typeof cell === 'number') return outcome(cell);
  const reading = readQuantity(String(cell), '°C');
  return reading.ok ? outcome(reading.value.si) : failure({ ...reading.problem, arg });
};

/** Name, lower and upper limit of each row; "-54..121 °C" in the second column gives both. */
export const readLimitRows = (table: Block, arg: string): Outcome<NamedLimits[]> => {
  const parts: NamedLimits[] = [];
  for (const [name = null, low, high] of table) {
    const wrong = [name, low, high].find(isCellError);
    if (wrong) return failure({ code: 'cell-error', arg, given: wrong.error });
    if (isBlank(name) && isBlank(low) && isBlank(high)) continue;
    const range = typeof low === 'string' && isBlank(high) ? readRange(low, '°C') : undefined;
    if (range?.ok) {
      parts.push({ name: String(name ?? ''), min: range.value.low, max: range.value.high });
      continue;
    }
    const min = temperatureOf(low, arg);
    if (!min.ok) return min;
    const max = temperatureOf(high, arg);
    if (!max.ok) return max;
    parts.push({ name: String(name ?? ''), min: min.value, max: max.value });
  }
  return parts.length > 0 ? outcome(parts) : failure({ code: 'missing', arg });
};
