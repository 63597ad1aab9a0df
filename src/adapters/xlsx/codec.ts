/** Packing and unpacking of one part; Node and the browser each bring their own. */
export interface Codec {
  /** Unpacks raw deflate data and gives up, by returning undefined, as soon as it is damaged or exceeds `size` bytes. */
  inflate(packed: Uint8Array, size: number): Uint8Array | undefined;
  crc32(bytes: Uint8Array): number;
  /** For a part of about so many bytes. */
  packer(expected: number): Packer;
}

/** Packs one part, given in pieces, and proves it by unpacking it again. */
export interface Packer {
  /** The piece may be used for something else afterwards. */
  add(piece: Uint8Array, isLast: boolean): void;
  /** After the last piece; undefined when what was packed does not unpack to what was given. */
  finish(): Packed | undefined;
}

export interface Packed {
  readonly method: 0 | 8;
  readonly data: Uint8Array;
  readonly size: number;
  readonly crc: number;
}
