import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Codec } from './codec';

export const nodeCodec: Codec = {
  inflate(packed, size) {
    try {
      return inflateRawSync(packed, { maxOutputLength: Math.max(size, 1) });
    } catch {
      return undefined;
    }
  },
  deflate: (bytes) => deflateRawSync(bytes, { level: bytes.length > 8_000_000 ? 3 : 6 }),
  crc32: (bytes) => crc32(bytes),
};
