/** Packing and unpacking of one part; Node and the browser each bring their own. */
export interface Codec {
  /** Unpacks raw deflate data and gives up, by returning undefined, as soon as it is damaged or exceeds `size` bytes. */
  inflate(packed: Uint8Array, size: number): Uint8Array | undefined;
  deflate(bytes: Uint8Array): Uint8Array;
  crc32(bytes: Uint8Array): number;
}
