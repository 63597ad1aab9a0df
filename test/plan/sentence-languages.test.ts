import { LANGUAGES } from '../../src/core/language';
import type { Finding } from '../../src/plan/finding';
import { DEFAULT_ORIGIN } from '../../src/plan/limits';
import { missingField } from '../../src/plan/missing';
import { reasonText, sentenceOf } from '../../src/plan/sentence';

/** One of each kind at least; a new kind without a sample does not compile. */
const SAMPLES: { readonly [C in Finding['check']]: readonly Extract<Finding, { check: C }>[] } = {
  'signal to noise': [
    { check: 'signal to noise', verdict: 'FAIL', number: 5.4, limit: 20, origin: DEFAULT_ORIGIN, noise: 0.021, noiseAllowed: 0.0039, cause: 'sensor' }, // prettier-ignore
    { check: 'signal to noise', verdict: 'WARN', number: 13, isBound: true, limit: 20, noiseAllowed: 0.0039, cause: 'input' }, // prettier-ignore
  ],
  headroom: [
    { check: 'headroom', verdict: 'FAIL', number: -2.28, limit: 3.5, origin: 'sheet Limits', ceiling: 490.3, peakAllowed: 327.7, causes: ['full scale', 'bias swing'] }, // prettier-ignore
    { check: 'headroom', verdict: 'WARN', number: 1.5, isBound: true, limit: 3.5, ceiling: 490.3, causes: ['input range'] }, // prettier-ignore
    { check: 'headroom', verdict: 'WARN', number: 1.5, limit: 3.5, ceiling: 490.3, causes: ['amplifier output'] },
  ],
  'no swing': [{ check: 'no swing', verdict: 'FAIL' }],
  'input mode': [{ check: 'input mode', verdict: 'FAIL', output: 'charge', mode: 'IEPE' }],
  'mass ratio': [
    { check: 'mass ratio', verdict: 'FAIL', number: 0.2707, limit: 0.1, origin: `${DEFAULT_ORIGIN}; no purpose given, survey`, allowed: 0.001269 }, // prettier-ignore
    { check: 'mass ratio', verdict: 'FAIL', number: 1.66, isBound: true, limit: 0.1, allowed: -0.001 },
  ],
  'temperature limit': [
    {
      check: 'temperature limit',
      verdict: 'FAIL',
      part: 'sensor',
      name: 'Qz-10',
      end: 'high',
      number: 135,
      limit: 121,
    },
    { check: 'temperature limit', verdict: 'FAIL', part: 'mount', end: 'low', number: -60, limit: -40 },
    { check: 'temperature limit', verdict: 'FAIL', part: 'cable', end: 'high', number: 135, limit: 90 },
  ],
  'thermal deviation': [
    { check: 'thermal deviation', verdict: 'WARN', low: -0.0139, high: 0.0652, limit: 0.05, halfBand: 0.0385, origin: 'this row' }, // prettier-ignore
    { check: 'thermal deviation', verdict: 'FAIL', low: -0.0139, high: 0.127, limit: 0.05, halfBand: 0.0665 },
  ],
  'deviation curve': [{ check: 'deviation curve', verdict: 'INCOMPLETE', number: 135, from: -54, to: 121 }],
  'span low': (['sensor', 'charge amplifier', 'AC coupling'] as const).map((cause) => ({ check: 'span low', verdict: 'FAIL', number: 1.609, limit: 0.5, tolerance: 0.05, origin: DEFAULT_ORIGIN, cause })), // prettier-ignore
  'span high': (['response', 'analyser', 'cable drive', 'data sheet'] as const).map((cause) => ({ check: 'span high', verdict: 'FAIL', number: 805, limit: 1200, tolerance: 0.05, cause, sampleRateNeeded: cause === 'analyser' ? 3072 : undefined })), // prettier-ignore
  'empty span': [{ check: 'empty span', verdict: 'FAIL', tolerance: 0.05, origin: DEFAULT_ORIGIN }],
  reversed: [{ check: 'reversed', verdict: 'INCOMPLETE', low: missingField('channels', 'bandLow'), high: missingField('channels', 'bandHigh') }], // prettier-ignore
  'noise at 0 Hz': [{ check: 'noise at 0 Hz', verdict: 'INCOMPLETE' }],
  missing: [
    { check: 'missing', verdict: 'INCOMPLETE', fields: [missingField('channels', 'sensor'), missingField('sensors', 'mass')], named: { sensor: 'Xy 7' } }, // prettier-ignore
  ],
  'reference sensitivity': [{ check: 'reference sensitivity', verdict: 'PASS' }],
  'not known': [{ check: 'not known', verdict: 'INCOMPLETE', what: ['A 5'] }],
  explained: [{ check: 'explained', verdict: 'FAIL', text: '135 °C, upper limit of the mount 40 °C' }],
  unexplained: (['level', 'mass', 'thermal', 'frequency'] as const).map((headline) => ({ check: 'unexplained', verdict: 'FAIL', headline })), // prettier-ignore
  'holding force': [{ check: 'holding force', verdict: 'WARN', number: 3.57, limit: 2.5, origin: 'a third of what Thin glue holds; common practice, no source' }], // prettier-ignore
  'added masses': [
    { check: 'added masses', verdict: 'FAIL', place: 'P2', number: 0.228, limit: 0.02, total: 0.0049, localMass: 0.0207, housings: 2 }, // prettier-ignore
    { check: 'added masses', verdict: 'INCOMPLETE', place: 'P2', limit: 0.1, housings: 3 },
  ],
  'control count': [{ check: 'control count', verdict: 'WARN', group: 'Run 4', number: 1 }],
  'control verdict': [{ check: 'control verdict', verdict: 'FAIL', channel: 'S001' }],
  'same channel': [{ check: 'same channel', verdict: 'FAIL', channel: 'W3', number: 2 }],
  'same direction': [
    { check: 'same direction', verdict: 'WARN', point: '12', direction: '+X', channels: ['A1', 'A2'] },
  ],
  'other point': [{ check: 'other point', verdict: 'WARN', channel: 'W3', point: '1', direction: '12X+' }],
  'local axes': (['unreadable', 'left-handed', 'not at right angles'] as const).map((problem) => ({ check: 'local axes', verdict: 'FAIL', channel: 'W3', text: '1 0 0; 0 1 0; 0 0 -1', problem })), // prettier-ignore
  'housing axes': (['twice', 'missing', 'no direction'] as const).map((problem) => ({ check: 'housing axes', verdict: 'WARN', sensor: 'Ce-100 triax', point: '12', axes: 3, number: 2, housings: 1, directions: ['X', 'Y'], problem })), // prettier-ignore
  handedness: (['left-handed', 'not noted', 'not at right angles'] as const).map((problem) => ({ check: 'handedness', verdict: 'FAIL', sensor: 'Ce-100 triax', point: '12', directions: 'X+, Y+, Z-', problem })), // prettier-ignore
  'same input channel': (['FAIL', 'WARN'] as const).map((verdict) => ({ check: 'same input channel', verdict, inputChannel: 'M2', channels: ['A1', 'A2'] })), // prettier-ignore
  'same sensor': [
    { check: 'same sensor', verdict: 'FAIL', sensor: 'Ce-100 77', axes: 1, points: ['1', '2'], channels: ['A1', 'A2'] },
    { check: 'same sensor', verdict: 'WARN', sensor: 'Ce-100 77', axes: 3, points: ['1'], channels: ['A1', 'A2'] },
    { check: 'same sensor', verdict: 'INCOMPLETE', sensor: 'Ce-100 77', points: ['1'], channels: ['A1', 'A2'] },
  ],
  'piece of another type': [['A1'], ['A1', 'A2']].map((channels) => ({ check: 'piece of another type', verdict: 'WARN', serial: '77', type: 'Ce-100', listed: 'Qz-10', channels })), // prettier-ignore
  'overlapping runs': (['FAIL', 'WARN'] as const).map((verdict) => ({ check: 'overlapping runs', verdict, sensor: 'Ce-100 77', runs: ['', 'B'], number: 3, from: 46_000 })), // prettier-ignore
  'calibration due': (['FAIL', 'WARN'] as const).flatMap((verdict) => ['', 'Run A'].map((run) => ({ check: 'calibration due' as const, verdict, sensor: 'Ce-100 77', run, number: 46_000, limit: 46_003 }))), // prettier-ignore
  'input modules': [
    {
      check: 'input modules',
      verdict: 'FAIL',
      mode: 'IEPE',
      run: 'Run A',
      number: 20,
      limit: 16,
      moduleSize: 8,
      modules: 1,
    },
    { check: 'input modules', verdict: 'WARN', mode: 'IEPE', run: '', number: 20, limit: 12 },
  ],
};
const ALL: readonly Finding[] = Object.values(SAMPLES).flat();

const numerals = (text: string): string[] =>
  (text.match(/[−-]?\d+(?:[.,]\d+)?/g) ?? []).map((number) => number.replace(',', '.')).sort();
const units = (text: string): string[] => (text.replace(/ (?:Gramm|grammes)(?![\p{L}])/gu, ' gram').match(/\d (dB|g|µg|gram|°C|%|Hz|N)(?![\p{L}])/gu) ?? []).map((found) => found.slice(2)).sort(); // prettier-ignore
/** Words that no sentence in another language contains by chance. */
const ENGLISH = /\b(the|would|help|limit|limits|at most|not known|of|and|which|sensor|mount|cable|this row|default|purpose|holds)\b/i; // prettier-ignore

/** A cause that a cell holds is told in the cell's own words. */
const SAID = ALL.filter(({ check }) => check !== 'explained');

describe.each(['de', 'fr'] as const)('the sentences in %s', (language) => {
  it.each(SAID.map((finding) => [finding.check, finding] as const))('%s', (_check, finding) => {
    const english = sentenceOf(finding);
    const said = sentenceOf(finding, language);
    expect(numerals(said)).toEqual(numerals(english));
    expect(units(said)).toEqual(units(english));
    expect(said).not.toBe(english);
    expect(said.replace('sheet Limits', '').replace('Thin glue', '')).not.toMatch(ENGLISH);
    expect(said).not.toMatch(/\d\.\d|\bundefined\b|\bNaN\b|\s\s|\.\./);
    expect(said).toMatch(/[.?]$/);
    expect(said).not.toMatch(/\bsicher\b|\bsûr(e|s|es)?\b|\bsafe\b/i);
  });

  it('keeps what the plan itself says of a limit', () => {
    const [finding] = SAMPLES.headroom;
    expect(sentenceOf(finding!, language)).toContain('(sheet Limits)');
  });
});

it('a row’s reason is told worst first in every language', () => {
  const [mass] = SAMPLES['mass ratio'];
  const [noise] = SAMPLES['signal to noise'];
  for (const language of LANGUAGES) {
    const text = reasonText([{ ...mass!, verdict: 'WARN' }, noise!], language);
    expect(text.indexOf(sentenceOf(noise!, language))).toBe(0);
  }
});
