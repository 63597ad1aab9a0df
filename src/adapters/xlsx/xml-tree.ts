import { CLOSE, END, OPEN, XmlScanner } from './xml-scan';
import { refuse } from './refuse';
import { decodeText } from './xml-text';

/** An element of a small part with the offsets needed to splice it. */
export interface XmlElement {
  readonly local: string;
  readonly prefix: string;
  readonly uri: string;
  readonly parent: XmlElement | undefined;
  readonly start: number;
  /** Behind the '>' of the start tag. */
  readonly openEnd: number;
  /** Before the end tag; equal to openEnd for an element without one. */
  closeStart: number;
  end: number;
  readonly selfClosing: boolean;
  /** By written name. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
}

const LARGEST_TREE = 1_000_000;
const NO_ATTRIBUTES: ReadonlyMap<string, string> = new Map();

/** Reads a part, or the one element that lies in the given span of it. */
export function parseTree(bytes: Uint8Array, part: string, from = 0, to = bytes.length): XmlElement {
  const scanner = new XmlScanner(bytes, part, from, to);
  let root: XmlElement | undefined;
  let parent: XmlElement | undefined;
  let count = 0;
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token === OPEN) {
      if (++count > LARGEST_TREE) refuse('too-large', `${part} has more than ${LARGEST_TREE} elements.`);
      const written = scanner.attributes.all();
      const element: XmlElement = {
        local: scanner.local(),
        prefix: scanner.prefix(),
        uri: scanner.uri(),
        parent,
        start: scanner.start,
        openEnd: scanner.end,
        closeStart: scanner.end,
        end: scanner.end,
        selfClosing: scanner.selfClosing,
        attributes: written.length > 0 ? new Map(written) : NO_ATTRIBUTES,
        children: [],
      };
      parent?.children.push(element);
      root ??= element;
      if (!element.selfClosing) parent = element;
    } else if (token === CLOSE && parent) {
      parent.closeStart = scanner.start;
      parent.end = scanner.end;
      parent = parent.parent;
    }
  }
  return root!;
}

export const child = (element: XmlElement | undefined, local: string): XmlElement | undefined =>
  element?.children.find((c) => c.local === local);
export const childrenOf = (element: XmlElement | undefined, local: string): XmlElement[] =>
  element?.children.filter((c) => c.local === local) ?? [];

/** Every element below, in document order. */
export function* descendants(element: XmlElement): Generator<XmlElement> {
  for (const c of element.children) {
    yield c;
    yield* descendants(c);
  }
}

/** All text inside an element, of its children too. */
export function textOf(bytes: Uint8Array, element: XmlElement | undefined): string {
  if (!element || element.selfClosing) return '';
  let text = '';
  const scanner = new XmlScanner(bytes, '', element.start, element.end);
  for (let token = scanner.next(); token !== END; token = scanner.next())
    if (token !== OPEN && token !== CLOSE) text += scanner.textValue();
  return text;
}

/** The attribute whose local name this is, with any prefix: for r:id, whose prefix differs between writers. */
export function prefixed(element: XmlElement, local: string): string | undefined {
  for (const [name, value] of element.attributes) if (name.endsWith(`:${local}`)) return value;
  return undefined;
}

export const tagName = (element: Pick<XmlElement, 'prefix'>, local: string): string =>
  element.prefix === '' ? local : `${element.prefix}:${local}`;

export const onOff = (value: string | undefined, otherwise = false): boolean =>
  value === undefined ? otherwise : value === '1' || value === 'true' || value === 'on';

export const rawText = (bytes: Uint8Array, from: number, to: number): string => decodeText(bytes, from, to, true);
