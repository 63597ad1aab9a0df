import { refuse } from './refuse';

export const isSpace = (byte: number): boolean => byte === 32 || byte === 10 || byte === 9 || byte === 13;

export function sameAscii(bytes: Uint8Array, from: number, to: number, text: string): boolean {
  if (to - from !== text.length) return false;
  for (let i = 0; i < text.length; i++) if (bytes[from + i] !== text.charCodeAt(i)) return false;
  return true;
}

const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
const encoder = new TextEncoder();
const SHORT = 32;

/** Text of a span: line ends become LF, then (unless literal) entities are resolved. */
export function decodeText(bytes: Uint8Array, from: number, to: number, literal = false): string {
  let text = '';
  let special = false;
  let plain = to - from <= SHORT;
  for (let at = from; at < to && plain; at++) {
    const byte = bytes[at]!;
    if (byte >= 128) plain = false;
    else {
      if (byte === 38 || byte === 13) special = true;
      text += String.fromCharCode(byte);
    }
  }
  if (!plain) {
    text = decoder.decode(bytes.subarray(from, to));
    special = true;
  }
  if (!special) return text;
  if (text.includes('\r')) text = text.replace(/\r\n?/g, '\n');
  return literal ? text : resolveEntities(text);
}

export const resolveEntities = (text: string): string =>
  text.includes('&') ? text.replace(/&([^;&]{1,12});/g, (all, name: string) => entity(name) ?? all) : text;

const ENTITIES = new Map([
  ['lt', '<'],
  ['gt', '>'],
  ['amp', '&'],
  ['quot', '"'],
  ['apos', "'"],
]);

function entity(name: string): string | undefined {
  if (!name.startsWith('#')) return ENTITIES.get(name);
  const code = name[1] === 'x' ? parseInt(name.slice(2), 16) : parseInt(name.slice(1), 10);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
}

export const utf8 = (text: string): Uint8Array => encoder.encode(text);
export const fromUtf8 = (bytes: Uint8Array): string => decoder.decode(bytes);

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\r': '&#13;',
};
/** For element text and for attributes in double quotes. */
export const escapeXml = (text: string): string => text.replace(/[&<>"\r]/g, (c) => ESCAPES[c]!);
export const escapeAttribute = (text: string): string => escapeXml(text).replace(/\n/g, '&#10;').replace(/\t/g, '&#9;');

/** Cell texts keep characters that XML cannot hold as _xHHHH_. */
export const readCellText = (text: string): string =>
  text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
    : text;

export const writeCellText = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(
      /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/g,
      (c) => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    )
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');

/** The part as UTF-8 bytes, whatever it was written in; its declaration is corrected so that it can be written back. */
export function toUtf8(bytes: Uint8Array, part: string): Uint8Array {
  const encoding = foreignEncoding(bytes);
  if (!encoding) return bytes;
  let text: string;
  try {
    text = new TextDecoder(encoding).decode(bytes);
  } catch {
    return refuse('unsupported', `${part} is written in the unknown encoding ${encoding.slice(0, 40)}.`);
  }
  return utf8(text.replace(/^(<\?xml[^>]*?encoding=["'])[^"']*/, '$1UTF-8'));
}

function foreignEncoding(bytes: Uint8Array): string | undefined {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 60 && b === 0)) return 'utf-16le';
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 60)) return 'utf-16be';
  const declared = /^(?:\xef\xbb\xbf)?<\?xml[^>]*?encoding=["']([^"']*)/.exec(
    String.fromCharCode(...bytes.subarray(0, 200)),
  );
  const name = declared?.[1]?.toLowerCase();
  return name === undefined || name === 'utf-8' || name === 'us-ascii' || name === 'utf8' ? undefined : name;
}
