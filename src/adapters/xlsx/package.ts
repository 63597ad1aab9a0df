import type { Codec, Packed, Packer } from './codec';
import type { Limits } from './limits';
import { refuse } from './refuse';
import { toUtf8 } from './xml-text';
import { readZip, type ZipEntry } from './zip-read';
import { freshEntry, writeZip } from './zip-write';

const OLE_HEADER = [0xd0, 0xcf, 0x11, 0xe0];
/** Parts are packed in pieces of this size. */
const PIECE_BYTES = 4 * 1024 * 1024;
/** Unpacked parts up to this size are kept; larger ones are unpacked again when they are read again. */
const KEEP_BYTES = 2 * 1024 * 1024;

/** A part that we wrote. It is packed when the file is saved, however often it is edited before. */
class Written {
  private packed: ZipEntry | undefined;

  constructor(
    readonly name: string,
    private readonly content: Uint8Array | Packed,
  ) {}

  get bytes(): Uint8Array | undefined {
    return this.content instanceof Uint8Array ? this.content : undefined;
  }

  entry(codec: Codec): ZipEntry {
    if (this.packed) return this.packed;
    const { method, crc, size, data } = this.content instanceof Uint8Array ? pack(codec, this.content) : this.content;
    return (this.packed = freshEntry(this.name, method, crc, size, data));
  }
}

function pack(codec: Codec, bytes: Uint8Array): Packed {
  const packer = codec.packer(bytes.length);
  for (let at = 0; at === 0 || at < bytes.length; at += PIECE_BYTES)
    packer.add(bytes.subarray(at, at + PIECE_BYTES), at + PIECE_BYTES >= bytes.length);
  return packer.finish() ?? refuse('host', 'The result could not be packed, so nothing was changed.');
}

/** The parts of a workbook file by name (names compare without case). Unread parts stay packed, unedited ones are copied. */
export class Package {
  private entries: Map<string, ZipEntry | Written>;
  private readonly unpacked = new Map<string, Uint8Array>();
  private readonly original: ReadonlyMap<string, ZipEntry>;

  constructor(
    bytes: Uint8Array,
    private readonly codec: Codec,
    readonly limits: Limits,
  ) {
    if (bytes.length > limits.fileBytes)
      refuse('too-large', `The file has more than ${Math.round(limits.fileBytes / 1_048_576)} MB.`);
    if (OLE_HEADER.every((byte, n) => bytes[n] === byte))
      refuse(
        'protected',
        'The file is protected by a password or is an old .xls workbook. Remove the password, or save it as .xlsx first.',
      );
    this.original = new Map(readZip(bytes, limits).map((entry) => [entry.name.toLowerCase(), entry]));
    this.entries = new Map(this.original);
  }

  has(name: string): boolean {
    return this.entries.has(name.toLowerCase());
  }

  /** Part names in the order of the file, as written. */
  names(): string[] {
    return [...this.entries.values()].map((entry) => entry.name);
  }

  /** The bytes of a part, XML parts as UTF-8. */
  read(name: string): Uint8Array {
    const key = name.toLowerCase();
    const entry = this.entries.get(key) ?? refuse('unsupported', `The part ${name} is missing from the file.`);
    if (entry instanceof Written) return entry.bytes ?? this.unpack(entry.entry(this.codec));
    const kept = this.unpacked.get(key);
    if (kept) return kept;
    const bytes = toUtf8(this.unpack(entry), entry.name);
    if (bytes.length <= KEEP_BYTES) this.unpacked.set(key, bytes);
    return bytes;
  }

  /** The bytes of an entry of this or another container, checked against its size and check sum. */
  unpack(entry: ZipEntry): Uint8Array {
    const raw = entry.method === 0 ? entry.packed : this.codec.inflate(entry.packed, entry.size);
    if (raw?.length !== entry.size || this.codec.crc32(raw) !== entry.crc)
      refuse('unsupported', `The part ${entry.name} is damaged: its size or check sum does not fit.`);
    return raw;
  }

  /** Adds a part or replaces its content. */
  write(name: string, bytes: Uint8Array): void {
    const key = name.toLowerCase();
    this.entries.set(key, new Written(this.entries.get(key)?.name ?? name, bytes));
    this.unpacked.delete(key);
  }

  packer(expected: number): Packer {
    return this.codec.packer(expected);
  }

  /** Replaces the content of a part by one that was packed piece by piece. */
  writePacked(name: string, packed: Packed): void {
    const key = name.toLowerCase();
    this.entries.set(key, new Written(this.entries.get(key)?.name ?? name, packed));
    this.unpacked.delete(key);
  }

  remove(name: string): void {
    this.entries.delete(name.toLowerCase());
    this.unpacked.delete(name.toLowerCase());
  }

  /** Runs an edit; when it fails, every part is as before. */
  atomically<T>(edit: () => T): T {
    const before = this.entries;
    this.entries = new Map(before);
    try {
      return edit();
    } catch (error) {
      this.entries = before;
      throw error;
    }
  }

  /** True when a part was added, replaced or removed since the file was opened. */
  get isChanged(): boolean {
    return (
      this.entries.size !== this.original.size ||
      [...this.entries].some(([key, entry]) => this.original.get(key) !== entry)
    );
  }

  hadPart(name: string): boolean {
    return this.original.has(name.toLowerCase());
  }

  /** A part as it was when the file was opened; undefined when it is new. */
  readOriginal(name: string): Uint8Array | undefined {
    const entry = this.original.get(name.toLowerCase());
    return entry && toUtf8(this.unpack(entry), entry.name);
  }

  /** Names of the parts that differ from the file that was opened. */
  edited(): string[] {
    return [...this.entries].filter(([key, entry]) => this.original.get(key) !== entry).map(([, entry]) => entry.name);
  }

  /** Every part as it goes into the file: taken over as it was, or packed anew and proved by unpacking it. */
  packed(): ZipEntry[] {
    return [...this.entries.values()].map((entry) => (entry instanceof Written ? entry.entry(this.codec) : entry));
  }

  save(): Uint8Array {
    return writeZip(this.packed());
  }
}
