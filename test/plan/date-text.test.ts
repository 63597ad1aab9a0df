import { readDateText } from '../../src/plan/date-text';
import { dateText } from '../../src/plan/json-date';

const read = (text: string): string | undefined => {
  const date = readDateText(text);
  return date.ok ? dateText(date.serial) : undefined;
};

describe('a date as people write it', () => {
  it.each([
    ['2026-11-30', '2026-11-30'],
    ['2026/3/5', '2026-03-05'],
    ['30.11.2026', '2026-11-30'],
    ['3.4.2026', '2026-04-03'],
    ['30/11/2026', '2026-11-30'],
    ['11/30/2026', '2026-11-30'],
    ['5/5/2026', '2026-05-05'],
    ['30 November 2026', '2026-11-30'],
    ['Nov 30, 2026', '2026-11-30'],
    ['15-Mar-2028', '2028-03-15'],
    ['3. Dezember 2026', '2026-12-03'],
    ['1 février 2027', '2027-02-01'],
    ['30 de junio de 2027', '2027-06-30'],
    ['7 ottobre 2027', '2027-10-07'],
  ])('%s is %s', (text, iso) => {
    expect(read(text)).toBe(iso);
  });

  it('is asked about where day and month can be exchanged', () => {
    expect(readDateText('03/04/2027')).toEqual({
      ok: false,
      problem: { code: 'ambiguous', given: '03/04/2027', readings: ['2027-04-03', '2027-03-04'] },
    });
  });
  it.each(['31.02.2027', '13/13/2027', '2027', '3-4', 'soon', '12 Foo 2027', ''])('“%s” is none', (text) => {
    expect(read(text)).toBeUndefined();
  });
});
