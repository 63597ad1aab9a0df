import { escapeAttribute, utf8 } from './xml-text';
import { tagName, type XmlElement } from './xml-tree';

interface Edit {
  readonly at: number;
  readonly until: number;
  readonly insert: Uint8Array;
}

/** Collects cuts and insertions into one part and makes them all at once; everything between them stays byte for byte. */
export class Splice {
  private readonly edits: Edit[] = [];
  private readonly filled = new Map<XmlElement, string>();

  constructor(readonly bytes: Uint8Array) {}

  insert(at: number, xml: string): void {
    this.edits.push({ at, until: at, insert: utf8(xml) });
  }

  replace(at: number, until: number, xml: string | Uint8Array): void {
    this.edits.push({ at, until, insert: typeof xml === 'string' ? utf8(xml) : xml });
  }

  remove(element: Pick<XmlElement, 'start' | 'end'>): void {
    this.replace(element.start, element.end, '');
  }

  /** Adds children behind the last one; an element without end tag gets one. */
  append(element: XmlElement, xml: string): void {
    if (element.selfClosing) this.filled.set(element, (this.filled.get(element) ?? '') + xml);
    else this.insert(element.closeStart, xml);
  }

  setAttribute(element: XmlElement, name: string, value: string | undefined): void {
    const span = attributeSpan(this.bytes, element, name);
    const text = value === undefined ? '' : ` ${name}="${escapeAttribute(value)}"`;
    if (span) this.replace(span[0], span[1], text);
    else if (text) this.insert(element.start + 1 + tagName(element, element.local).length, text);
  }

  get isEmpty(): boolean {
    return this.edits.length === 0 && this.filled.size === 0;
  }

  isWithin(from: number, to: number): boolean {
    return this.edits.every(({ at, until }) => at >= from && until <= to);
  }

  /** All edits made; of a part of the bytes when they all lie in it. */
  apply(from = 0, to = this.bytes.length): Uint8Array {
    for (const [element, xml] of this.filled) {
      let slash = element.openEnd - 1;
      while (this.bytes[slash] !== 47) slash--;
      this.replace(slash, element.openEnd, `>${xml}</${tagName(element, element.local)}>`);
    }
    this.filled.clear();
    if (this.edits.length === 0)
      return from === 0 && to === this.bytes.length ? this.bytes : this.bytes.subarray(from, to);
    return applyEdits(this.bytes, this.edits, from, to);
  }
}

function applyEdits(bytes: Uint8Array, edits: readonly Edit[], first: number, last: number): Uint8Array {
  const sorted = edits.map((edit, n) => ({ edit, n }));
  // At one place insertions come before a cut, each in the order in which it was asked for.
  sorted.sort((a, b) => a.edit.at - b.edit.at || a.edit.until - b.edit.until || a.n - b.n);
  const length = edits.reduce((sum, edit) => sum + edit.insert.length - (edit.until - edit.at), last - first);
  const out = new Uint8Array(length);
  let from = first;
  let to = 0;
  for (const { edit } of sorted) {
    if (edit.at < from || edit.until > last) throw new Error('two edits of one part overlap, or one lies outside');
    out.set(bytes.subarray(from, edit.at), to);
    to += edit.at - from;
    out.set(edit.insert, to);
    to += edit.insert.length;
    from = edit.until;
  }
  out.set(bytes.subarray(from, last), to);
  return out;
}

/** The attribute with the white space before it. */
function attributeSpan(bytes: Uint8Array, element: XmlElement, name: string): [number, number] | undefined {
  const tag = new TextDecoder('latin1').decode(bytes.subarray(element.start, element.openEnd));
  const found = new RegExp(`\\s+${name}\\s*=\\s*("[^"]*"|'[^']*')`).exec(tag);
  return found ? [element.start + found.index, element.start + found.index + found[0].length] : undefined;
}
