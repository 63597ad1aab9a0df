import type { ZipEntry } from './zip-read';
import { refuse } from './refuse';

const LARGEST = 0xffffffff;
/** 1 January 1980: equal input gives an equal file, whenever it is written. */
const NO_DATE = 0x21;
const UTF8_NAME = 0x800;
const SIZES_FOLLOW = 8;

export function freshEntry(name: string, method: 0 | 8, crc: number, size: number, packed: Uint8Array): ZipEntry {
  const nameBytes = new TextEncoder().encode(name);
  return {
    name,
    nameBytes,
    flags: UTF8_NAME,
    method,
    time: 0,
    date: NO_DATE,
    crc,
    size,
    packed,
    madeBy: 20,
    attributes: 0,
  };
}

/** Writes the container in the given order; packed data is copied, only the headers are new. */
export function writeZip(entries: readonly ZipEntry[]): Uint8Array {
  let bodies = 0;
  let headers = 0;
  for (const { nameBytes, packed } of entries) {
    bodies += 30 + nameBytes.length + packed.length;
    headers += 46 + nameBytes.length;
  }
  const length = bodies + headers + 22;
  if (length > LARGEST || entries.length > 0xfffe) refuse('too-large', 'The result would be larger than 4 GB.');
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  let body = 0;
  let header = bodies;
  for (const entry of entries) {
    view.setUint32(body, 0x04034b50, true);
    shared(view, body + 4, entry);
    bytes.set(entry.nameBytes, body + 30);
    bytes.set(entry.packed, body + 30 + entry.nameBytes.length);
    view.setUint32(header, 0x02014b50, true);
    view.setUint16(header + 4, entry.madeBy, true);
    shared(view, header + 6, entry);
    view.setUint32(header + 38, entry.attributes, true);
    view.setUint32(header + 42, body, true);
    bytes.set(entry.nameBytes, header + 46);
    body += 30 + entry.nameBytes.length + entry.packed.length;
    header += 46 + entry.nameBytes.length;
  }
  view.setUint32(header, 0x06054b50, true);
  view.setUint16(header + 8, entries.length, true);
  view.setUint16(header + 10, entries.length, true);
  view.setUint32(header + 12, headers, true);
  view.setUint32(header + 16, bodies, true);
  return bytes;
}

/** The 26 bytes that a local header and a directory entry have in common. */
function shared(view: DataView, at: number, entry: ZipEntry): void {
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, entry.flags & ~SIZES_FOLLOW, true);
  view.setUint16(at + 4, entry.method, true);
  view.setUint16(at + 6, entry.time, true);
  view.setUint16(at + 8, entry.date, true);
  view.setUint32(at + 10, entry.crc, true);
  view.setUint32(at + 14, entry.packed.length, true);
  view.setUint32(at + 18, entry.size, true);
  view.setUint16(at + 22, entry.nameBytes.length, true);
}
