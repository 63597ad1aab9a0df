import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import { CLOSE, END, OPEN, XmlScanner } from '../../../src/adapters/xlsx/xml-scan';
import { HostProblem } from '../../../src/workbook/port';

type Event = ['open', string, string, [string, string][]] | ['close', string] | ['text', string];

const scan = (xml: string): Event[] => {
  const scanner = new XmlScanner(new Uint8Array(Buffer.from(xml)), 'part');
  const events: Event[] = [];
  const opened: string[] = [];
  const text = (more: string): void => {
    const last = events.at(-1);
    if (last?.[0] === 'text') last[1] += more;
    else if (more !== '') events.push(['text', more]);
  };
  const name = (): string => (scanner.prefix() === '' ? scanner.local() : `${scanner.prefix()}:${scanner.local()}`);
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token === OPEN) {
      // The judge trims namespace names, which the recommendation does not ask for.
      events.push(['open', name(), scanner.uri().trim(), scanner.attributes.all()]);
      if (scanner.selfClosing) events.push(['close', name()]);
      else opened.push(name());
    } else if (token === CLOSE) events.push(['close', opened.pop()!]);
    else text(scanner.textValue());
  }
  return events;
};

/** The same events from saxes, a strict XML 1.0 parser by others. */
const judge = (xml: string): Event[] => {
  const parser = new SaxesParser({ xmlns: true });
  const events: Event[] = [];
  const text = (more: string): void => {
    const last = events.at(-1);
    if (last?.[0] === 'text') last[1] += more;
    else if (more !== '') events.push(['text', more]);
  };
  let depth = 0;
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    depth++;
    events.push(['open', tag.name, tag.uri, Object.values(tag.attributes).map((a) => [a.name, a.value])]);
  });
  parser.on('closetag', (tag) => {
    depth--;
    events.push(['close', tag.name]);
  });
  parser.on('text', (more) => depth > 0 && text(more));
  parser.on('cdata', text);
  parser.write(xml).close();
  return events;
};

const NAMES = ['c', 'row', 'x:c', 'f', 'sheetData', 'a.b-c', 'é'];
const escaped = fc.constantFrom('&lt;', '&gt;', '&amp;', '&quot;', '&apos;', '&#65;', '&#x1F600;', '&#10;', '😀');
const letters = fc.stringMatching(/^[ a-z0-9\n\r\t>"'éß漢]{0,8}$/);
const characters = fc.array(fc.oneof(letters, escaped), { maxLength: 4 }).map((pieces) => pieces.join(''));
const quoted = fc.oneof(
  characters.map((text) => `"${text.replaceAll('"', '')}"`),
  characters.map((text) => `'${text.replaceAll("'", '')}'`),
);
const space = fc.constantFrom(' ', '  ', '\n', '\t', '\r\n');
const attributes = fc
  .uniqueArray(fc.tuple(fc.constantFrom('r', 's', 't', 'xml:space', 'x:id', 'xmlns:y'), quoted, space), {
    selector: ([name]) => name,
    maxLength: 4,
  })
  .map((list) => list.map(([name, value, gap]) => `${gap}${name}=${name === 'xmlns:y' ? '"urn:y"' : value}`).join(''));
const between = fc.oneof(
  { weight: 4, arbitrary: characters.map((text) => text.replaceAll(']]>', '')) },
  fc.stringMatching(/^[ a-z<&\]>\r\n]{0,8}$/).map((text) => `<![CDATA[${text.replaceAll(']]>', '')}]]>`),
  fc.stringMatching(/^[ a-z<>&]{0,8}$/).map((text) => `<!--${text}-->`),
  fc.constantFrom('<?note a?>', '<?x <c>?>'),
);
const { element } = fc.letrec<{ element: string; inside: string }>((tie) => ({
  inside: fc
    .array(fc.oneof({ maxDepth: 4 }, between, tie('element')), { maxLength: 4 })
    .map((pieces) => pieces.join('')),
  element: fc.oneof(
    { maxDepth: 4 },
    fc.tuple(fc.constantFrom(...NAMES), attributes).map(([name, list]) => `<${name}${list}/>`),
    fc
      .tuple(fc.constantFrom(...NAMES), attributes, tie('inside'), fc.constantFrom('', ' '))
      .map(([name, list, inside, gap]) => `<${name}${list}${gap}>${inside}</${name}${gap}>`),
  ),
}));
const documents = fc
  .tuple(
    fc.constantFrom('', '<?xml version="1.0"?>\n', '<!-- head -->'),
    element,
    fc.constantFrom('', '\n', '<!--end-->'),
  )
  .map(([head, body, tail]) => `${head}<root xmlns="urn:d" xmlns:x="urn:x">${body}</root>${tail}`);

describe('the XML scanner', () => {
  it('tells the same names, namespaces, attributes and texts as an independent strict parser', () => {
    fc.assert(
      fc.property(documents, (xml) => {
        expect(scan(xml)).toEqual(judge(xml));
      }),
      { numRuns: 1500 },
    );
  });

  it('refuses, or reads as the strict parser does, a document with one character changed', () => {
    let same = 0;
    let refused = 0;
    fc.assert(
      fc.property(documents, fc.nat(), fc.constantFrom('<', '>', '/', '"', '&', ' ', 'x', ']', '-'), (xml, at, by) => {
        const signs = [...xml];
        signs[at % signs.length] = by;
        const broken = signs.join('');
        let expected: Event[];
        try {
          expected = judge(broken);
        } catch {
          try {
            scan(broken);
          } catch (error) {
            expect(error).toBeInstanceOf(HostProblem);
            refused++;
          }
          return;
        }
        expect(scan(broken)).toEqual(expected);
        same++;
      }),
      { numRuns: 1500 },
    );
    expect(same).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(50);
  });

  it.each([
    ['<a><b></a></b>', 'fits no start'],
    ['<a>', 'ends too early'],
    ['<a></a><b/>', 'second root'],
    ['<a/>text', 'outside the root'],
    ['<a b=1/>', 'without quotes'],
    ['<a b="1"c="2"/>', 'broken attribute'],
    ['<a b="<"/>', "'<' inside"],
    ['<a><!-- </a>', "'-->' is missing"],
    ['', 'ends too early'],
    ['<!DOCTYPE a><a/>', 'document type declaration'],
    [`${'<a>'.repeat(300)}${'</a>'.repeat(300)}`, 'levels deep'],
    [`<a b="${'x'.repeat(70_000)}"/>`, '64 kB'],
  ])('refuses %.40s', (xml, reason) => {
    expect(() => scan(xml)).toThrow(reason);
  });
});
