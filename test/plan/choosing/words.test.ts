import { LANGUAGES } from '../../../src/core/language';
import { answerSentence } from '../../../src/plan/choosing/relax-answer-words';
import { KNOBS } from '../../../src/plan/choosing/relax-knobs';
import { figure, roundedAway } from '../../../src/plan/choosing/relax-numbers';
import { conflictSentence, relaxationSentence } from '../../../src/plan/choosing/relax-words';
import { waysOut } from '../../../src/plan/choosing/relax';
import { asked, caseOf, EVERYTHING, g, LIMITS, STOCK } from './stock';

const ALL = [EVERYTHING, asked(caseOf('C3')), asked(caseOf('C6')), caseOf('C2'), caseOf('C11')].map((row) =>
  waysOut(row, STOCK, LIMITS)!,
);
const sentences = (language: (typeof LANGUAGES)[number]) =>
  ALL.flatMap((ways) => [
    ...ways.conflicts.map((one) => conflictSentence(one, language)),
    ...ways.relaxations.map((one) => relaxationSentence(one, language)),
    ...ways.answers.map((one) => answerSentence(one, language)),
  ]);

describe('what is said where nothing fits', () => {
  it.each(LANGUAGES)('begins with a number and holds nothing empty (%s)', (language) => {
    for (const sentence of sentences(language)) {
      expect(sentence).toMatch(/^[+−±]?\d/);
      expect(sentence).toMatch(/\.$/);
      expect(sentence).not.toMatch(/undefined|NaN|Infinity|\[object/);
      expect(sentence).not.toMatch(/\bsafe\b|\bsicher\b|sans danger/i);
    }
  });

  it('has the same numbers in every language, with the decimal mark of each', () => {
    const numbers = (text: string) => text.match(/\d+([.,]\d+)?/g)?.map((n) => n.replace(',', '.'));
    const english = sentences('en').map(numbers);
    for (const language of ['de', 'fr'] as const) {
      const others = sentences(language);
      expect(others.map(numbers)).toEqual(english);
      for (const other of others) expect(other).not.toMatch(/\d\.\d/);
    }
  });

  it('leaves the names of the lists as they are', () => {
    const ways = waysOut(asked(caseOf('C3')), { ...STOCK, mounts: STOCK.mounts.map((m) => ({ ...m, name: '0.5 mm glue' })) }, LIMITS)!; // prettier-ignore
    expect(relaxationSentence(ways.relaxations[0]!, 'de')).toContain('0.5 mm glue');
  });

  it('tells of a laser with its caution', () => {
    const told = answerSentence(ALL[2]!.answers.find(({ kind }) => kind === 'without contact')!);
    expect(told).toContain('the site’s rules come first');
  });
});

describe('a figure that helps', () => {
  it('is rounded to the side that helps as well', () => {
    expect(figure('lowest level', roundedAway('lowest level', g(0.0008), g(0.0038651)))).toBe('3870 µg');
    expect(figure('highest level', roundedAway('highest level', g(30), g(3.3456)))).toBe('3.34 g');
    expect(figure('temperature high', roundedAway('temperature high', 135, 120.94))).toBe('120.9 °C');
    expect(figure('temperature low', roundedAway('temperature low', -40, -19.3))).toBe('−19.3 °C');
  });

  it('keeps more digits where the change is small', () => {
    expect(figure('band high', roundedAway('band high', 2000, 1993.71))).toBe('1993.7 Hz');
  });

  it.each(KNOBS)('has a unit or is a bare ratio: %s', (knob) => {
    expect(figure(knob, 1)).toMatch(knob === 'mass ratio limit' ? /^1$/ : / \S+$/);
  });
});
