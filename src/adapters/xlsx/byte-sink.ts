import { utf8 } from './xml-text';

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
    this.bytes.set(source.subarray(from, to), this.length);
    this.length += to - from;
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

  finish(): Uint8Array {
    return this.bytes.subarray(0, this.length);
  }

  private reserve(more: number): void {
    if (this.length + more <= this.bytes.length) return;
    const larger = new Uint8Array(Math.ceil((this.length + more) * 1.3) + 1024);
    larger.set(this.bytes.subarray(0, this.length));
    this.bytes = larger;
  }
}
