import type { Example } from '../../src/functions/define';
import { exampleFormula, signatureOf } from '../../src/functions/describe';
import { functionByName, FUNCTIONS, NAMESPACE } from '../../src/functions/index';
import { END, functionReference, START, withReference } from '../../src/generate/reference';

const reference = functionReference(FUNCTIONS, NAMESPACE);

describe('the function reference', () => {
  it('holds every function with its arguments, equation and source', () => {
    for (const fn of FUNCTIONS) {
      expect(reference).toContain(`<code>${NAMESPACE}.${fn.name}(${signatureOf(fn)})</code>`);
      for (const arg of Object.keys(fn.args)) expect(reference).toContain(`| <code>${arg}</code> |`);
    }
    expect(reference.match(/<br>Source: .+\.$/gm)).toHaveLength(FUNCTIONS.length);
    expect(reference.match(/<br>Valid: .+<br>/gm)).toHaveLength(FUNCTIONS.length);
  });

  it('keeps every table row at five columns, whatever signs a text holds', () => {
    for (const line of reference.split('\n').filter((l) => l.startsWith('|'))) expect(line.split('|')).toHaveLength(7);
  });

  it('is the same when made again', () => {
    expect(functionReference(FUNCTIONS, NAMESPACE)).toBe(reference);
  });

  it('goes between its marks and leaves the rest of the page alone', () => {
    const page = `# Title\n\n${START}\nold\n${END}\n\nAfter.\n`;
    const made = withReference(page, 'new');
    expect(made).toBe(`# Title\n\n${START}\n\nnew\n\n${END}\n\nAfter.\n`);
    expect(withReference(made!, 'new')).toBe(made);
  });

  it.each(['# No marks', `${END}\n${START}`, START])('refuses a page without both marks in order', (page) => {
    expect(withReference(page, 'new')).toBeUndefined();
  });
});

describe('an example written as a formula', () => {
  const example = (args: Example['args']): Example => ({ args, result: 0, from: 'nowhere' });

  it('quotes text, leaves blanks out and spells a range as an array constant', () => {
    expect(
      exampleFormula(
        'CHAN.X',
        example([
          null,
          1.5,
          'say "5"',
          true,
          [
            [1, 'a'],
            [null, 2],
          ],
          null,
        ]),
      ),
    ).toBe('CHAN.X(,1.5,"say ""5""",TRUE,{1,"a";"",2},)');
  });

  it('names a function that the catalogue has', () => {
    for (const fn of FUNCTIONS)
      for (const given of fn.examples) {
        const name = /^CHAN\.([A-Z.]+)\(/.exec(exampleFormula(`${NAMESPACE}.${fn.name}`, given))?.[1];
        expect(functionByName(name ?? '')).toBe(fn);
      }
  });
});
