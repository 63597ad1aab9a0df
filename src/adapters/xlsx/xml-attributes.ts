import { decodeText, resolveEntities, sameAscii } from './xml-text';

/** The attributes of one start tag as offsets; texts are made only of those that are asked for. */
export class XmlAttributes {
  /** Four each: name start, name end, value start, value end. */
  private spans = new Int32Array(64);
  private count = 0;

  constructor(private readonly bytes: Uint8Array) {}

  clear(): void {
    this.count = 0;
  }

  add(nameStart: number, nameEnd: number, valueStart: number, valueEnd: number): void {
    const n = 4 * this.count++;
    if (n === this.spans.length) {
      const larger = new Int32Array(2 * n);
      larger.set(this.spans);
      this.spans = larger;
    }
    const { spans } = this;
    spans[n] = nameStart;
    spans[n + 1] = nameEnd;
    spans[n + 2] = valueStart;
    spans[n + 3] = valueEnd;
  }

  /** Index of the attribute with this written name, or -1. */
  find(name: string): number {
    const { spans, count } = this;
    for (let n = 0; n < count; n++) if (sameAscii(this.bytes, spans[4 * n]!, spans[4 * n + 1]!, name)) return n;
    return -1;
  }

  get(name: string): string | undefined {
    const n = this.find(name);
    return n < 0 ? undefined : this.value(n);
  }

  value(n: number): string {
    // White space as written counts as blanks; written as an entity it stays what it is.
    const written = decodeText(this.bytes, this.valueStart(n), this.valueEnd(n), true);
    return resolveEntities(written.replace(/[\t\n]/g, ' '));
  }

  valueStart(n: number): number {
    return this.spans[4 * n + 2]!;
  }

  valueEnd(n: number): number {
    return this.spans[4 * n + 3]!;
  }

  /** Name and value of every attribute, in order. */
  all(): [string, string][] {
    return Array.from({ length: this.count }, (_, n) => [
      decodeText(this.bytes, this.spans[4 * n]!, this.spans[4 * n + 1]!, true),
      this.value(n),
    ]);
  }
}
