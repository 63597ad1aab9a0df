import { unseenTallies, type Tally } from './unseen-lists';

const shown = ({ name, fields, values }: Tally): string =>
  `${name}: ${fields.right} fields right, asked ${fields.asked.join(', ')}, missing ${fields.missing.join(', ')}, WRONG ${fields.wrong.join(', ')}
  ${values.right} cells right, asked ${values.asked.join(', ')}, WRONG ${values.wrong.join(', ')}, untold ${values.untold.join(', ')}`;

describe('lists that were written before the words were looked at', () => {
  let all: readonly Tally[];
  beforeAll(async () => {
    all = await unseenTallies();
    if (process.env.SHOW_LISTS) process.stdout.write(`${all.map(shown).join('\n')}\n`);
  }, 60_000);

  it('are never mapped wrong without a question', () => {
    expect(all.flatMap(({ name, fields }) => fields.wrong.map((wrong) => `${name}: ${wrong}`))).toEqual([]);
  });
  it('have no cell read otherwise than meant without a question', () => {
    expect(all.flatMap(({ name, values }) => values.wrong.map((wrong) => `${name}: ${wrong}`))).toEqual([]);
  });
  it('have no footnote mark or ditto read without a word', () => {
    expect(all.flatMap(({ name, values }) => values.untold.map((untold) => `${name}: ${untold}`))).toEqual([]);
  });
  it('are mapped right in most fields', () => {
    const [right, asked, missing] = all.reduce(
      ([a, b, c], { fields }) => [a + fields.right, b + fields.asked.length, c + fields.missing.length],
      [0, 0, 0],
    );
    expect(all.length).toBeGreaterThanOrEqual(60);
    expect(right / (right + asked + missing)).toBeGreaterThan(0.93);
  });
});
