import type { Limits } from './limits';
import { refuse } from './refuse';

/** One part as it lies in the container; `packed` is copied as it is unless the part is edited. */
export interface ZipEntry {
  readonly name: string;
  readonly nameBytes: Uint8Array;
  readonly flags: number;
  readonly method: 0 | 8;
  readonly time: number;
  readonly date: number;
  readonly crc: number;
  readonly size: number;
  readonly packed: Uint8Array;
  readonly madeBy: number;
  readonly attributes: number;
}

const END_RECORD = 0x06054b50;
const END_RECORD_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_HEADER = 0x04034b50;
const END_RECORD_BYTES = 22;
const LOCAL_HEADER_BYTES = 30;
const DIRECTORY_ENTRY_BYTES = 46;

const damaged = (what: string): never => refuse('unsupported', `The file is damaged or not a workbook: ${what}.`);

/** Reads the central directory only; every size and offset in it is checked before anything is unpacked. */
export function readZip(bytes: Uint8Array, limits: Limits): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { count, offset, size, end } = findDirectory(view);
  if (count > limits.parts) refuse('too-large', `The file has ${count} parts; at most ${limits.parts} are read.`);
  if (offset + size > end) damaged('the list of parts lies outside the file');
  const entries: ZipEntry[] = [];
  const places: [number, number, string][] = [];
  const seen = new Set<string>();
  let total = 0;
  let at = offset;
  for (let n = 0; n < count; n++) {
    if (at + DIRECTORY_ENTRY_BYTES > offset + size || view.getUint32(at, true) !== DIRECTORY_ENTRY)
      damaged('the list of parts is broken');
    const found = readEntry(bytes, view, at, offset);
    at = found.next;
    if (!found.entry) continue;
    const { entry, from } = found;
    const key = entry.name.toLowerCase();
    if (seen.has(key)) refuse('unsupported', `The file holds the part ${entry.name} twice; it cannot be trusted.`);
    seen.add(key);
    total += entry.size;
    checkSize(entry, total, limits);
    places.push([from, entry.packed.byteOffset - bytes.byteOffset + entry.packed.length, entry.name]);
    entries.push(entry);
  }
  places.sort((a, b) => a[0] - b[0]);
  places.forEach(([, until, name], n) => {
    if (until > (places[n + 1]?.[0] ?? offset)) refuse('unsupported', `The part ${name} overlaps another part.`);
  });
  return entries;
}

function checkSize(entry: ZipEntry, total: number, limits: Limits): void {
  if (entry.size > limits.partBytes || total > limits.totalBytes)
    refuse('too-large', `The part ${entry.name} or the whole file unpacks to more than may be read.`);
  if (entry.size > limits.ratioFrom && entry.size > limits.ratio * entry.packed.length)
    refuse('too-large', `The part ${entry.name} unpacks to more than ${limits.ratio} times its size.`);
  if (entry.method === 0 && entry.size !== entry.packed.length) damaged(`${entry.name} has a wrong size`);
}

function findDirectory(view: DataView): { count: number; offset: number; size: number; end: number } {
  const lowest = Math.max(0, view.byteLength - END_RECORD_BYTES - 0xffff);
  for (let at = view.byteLength - END_RECORD_BYTES; at >= lowest; at--) {
    if (view.getUint32(at, true) !== END_RECORD) continue;
    if (at + END_RECORD_BYTES + view.getUint16(at + 20, true) > view.byteLength) continue;
    const count = view.getUint16(at + 10, true);
    const size = view.getUint32(at + 12, true);
    const offset = view.getUint32(at + 16, true);
    if (count !== 0xffff && size !== 0xffffffff && offset !== 0xffffffff) return { count, size, offset, end: at };
    return at >= 20 && view.getUint32(at - 20, true) === LOCATOR_64
      ? findDirectory64(view, at - 20)
      : { count, size, offset, end: at };
  }
  return damaged('it has no list of parts');
}

function findDirectory64(view: DataView, locator: number): ReturnType<typeof findDirectory> {
  const at = wide(view, locator + 8);
  if (at + 56 > locator || view.getUint32(at, true) !== END_RECORD_64) damaged('its list of parts cannot be found');
  return { count: wide(view, at + 32), size: wide(view, at + 40), offset: wide(view, at + 48), end: at };
}

function wide(view: DataView, at: number): number {
  const value = view.getBigUint64(at, true);
  return value > BigInt(Number.MAX_SAFE_INTEGER) ? damaged('a size is out of bounds') : Number(value);
}

function readEntry(bytes: Uint8Array, view: DataView, at: number, directory: number) {
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const extra = at + DIRECTORY_ENTRY_BYTES + nameLength;
  const next = extra + extraLength + view.getUint16(at + 32, true);
  if (next > view.byteLength) damaged('the list of parts is broken');
  const nameBytes = bytes.subarray(at + DIRECTORY_ENTRY_BYTES, extra);
  const name = new TextDecoder().decode(nameBytes).replaceAll('\\', '/').replace(/^\//, '');
  if (name.endsWith('/')) return { next };
  if (name === '' || name.includes('\0') || name.split('/').includes('..') || /^([a-z]:|\/)/i.test(name))
    refuse('unsupported', `The part name "${name.slice(0, 80)}" points outside the file.`);
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  if (flags & 1) refuse('protected', 'The file is protected by a password. Remove the password first.');
  if (method !== 0 && method !== 8) refuse('unsupported', `The part ${name} is packed in an unknown way (${method}).`);
  const sizes = { size: view.getUint32(at + 24, true), packed: view.getUint32(at + 20, true) };
  let from = view.getUint32(at + 42, true);
  if (sizes.size === 0xffffffff || sizes.packed === 0xffffffff || from === 0xffffffff)
    from = widen(view, extra, extra + extraLength, sizes, from);
  if (from + LOCAL_HEADER_BYTES > directory || view.getUint32(from, true) !== LOCAL_HEADER)
    damaged(`${name} cannot be found`);
  const localName = from + LOCAL_HEADER_BYTES;
  const localNameEnd = localName + view.getUint16(from + 26, true);
  const start = localNameEnd + view.getUint16(from + 28, true);
  if (start + sizes.packed > directory) damaged(`${name} lies outside the file`);
  if (!sameBytes(bytes.subarray(localName, localNameEnd), nameBytes)) damaged(`${name} has two names`);
  const entry: ZipEntry = {
    name,
    nameBytes,
    flags,
    method,
    time: view.getUint16(at + 12, true),
    date: view.getUint16(at + 14, true),
    crc: view.getUint32(at + 16, true),
    size: sizes.size,
    packed: bytes.subarray(start, start + sizes.packed),
    madeBy: view.getUint16(at + 4, true),
    attributes: view.getUint32(at + 38, true),
  };
  return { next, entry, from };
}

/** Takes the 64-bit sizes and offset out of the extra field, which holds only those whose 32-bit field is full. */
function widen(view: DataView, from: number, to: number, sizes: { size: number; packed: number }, offset: number) {
  for (let at = from; at + 4 <= to; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    let field = at + 4;
    const end = Math.min(to, field + view.getUint16(at + 2, true));
    const take = (narrow: number): number => {
      if (narrow !== 0xffffffff) return narrow;
      if (field + 8 > end) damaged('a size is missing');
      field += 8;
      return wide(view, field - 8);
    };
    sizes.size = take(sizes.size);
    sizes.packed = take(sizes.packed);
    return take(offset);
  }
  return offset;
}

export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}
