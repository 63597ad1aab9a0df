import { showsDate } from '../../workbook/date-format';

const DAY_MS = 86_400_000;
/** Serial day 0 of the two date systems of the format; the first counts a 29 February 1900 that never was. */
const EPOCH_1900 = Date.UTC(1899, 11, 30);
const EPOCH_1904 = Date.UTC(1904, 0, 1);
const FALSE_LEAP_DAY = 60;
const LAST_SERIAL = 2_958_466;

/** Built-in number formats that show a date or time, by id (ECMA-376 part 1, 18.8.30, with the East Asian ones). */
const isBuiltInDate = (id: number): boolean =>
  (id >= 14 && id <= 22) || (id >= 27 && id <= 36) || (id >= 45 && id <= 47) || (id >= 50 && id <= 58);

/** Whether a number format shows a date or a time of day. */
export function isDateFormat(id: number, code: string | undefined): boolean {
  return code === undefined ? isBuiltInDate(id) : showsDate(code);
}

/** ISO 8601 text of a serial day number: a date, a time of day or both. */
export function serialToIso(serial: number, from1904: boolean): string | undefined {
  if (!(serial >= 0 && serial < LAST_SERIAL)) return undefined;
  const days = !from1904 && serial < FALSE_LEAP_DAY ? serial + 1 : serial;
  const at = new Date((from1904 ? EPOCH_1904 : EPOCH_1900) + Math.round(days * DAY_MS)).toISOString();
  const time = at.slice(11, 19);
  if (!from1904 && serial < 1) return time;
  return time === '00:00:00' ? at.slice(0, 10) : `${at.slice(0, 10)}T${time}`;
}

/** Serial day number of an ISO text in a cell of type 'd'. */
export function isoToSerial(iso: string, from1904: boolean): number | undefined {
  const at = Date.parse(
    /^\d{4}-\d{2}-\d{2}(T[\d:.]+)?$/.test(iso) ? `${iso}${iso.includes('T') ? 'Z' : 'T00:00Z'}` : iso,
  );
  if (Number.isNaN(at)) return undefined;
  const serial = (at - (from1904 ? EPOCH_1904 : EPOCH_1900)) / DAY_MS;
  return !from1904 && serial < FALSE_LEAP_DAY + 1 ? serial - 1 : serial;
}
