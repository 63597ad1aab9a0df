import { utf8 } from './xml-text';

/** Up to here copying byte by byte is faster than making a view. */
const SHORT = 48;

/** Bytes that grow at the end. */
export class ByteSink {
  private bytes: Uint8Array;
  private length = 0;

  constructor(expected: number) {
    this.bytes = new Uint8Array(expected);
  }

  copy(source: Uint8Array, from: number, to: number): void {
    if (to <= from) return;
    this.reserve(to - from);
    const { bytes } = this;
    if (to - from > SHORT) bytes.set(source.subarray(from, to), this.length);
    else for (let at = from, n = this.length; at < to; at++) bytes[n++] = source[at]!;
    this.length += to - from;
  }

  /** A whole number from 0 on. */
  number(n: number): void {
    this.reserve(16);
    let digits = 1;
    for (let power = 10; power <= n; power *= 10) digits++;
    let rest = n;
    for (let at = this.length + digits - 1; at >= this.length; at--) {
      this.bytes[at] = 48 + (rest % 10);
      rest = Math.floor(rest / 10);
    }
    this.length += digits;
  }

  text(text: string): void {
    this.reserve(text.length);
    for (let n = 0; n < text.length; n++) {
      const code = text.charCodeAt(n);
      if (code >= 128) {
        const rest = utf8(text.slice(n));
        return this.copy(rest, 0, rest.length);
      }
      this.bytes[this.length++] = code;
    }
  }

  get size(): number {
    return this.length;
  }

  /** Hands out what there is, good until the next byte comes, and starts anew. */
  take(): Uint8Array {
    const taken = this.bytes.subarray(0, this.length);
    this.length = 0;
    return taken;
  }

  private reserve(more: number): void {
    if (this.length + more <= this.bytes.length) return;
    const larger = new Uint8Array(Math.ceil((this.length + more) * 1.3) + 1024);
    larger.set(this.bytes.subarray(0, this.length));
    this.bytes = larger;
  }
}
