export type FileProblemCode =
  'empty' | 'old-format' | 'encrypted' | 'not-a-workbook' | 'other-format' | 'broken' | 'too-large';

const MESSAGES: Record<FileProblemCode, string> = {
  empty: 'This file is empty (0 bytes). Open a workbook in the .xlsx format.',
  'old-format':
    'This is a workbook in the old .xls format. Save it as .xlsx in your spreadsheet program and open that file.',
  encrypted: 'This workbook is protected with a password. Save a copy without the password and open that file.',
  'not-a-workbook': 'This is not a workbook. Open a file in the .xlsx format.',
  'other-format':
    'This is another kind of document in a zip container, not an .xlsx workbook. Save it as .xlsx and open that file.',
  broken:
    'This .xlsx file is damaged: a part of it cannot be read. Open it in your spreadsheet program, repair it and save it again.',
  'too-large':
    'This file is larger than a browser page can show well (60 MB, or 400 MB unpacked). Use the command line for it.',
};

/** Why a file cannot be opened, in a sentence for the user. */
export class FileProblem extends Error {
  constructor(readonly code: FileProblemCode) {
    super(MESSAGES[code]);
    this.name = 'FileProblem';
  }
}

const MOST_BYTES = 60 * 1024 * 1024;
const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, i) => bytes[i] === byte);
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const ZIP = [0x50, 0x4b, 0x03, 0x04];
/** Names of parts that only other kinds of document have; names are not compressed inside a zip. */
const OTHER_PARTS = ['mimetypeapplication/', 'word/document.xml', 'ppt/presentation.xml', 'xl/workbook.bin'];

const contains = (bytes: Uint8Array, text: string, wide: boolean): boolean => {
  const codes = [...text].flatMap((letter) => (wide ? [letter.charCodeAt(0), 0] : [letter.charCodeAt(0)]));
  const [first = 0] = codes;
  for (let at = bytes.indexOf(first); at !== -1; at = bytes.indexOf(first, at + 1))
    if (codes.every((code, i) => bytes[at + i] === code)) return true;
  return false;
};

const DIRECTORY_ENTRY = 0x02014b50;
const MOST_UNPACKED_BYTES = 400 * 1024 * 1024;

/** What the parts of a zip say they unpack to, from the directory at its end. */
const unpackedBytes = (bytes: Uint8Array): number => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && !(bytes[end] === 0x50 && view.getUint32(end, true) === 0x06054b50)) end--;
  if (end < 0) throw new FileProblem('broken');
  let total = 0;
  let at = view.getUint32(end + 16, true);
  while (at + 46 <= end && view.getUint32(at, true) === DIRECTORY_ENTRY) {
    total += view.getUint32(at + 24, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return total;
};

/** Looks at the first bytes and throws a FileProblem for everything that is not an .xlsx file. */
export const recogniseFile = (bytes: Uint8Array): void => {
  if (bytes.length === 0) throw new FileProblem('empty');
  if (bytes.length > MOST_BYTES) throw new FileProblem('too-large');
  // An encrypted .xlsx and an old .xls share their container; only the first names its encrypted stream.
  if (startsWith(bytes, COMPOUND))
    throw new FileProblem(contains(bytes, 'EncryptedPackage', true) ? 'encrypted' : 'old-format');
  if (!startsWith(bytes, ZIP)) throw new FileProblem('not-a-workbook');
  if (OTHER_PARTS.some((part) => contains(bytes, part, false))) throw new FileProblem('other-format');
  if (unpackedBytes(bytes) > MOST_UNPACKED_BYTES) throw new FileProblem('too-large');
  if (!contains(bytes, '[Content_Types].xml', false)) throw new FileProblem('other-format');
};
