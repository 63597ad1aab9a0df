import { ATTRIBUTE_BYTES, XML_DEPTH } from './limits';
import { refuse } from './refuse';
import { XmlAttributes } from './xml-attributes';
import { decodeText, isSpace, sameAscii } from './xml-text';

export const END = 0;
export const OPEN = 1;
export const CLOSE = 2;
export const TEXT = 3;
export type Token = typeof END | typeof OPEN | typeof CLOSE | typeof TEXT;

const LT = 60;
const GT = 62;
const SLASH = 47;
const BANG = 33;
const QUESTION = 63;
const EQUALS = 61;

/** Walks over the bytes of an XML part without building anything; offsets allow the caller to cut and splice. */
export class XmlScanner {
  token: Token = END;
  /** Span of the token. For OPEN and CLOSE it runs from '<' to behind '>'. */
  start: number;
  end: number;
  nameStart = 0;
  localStart = 0;
  nameEnd = 0;
  /** An OPEN with this set has no CLOSE. */
  selfClosing = false;
  /** End of the text that `onlyChild` found. */
  childEnd = 0;
  /** Number of elements around this element or text. */
  level = 0;
  /** The text is character data between CDATA marks (span without the marks): nothing in it is an entity. */
  literal = false;
  /** Those of the last OPEN. */
  readonly attributes: XmlAttributes;
  private readonly open: Int32Array = new Int32Array(2 * XML_DEPTH);
  private depth = 0;
  private hadRoot = false;
  private readonly spaces: { level: number; prefix: string; uri: string }[] = [];
  private spacesEndNext = false;

  constructor(
    readonly bytes: Uint8Array,
    readonly part: string,
    from = 0,
    readonly to = bytes.length,
  ) {
    this.attributes = new XmlAttributes(bytes);
    this.start = this.end = from;
    if (from === 0 && bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) this.end = 3;
  }

  next(): Token {
    if (this.spacesEndNext) this.leaveSpaces();
    const { bytes, to } = this;
    for (;;) {
      const at = this.end;
      if (at >= to) {
        if (this.depth > 0 || !this.hadRoot) this.fail('it ends too early');
        return (this.token = END);
      }
      this.start = at;
      if (bytes[at] !== LT) {
        if (this.text()) return (this.token = TEXT);
        continue;
      }
      const second = at + 1 < to ? bytes[at + 1] : 0;
      if (second === SLASH) return this.close();
      if (second === QUESTION) this.end = this.behind('?>', at + 2);
      else if (second === BANG) {
        if (this.has('<!--', at)) this.end = this.behind('-->', at + 4);
        else if (this.has('<![CDATA[', at)) return this.characters();
        else refuse('unsupported', `${this.part} has a document type declaration; such files are not read.`);
      } else return this.openTag();
    }
  }

  /** Moves behind the element whose OPEN is the present token and returns where it ends. */
  skip(): number {
    if (this.selfClosing) return this.end;
    const { level } = this;
    while (this.next() !== CLOSE || this.level !== level);
    return this.end;
  }

  /**
   * When the element whose OPEN is the present token holds nothing but `<x>text</x>`, x being the given letter, moves
   * on to its CLOSE and returns true with `start` and `childEnd` around the text. A short cut for cells, which are many.
   */
  onlyChild(letter: number): boolean {
    const { bytes, end } = this;
    if (bytes[end] !== LT || bytes[end + 1] !== letter || bytes[end + 2] !== GT || this.spacesEndNext) return false;
    let at = end + 3;
    while (at < this.to && bytes[at] !== LT) at++;
    const length = this.nameEnd - this.nameStart;
    const stop = at + 7 + length;
    if (stop > this.to || bytes[at + 1] !== SLASH || bytes[at + 2] !== letter || bytes[at + 3] !== GT) return false;
    if (bytes[at + 4] !== LT || bytes[at + 5] !== SLASH || bytes[stop - 1] !== GT) return false;
    for (let n = 0; n < length; n++) if (bytes[at + 6 + n] !== bytes[this.nameStart + n]) return false;
    this.depth--;
    this.start = end + 3;
    this.childEnd = at;
    this.end = stop;
    this.token = CLOSE;
    return true;
  }

  local(): string {
    return decodeText(this.bytes, this.localStart, this.nameEnd, true);
  }

  is(local: string): boolean {
    return sameAscii(this.bytes, this.localStart, this.nameEnd, local);
  }

  prefix(): string {
    return this.nameStart === this.localStart ? '' : decodeText(this.bytes, this.nameStart, this.localStart - 1, true);
  }

  /** Namespace of the present OPEN, '' when its prefix is not declared. */
  uri(): string {
    return this.uriOf(this.prefix());
  }

  uriOf(prefix: string): string {
    for (let n = this.spaces.length - 1; n >= 0; n--) {
      const space = this.spaces[n]!;
      if (space.prefix === prefix) return space.uri;
    }
    return '';
  }

  textValue(): string {
    return decodeText(this.bytes, this.start, this.literal ? this.end - 3 : this.end, this.literal);
  }

  fail(what: string): never {
    return refuse('unsupported', `${this.part} is damaged near byte ${this.start}: ${what}.`);
  }

  /** False for the white space around the root. */
  private text(): boolean {
    const { bytes, to } = this;
    let at = this.start;
    if (this.depth > 0) {
      while (at < to && bytes[at] !== LT) at++;
      this.end = at;
      this.literal = false;
      this.level = this.depth;
      return true;
    }
    for (; at < to && bytes[at] !== LT; at++) if (!isSpace(bytes[at]!)) this.fail('text outside the root');
    this.end = at;
    return false;
  }

  private characters(): Token {
    if (this.depth === 0) this.fail('text outside the root');
    this.end = this.behind(']]>', this.start + 9);
    this.start += 9;
    this.literal = true;
    this.level = this.depth;
    return (this.token = TEXT);
  }

  private close(): Token {
    const { bytes, to } = this;
    const from = this.start + 2;
    if (--this.depth < 0) this.fail('an end without a start');
    const opened = this.open[2 * this.depth]!;
    const length = this.open[2 * this.depth + 1]! - opened;
    let at = from + length;
    if (at >= to) this.fail('it ends too early');
    for (let i = 0; i < length; i++) if (bytes[from + i] !== bytes[opened + i]) this.fail('an end that fits no start');
    while (at < to && isSpace(bytes[at]!)) at++;
    if (at >= to || bytes[at] !== GT) this.fail('an end that fits no start');
    this.nameStart = from;
    this.nameEnd = from + length;
    this.localStart = this.behindColon(from, from + length);
    this.end = at + 1;
    this.level = this.depth;
    this.selfClosing = false;
    if (this.spaces.length > 0 && this.spaces[this.spaces.length - 1]!.level === this.level) this.spacesEndNext = true;
    return (this.token = CLOSE);
  }

  private openTag(): Token {
    const { bytes, to } = this;
    let at = this.start + 1;
    this.nameStart = this.localStart = at;
    for (; at < to && isName(bytes[at]!); at++) if (bytes[at] === 58) this.localStart = at + 1;
    this.nameEnd = at;
    if (at === this.localStart || !startsName(bytes[this.nameStart]!)) this.fail('a tag without a name');
    this.attributes.clear();
    let declares = false;
    for (;;) {
      const gap = at;
      while (at < to && isSpace(bytes[at]!)) at++;
      if (at >= to) this.fail('it ends inside a tag');
      const byte = bytes[at]!;
      if (byte === GT || byte === SLASH) break;
      if (at === gap || !startsName(byte)) this.fail('a broken attribute');
      if (byte === 120 && this.has('xmlns', at)) declares = true;
      at = this.readAttribute(at);
    }
    this.selfClosing = bytes[at] === SLASH;
    if (this.selfClosing && (++at >= to || bytes[at] !== GT)) this.fail('a broken tag');
    this.end = at + 1;
    if (this.depth === 0 && this.hadRoot) this.fail('a second root');
    this.hadRoot = true;
    this.level = this.depth;
    if (declares) this.enterSpaces();
    if (this.selfClosing) this.spacesEndNext = declares;
    else {
      if (this.depth >= XML_DEPTH) refuse('too-large', `${this.part} is nested more than ${XML_DEPTH} levels deep.`);
      this.open[2 * this.depth] = this.nameStart;
      this.open[2 * this.depth + 1] = this.nameEnd;
      this.depth++;
    }
    return (this.token = OPEN);
  }

  private readAttribute(from: number): number {
    const { bytes, to } = this;
    let at = from;
    while (at < to && isName(bytes[at]!)) at++;
    const nameEnd = at;
    while (at < to && isSpace(bytes[at]!)) at++;
    if (at >= to || bytes[at] !== EQUALS) this.fail('an attribute without a value');
    at++;
    while (at < to && isSpace(bytes[at]!)) at++;
    const quote = at < to ? bytes[at]! : 0;
    if (quote !== 34 && quote !== 39) this.fail('an attribute without quotes');
    const value = ++at;
    while (at < to && bytes[at] !== quote) {
      if (bytes[at] === LT) this.fail("a '<' inside an attribute");
      at++;
    }
    if (at >= to) this.fail('it ends inside an attribute');
    if (at - value > ATTRIBUTE_BYTES) refuse('too-large', `${this.part} has an attribute of more than 64 kB.`);
    this.attributes.add(from, nameEnd, value, at);
    return at + 1;
  }

  private enterSpaces(): void {
    for (const [name, uri] of this.attributes.all())
      if (name === 'xmlns' || name.startsWith('xmlns:'))
        this.spaces.push({ level: this.level, prefix: name.slice(6), uri });
  }

  private leaveSpaces(): void {
    while (this.spaces.length > 0 && this.spaces[this.spaces.length - 1]!.level >= this.level) this.spaces.pop();
    this.spacesEndNext = false;
  }

  private behindColon(from: number, to: number): number {
    for (let at = from; at < to; at++) if (this.bytes[at] === 58) return at + 1;
    return from;
  }

  private has(text: string, at: number): boolean {
    return at + text.length <= this.to && sameAscii(this.bytes, at, at + text.length, text);
  }

  private behind(mark: string, from: number): number {
    const first = mark.charCodeAt(0);
    for (let at = this.bytes.indexOf(first, from); at >= 0; at = this.bytes.indexOf(first, at + 1))
      if (this.has(mark, at)) return at + mark.length;
    return this.fail(`'${mark}' is missing`);
  }
}

/** Name characters as far as they matter here: everything that does not end a name. */
const NAME = new Uint8Array(256).fill(1);
for (const byte of [...' \t\r\n/>=<"\'&'].map((c) => c.charCodeAt(0))) NAME[byte] = 0;
const isName = (byte: number): boolean => NAME[byte] === 1;
const startsName = (byte: number): boolean =>
  (byte >= 97 && byte <= 122) || (byte >= 65 && byte <= 90) || byte === 95 || byte === 58 || byte >= 128;
