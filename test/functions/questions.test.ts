import { FUNCTIONS } from '../../src/functions/index';
import { QUESTIONS } from '../../src/functions/questions';

const named = QUESTIONS.flatMap(({ forward, inverse }) => [...forward, ...inverse]);

describe('the list of questions', () => {
  it('names only functions that exist', () => {
    const known = new Set(FUNCTIONS.map(({ name }) => name));
    expect(named.filter((name) => !known.has(name))).toEqual([]);
  });
  it('leaves no function of the catalogue out', () => {
    const asked = new Set(named);
    expect(FUNCTIONS.map(({ name }) => name).filter((name) => !asked.has(name))).toEqual([]);
  });
});
