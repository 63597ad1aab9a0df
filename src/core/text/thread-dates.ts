import { isThreadName } from './names';

const DAY = 86_400_000;
/** Day 0 of spreadsheet dates; right from 1 March 1900 on, and no thread lies before. */
const DAY_ZERO = Date.UTC(1899, 11, 30);

/**
 * The thread or connector name that a spreadsheet has turned into a date: "10-32" typed into a general cell
 * becomes October 1932 (shown as mmm-yy), "10-24" the 24th of October (shown as d-mmm). Undefined for any other date.
 */
export const threadFromDate = (serial: number, numberFormat: string): string | undefined => {
  if (!Number.isInteger(serial) || serial < 61 || serial > 73_050) return undefined;
  const date = new Date(DAY_ZERO + serial * DAY);
  const [day, month, year] = [date.getUTCDate(), date.getUTCMonth() + 1, date.getUTCFullYear() % 100];
  const format = numberFormat.toLowerCase().split(';')[0] ?? '';
  const showsMonth = format.includes('mmm');
  const names =
    showsMonth && format.includes('y') && !format.includes('d')
      ? day === 1
        ? [`${month}-${String(year).padStart(2, '0')}`]
        : []
      : showsMonth && format.includes('d') && !format.includes('y')
        ? [`${month}-${day}`, `${day}-${month}`]
        : [];
  return names.find(isThreadName);
};
