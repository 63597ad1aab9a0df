import { allLists, type ListResult } from './list-statistics';

const sum = (results: readonly ListResult[], count: (result: ListResult) => number): number =>
  results.reduce((total, result) => total + count(result), 0);

describe('a family of channel lists as laboratories write them', () => {
  let results: readonly ListResult[];
  beforeAll(async () => {
    results = await allLists();
    if (process.env.SHOW_LISTS)
      process.stdout.write(
        `${results.map(({ name, fields, right, asked, missing, wrong }) => `${name}: ${right}/${fields} asked ${JSON.stringify(asked)} missing ${JSON.stringify(missing)} WRONG ${JSON.stringify(wrong)}`).join('\n')}\n`,
      );
  }, 60_000);

  it('has at least sixty lists', () => {
    expect(results.length).toBeGreaterThanOrEqual(60);
  });
  it('is never read wrong without a question', () => {
    expect(results.filter(({ wrong }) => wrong.length > 0).map(({ name, wrong }) => ({ name, wrong }))).toEqual([]);
  });
  it('is mapped right in most fields', () => {
    const plain = results.filter(({ name }) => !name.startsWith('trap'));
    expect(sum(plain, ({ right }) => right) / sum(plain, ({ fields }) => fields)).toBeGreaterThan(0.9);
  });
});
