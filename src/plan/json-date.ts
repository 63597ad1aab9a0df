const DAY_MS = 86_400_000;
const SERIAL_OF_1970 = 25_569;

/** "2026-11-30" as days since 1899-12-30, as spreadsheets count; undefined for anything else. */
export const dateFromText = (text: string): number | undefined => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!parts) return undefined;
  const time = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]));
  // 2026-02-30 would become a day in March.
  return new Date(time).toISOString().slice(0, 10) === parts[0] ? time / DAY_MS + SERIAL_OF_1970 : undefined;
};

/** The day of a serial number as "2026-11-30"; the time of day is dropped. */
export const dateText = (serial: number): string => {
  const time = (Math.floor(serial) - SERIAL_OF_1970) * DAY_MS;
  return Math.abs(time) <= 8.64e15 ? new Date(time).toISOString().slice(0, 10) : String(serial);
};
