import { unzipSync, zipSync, type Zippable } from 'fflate';

/** The same archive with one date for all its parts, so that equal content gives equal bytes. */
export const steadyZip = (archive: Uint8Array, date: Date): Uint8Array => {
  // Zip dates are local time without a zone: these numbers are the same everywhere.
  const mtime = new Date(date.getUTCFullYear(), date.getUTCMonth(), date.getUTCDate());
  const parts: Zippable = {};
  for (const [name, content] of Object.entries(unzipSync(archive))) parts[name] = [content, { level: 9, mtime }];
  return zipSync(parts);
};
