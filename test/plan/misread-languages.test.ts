import { FIELDS } from '../../src/plan/fields';
import { DEFAULT_LIMITS } from '../../src/plan/limits';
import { describeMisread } from '../../src/plan/misread';
import { readCell } from '../../src/plan/table-cell';
import { reasonWords } from '../../src/plan/words/limit-origins';

/** Words that only the English sentences have. */
const ENGLISH = /\b(?:a|an|one|of|number|name|read|expected|which|above|least|separated|several|pairs|row|date|as)\b/;
const UNITS_AND_CHOICES = /(?:eines von|un parmi) .*/;

const told = (field: (typeof FIELDS)[number], language: 'en' | 'de' | 'fr'): string => {
  const reading = readCell(field, true, { column: 0 });
  if (reading.kind !== 'refused') throw new Error(`${field.key} takes TRUE`);
  const place = { kind: 'cell', table: field.table, row: 7, heading: 'X' } as const;
  return describeMisread({ place, read: reading.read, expected: reading.expected }, language);
};

describe('cells that could not be read', () => {
  it.each(['de', 'fr'] as const)('are told wholly in the language of the reader (%s)', (language) => {
    for (const field of FIELDS) {
      expect(told(field, 'en')).toMatch(ENGLISH);
      const text = told(field, language).replace(UNITS_AND_CHOICES, '');
      expect([field.key, language === 'fr' ? text.replace(/\b(?:a|date)\b/g, '') : text]).not.toEqual([field.key, expect.stringMatching(ENGLISH)]); // prettier-ignore
    }
  });

  it('name the nearest word, and both meanings of a mark with the decimal mark of the language', () => {
    const place = { kind: 'cell', table: 'channels', row: 29, heading: 'Band' } as const;
    const problem = { code: 'ambiguous', given: '1,250', readings: ['1.25 Hz', '1250 Hz'] } as const;
    expect(describeMisread({ place, read: '1,250', expected: 'a number in Hz, above 0', problem }, 'de')).toBe(
      'Kanäle, Zeile 29, Band: gelesen "1,250", das kann 1,25 Hz oder 1250 Hz heißen, erwartet eine Zahl in Hz, größer als 0.',
    );
    expect(describeMisread({ place, read: 'x', expected: 'a name from sensors (did you mean "y"?)' }, 'fr')).toBe(
      'voies, ligne 29, Band: lu "x", attendu un nom de la liste des capteurs (peut-être « y » ?).',
    );
  });

  it('say of serial numbers and types which row has them already, and which was meant', () => {
    const place = { kind: 'cell', table: 'sensors', row: 9, heading: 'S/N' } as const;
    const inGerman = (expected: string) => describeMisread({ place, read: 'S2', expected }, 'de').split('erwartet ')[1];
    expect(inGerman('a serial number that no row above has (row 3, Ce-100)')).toBe('eine Seriennummer, die keine Zeile darüber hat (Zeile 3, Ce-100).'); // prettier-ignore
    expect(inGerman('a name that no row above has; the first row is used')).toBe('ein Name, den keine Zeile darüber hat; die erste Zeile wird verwendet.'); // prettier-ignore
    expect(inGerman('a serial number from sensors (did you mean "S10"?)')).toBe('eine Seriennummer der Aufnehmerliste (gemeint vielleicht „S10“?).'); // prettier-ignore
    expect(inGerman('7 gram as in row 8, the first of this type, which is used')).toBe('7 gram wie in Zeile 8, der ersten dieses Typs, die verwendet wird.'); // prettier-ignore
  });

  it('and the grounds of every default limit have German and French words', () => {
    const { signalToNoise, headroom, massRatio, thermalTolerance, spanTolerance } = DEFAULT_LIMITS;
    for (const { reason } of [signalToNoise, headroom, ...Object.values(massRatio), thermalTolerance, spanTolerance])
      expect([reason, reasonWords(reason, 'de'), reasonWords(reason, 'fr')].filter((text, i, all) => all.indexOf(text) === i)).toHaveLength(3); // prettier-ignore
  });
});
