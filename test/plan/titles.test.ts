import { FIELDS, TABLES } from '../../src/plan/fields';
import { fieldTitle, TITLES } from '../../src/plan/words/titles';

describe.each(['de', 'fr'] as const)('field titles in %s', (language) => {
  it('are there for every field and for nothing else', () => {
    for (const table of TABLES) {
      const keys = FIELDS.filter((field) => field.table === table).map(({ key }) => key);
      expect(Object.keys(TITLES[language][table]).sort()).toEqual([...keys].sort());
    }
  });

  it('tell two fields of one table apart', () => {
    for (const table of TABLES) {
      const titles = FIELDS.filter((field) => field.table === table).map(({ key }) => fieldTitle(table, key, language));
      expect(new Set(titles).size).toBe(titles.length);
    }
  });
});
