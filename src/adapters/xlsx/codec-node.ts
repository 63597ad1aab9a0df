import { constants, crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Codec, Packed, Packer } from './codec';

/** Parts from here on are packed faster and a little less. */
const LARGE = 8_000_000;

/**
 * Packs each piece for itself up to a byte boundary, so that the pieces can be put one behind the other and each can be
 * proved alone: a part larger than the memory that is wanted for it never stands there whole.
 */
class SegmentPacker implements Packer {
  private readonly segments: Uint8Array[] = [];
  private only: Uint8Array | undefined;
  private packedSize = 0;
  private size = 0;
  private crc = 0;
  private isProved = true;

  constructor(private readonly level: number) {}

  add(piece: Uint8Array, isLast: boolean): void {
    const finishFlush = isLast ? constants.Z_FINISH : constants.Z_SYNC_FLUSH;
    const segment = deflateRawSync(piece, { level: this.level, finishFlush });
    const again = inflateRawSync(segment, { finishFlush, maxOutputLength: piece.length + 1 });
    if (Buffer.compare(again, piece) !== 0) this.isProved = false;
    if (isLast && this.segments.length === 0) this.only = piece;
    this.segments.push(segment);
    this.packedSize += segment.length;
    this.size += piece.length;
    this.crc = crc32(piece, this.crc);
  }

  finish(): Packed | undefined {
    if (!this.isProved) return undefined;
    const { only, size, crc } = this;
    if (only && this.packedSize >= size) return { method: 0, data: only, size, crc };
    const [first] = this.segments;
    const data = this.segments.length === 1 ? first! : new Uint8Array(this.packedSize);
    if (this.segments.length > 1) {
      let at = 0;
      for (const segment of this.segments) {
        data.set(segment, at);
        at += segment.length;
      }
    }
    return { method: 8, data, size, crc };
  }
}

export const nodeCodec: Codec = {
  inflate(packed, size) {
    try {
      return inflateRawSync(packed, { maxOutputLength: Math.max(size, 1) });
    } catch {
      return undefined;
    }
  },
  crc32: (bytes) => crc32(bytes),
  packer: (expected) => new SegmentPacker(expected > LARGE ? 3 : 6),
};
