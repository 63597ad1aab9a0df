import { SaxesParser } from 'saxes';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

export const parse = (xml: string): Element => {
  const document: Element = { name: '#document', attributes: {}, children: [], text: '' };
  const open: Element[] = [document];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('opentag', (tag) => {
    const attributes = Object.fromEntries(Object.values(tag.attributes).map((a) => [a.local, a.value]));
    const element: Element = { name: tag.local, attributes, children: [], text: '' };
    open[open.length - 1]?.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    const element = open[open.length - 1];
    if (element) element.text += text;
  });
  parser.on('closetag', () => void open.pop());
  parser.write(xml).close();
  return document.children[0] as Element;
};

export function* within(element: Element): Generator<Element> {
  yield element;
  for (const child of element.children) yield* within(child);
}
export const find = (element: Element | undefined, ...path: string[]): Element | undefined =>
  path.reduce<Element | undefined>((at, name) => at?.children.find((child) => child.name === name), element);
export const valueOf = (element: Element | undefined): string =>
  element?.attributes.DefaultValue ?? element?.text.trim() ?? '';
export const overridesOf = (element: Element | undefined): Element[] =>
  element?.children.filter(({ name }) => name === 'Override') ?? [];
/** In the default language and in every other. */
export const valuesOf = (element: Element | undefined): string[] => [
  valueOf(element),
  ...overridesOf(element).map(({ attributes }) => attributes.Value ?? ''),
];
export const LOCALE = /^[a-z]{2,3}-[A-Z]{2}$/;
