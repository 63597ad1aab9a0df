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
  'too-large': 'This file is larger than 60 MB, which a browser page cannot show well. Use the command line for it.',
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
/** Starts the record at the end of every zip; a file that was cut off has none. */
const ZIP_END = 'PK\u0005\u0006';
/** Names of parts that only other kinds of document have; names are not compressed inside a zip. */
const OTHER_PARTS = ['mimetypeapplication/', 'word/document.xml', 'ppt/presentation.xml', 'xl/workbook.bin'];

const contains = (bytes: Uint8Array, text: string, wide: boolean): boolean => {
  const codes = [...text].flatMap((letter) => (wide ? [letter.charCodeAt(0), 0] : [letter.charCodeAt(0)]));
  const [first = 0] = codes;
  for (let at = bytes.indexOf(first); at !== -1; at = bytes.indexOf(first, at + 1))
    if (codes.every((code, i) => bytes[at + i] === code)) return true;
  return false;
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
  if (!contains(bytes, ZIP_END, false)) throw new FileProblem('broken');
  if (!contains(bytes, '[Content_Types].xml', false)) throw new FileProblem('other-format');
};
