/** Thread and connector sizes that look like a range of two whole numbers (unified threads by number, from memory). */
const THREADS = new Set(
  '0-80 1-64 1-72 2-56 2-64 3-48 3-56 4-40 4-48 5-40 5-44 6-32 6-40 8-32 8-36 10-24 10-32 12-24 12-28'.split(' '),
);

/** "10-32" with nothing behind it: as likely a connector as a range. */
export const isThreadName = (plain: string): boolean => THREADS.has(plain);
