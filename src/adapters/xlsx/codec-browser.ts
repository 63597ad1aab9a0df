import { deflateSync, Inflate } from 'fflate';
import type { Codec, Packed, Packer } from './codec';

/** Small enough that one step cannot unpack to more than about 16 MB before the size is looked at. */
const STEP = 16_384;

export const browserCodec: Codec = {
  inflate(packed, size) {
    const out = new Uint8Array(size);
    let filled = 0;
    const stream = new Inflate((chunk) => {
      if (filled + chunk.length > size) throw new RangeError('larger than declared');
      out.set(chunk, filled);
      filled += chunk.length;
    });
    try {
      for (let at = 0; at < packed.length; at += STEP)
        stream.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
    } catch {
      return undefined;
    }
    return filled === size ? out : undefined;
  },
  crc32,
  packer: () => new WholePacker(),
};

/** Keeps the pieces until the last has come: this packing cannot be done in parts that fit together. */
class WholePacker implements Packer {
  private readonly pieces: Uint8Array[] = [];

  add(piece: Uint8Array, isLast: boolean): void {
    this.pieces.push(isLast && this.pieces.length === 0 ? piece : piece.slice());
  }

  finish(): Packed | undefined {
    const size = this.pieces.reduce((sum, { length }) => sum + length, 0);
    const bytes = this.pieces.length === 1 ? this.pieces[0]! : new Uint8Array(size);
    let at = 0;
    if (this.pieces.length > 1)
      for (const piece of this.pieces) {
        bytes.set(piece, at);
        at += piece.length;
      }
    const crc = crc32(bytes);
    const data = deflateSync(bytes, { level: 6 });
    if (data.length >= size) return { method: 0, data: bytes, size, crc };
    const again = browserCodec.inflate(data, size);
    return again && crc32(again) === crc ? { method: 8, data, size, crc } : undefined;
  }
}

const TABLES = crcTables();

function crcTables(): Uint32Array[] {
  const first = Uint32Array.from({ length: 256 }, (_, n) => {
    let c = n;
    for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
    return c;
  });
  const tables = [first];
  for (let t = 1; t < 4; t++) tables.push(tables[t - 1]!.map((c) => (c >>> 8) ^ first[c & 255]!));
  return tables;
}

function crc32(bytes: Uint8Array): number {
  const [t0, t1, t2, t3] = TABLES as [Uint32Array, Uint32Array, Uint32Array, Uint32Array];
  const whole = bytes.length & ~3;
  let crc = -1;
  let i = 0;
  for (; i < whole; i += 4) {
    crc ^= bytes[i]! | (bytes[i + 1]! << 8) | (bytes[i + 2]! << 16) | (bytes[i + 3]! << 24);
    crc = t3[crc & 255]! ^ t2[(crc >>> 8) & 255]! ^ t1[(crc >>> 16) & 255]! ^ t0[crc >>> 24]!;
  }
  for (; i < bytes.length; i++) crc = (crc >>> 8) ^ t0[(crc ^ bytes[i]!) & 255]!;
  return ~crc >>> 0;
}
