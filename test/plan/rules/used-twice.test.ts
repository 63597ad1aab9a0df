import { dateFromText } from '../../../src/plan/json-date';
import type { Channel } from '../../../src/plan/model';
import { found, INPUT, row, TRIAX, UNI, verdicts } from './rows';

const day = (text: string) => dateFromText(text)!;

describe('an input channel', () => {
  const on = (id: string, more: Partial<Channel> = {}) => row(id, { inputChannel: 'M2-5', ...more });
  it('takes one channel', () => {
    expect(verdicts('same input channel', on('a'), on('b', { inputChannel: ' m2-5 ' }))).toEqual([['FAIL', 'a b']]);
    expect(verdicts('same input channel', on('a'), on('b', { inputChannel: 'M2-6' }), row('c'))).toEqual([]);
  });
  it('takes another one in another run; parts without runs are only worth a look', () => {
    expect(verdicts('same input channel', on('a', { run: 'A' }), on('b', { run: 'B' }))).toEqual([]);
    expect(verdicts('same input channel', on('a', { run: 'A', group: 'Wing' }), on('b', { run: 'a', group: 'Tail' }))).toEqual([['FAIL', 'a b']]); // prettier-ignore
    expect(verdicts('same input channel', on('a', { group: 'Wing' }), on('b', { group: 'Tail' }))).toEqual([['WARN', 'a b']]); // prettier-ignore
  });
});

describe('a sensor with a serial number', () => {
  const with77 = (id: string, more: Partial<Channel> = {}) =>
    row(id, { sensor: UNI, serial: '77', point: '1', ...more });
  it('is at one point and on one channel', () => {
    expect(verdicts('same sensor', with77('a'), with77('b'))).toEqual([['FAIL', 'a b']]);
    expect(verdicts('same sensor', with77('a'), with77('b', { point: '2' }))).toEqual([['FAIL', 'a b']]);
    expect(verdicts('same sensor', with77('a'), with77('b', { serial: '78' }))).toEqual([]);
  });
  it('is told from one of another type, and may come again in another run', () => {
    expect(verdicts('same sensor', with77('a'), with77('b', { sensor: TRIAX }))).toEqual([]);
    expect(verdicts('same sensor', with77('a', { run: 'A' }), with77('b', { run: 'B' }))).toEqual([]);
  });
  it('fills as many rows of its point as it has axes', () => {
    const axis = (id: string, direction: string, more = {}) => with77(id, { sensor: TRIAX, direction, ...more });
    const three = [axis('a', 'X'), axis('b', 'Y'), axis('c', 'Z')];
    expect(verdicts('same sensor', ...three)).toEqual([]);
    expect(verdicts('same sensor', ...three, axis('d', 'Z'))).toEqual([['FAIL', 'a b c d']]);
    expect(verdicts('same sensor', axis('a', 'X'), axis('b', 'Y', { point: '2' }))).toEqual([['FAIL', 'a b']]);
  });
  it('with a number of axes that is not known is not judged', () => {
    const unknown = { sensor: { name: 'New' } };
    expect(verdicts('same sensor', with77('a', unknown), with77('b', unknown))).toEqual([['INCOMPLETE', 'a b']]);
  });
});

describe('runs that overlap', () => {
  const inRun = (id: string, run: string, start?: string, end?: string): Channel =>
    row(id, { run, runStart: start === undefined ? undefined : day(start), runEnd: end === undefined ? undefined : day(end), sensor: UNI, serial: '77' }); // prettier-ignore
  const first = inRun('a', 'A', '2026-11-02', '2026-11-05');
  it.each([
    ['2026-11-04', '2026-11-09', 'FAIL', 2],
    ['2026-11-03', '2026-11-04', 'FAIL', 2],
    ['2026-11-05', '2026-11-09', 'WARN', 1],
    ['2026-10-20', '2026-11-02', 'WARN', 1],
  ])('from %s to %s: %s for one sensor, %s days shared', (start, end, verdict, number) => {
    expect(found('overlapping runs', first, inRun('b', 'B', start, end))).toMatchObject([{ verdict, number, runs: ['A', 'B'] }]); // prettier-ignore
  });
  it('do no harm one after another, to other sensors, or while a date is not known', () => {
    expect(found('overlapping runs', first, inRun('b', 'B', '2026-11-06', '2026-11-09'))).toEqual([]);
    expect(found('overlapping runs', first, { ...inRun('b', 'B', '2026-11-04', '2026-11-09'), serial: '78' })).toEqual([]); // prettier-ignore
    expect(found('overlapping runs', first, inRun('b', 'B', '2026-11-04'))).toEqual([]);
  });
  it('know their days from any of their rows', () => {
    const elsewhere = { ...inRun('c', 'b', '2026-11-04', '2026-11-09'), serial: undefined };
    expect(verdicts('overlapping runs', first, inRun('b', 'B'), elsewhere)).toEqual([['FAIL', 'a b']]);
  });
});

describe('calibration', () => {
  const run = { run: 'A', runStart: day('2026-11-02'), runEnd: day('2026-11-05') };
  const due = (text: string, more: Partial<Channel> = {}) =>
    verdicts('calibration due', row('a', { ...run, sensor: { ...UNI, calibrationDue: day(text) }, ...more }));
  it.each([
    ['2026-11-01', [['FAIL', 'a']]],
    ['2026-11-02', [['WARN', 'a']]],
    ['2026-11-04', [['WARN', 'a']]],
    ['2026-11-05', []],
    ['2027-01-01', []],
  ])('due on %s, run from 2 to 5 November: %j', (text, expected) => expect(due(text)).toEqual(expected));
  it('of the very sensor counts more than the type’s', () => {
    expect(due('2027-01-01', { serial: '77', calibrationDue: day('2026-11-01') })).toEqual([['FAIL', 'a']]);
  });
  it('is not judged without dates, and with one date by that one', () => {
    expect(due('2026-11-01', { runStart: undefined, runEnd: undefined })).toEqual([]);
    expect(due('2026-11-01', { runStart: undefined })).toEqual([['WARN', 'a']]);
  });
});

describe('input modules', () => {
  const rows = (count: number, more: (i: number) => Partial<Channel> = () => ({})) =>
    Array.from({ length: count }, (_, i) => row(`c${i}`, { input: INPUT, ...more(i) }));
  it('of 2 × 4 channels take 8 channels of their mode', () => {
    expect(found('input modules', ...rows(8))).toEqual([]);
    expect(found('input modules', ...rows(13))).toMatchObject([{ verdict: 'FAIL', number: 13, limit: 8, modules: 2 }]);
  });
  it('are counted mode by mode, and settings of one mode together', () => {
    const charge = { name: 'Charge', mode: 'charge' as const };
    expect(found('input modules', ...rows(12, (i) => (i < 4 ? { input: charge } : {})))).toEqual([]);
    const more = { ...INPUT, name: 'IEPE 1 V', modules: 1 };
    expect(found('input modules', ...rows(12, (i) => (i < 4 ? { input: more } : {})))).toEqual([]);
    const shared = { ...INPUT, name: 'IEPE 1 V', modules: undefined };
    expect(found('input modules', ...rows(9, (i) => (i < 4 ? { input: shared } : {})))).toMatchObject([{ number: 9, limit: 8 }]); // prettier-ignore
  });
  it('are free again for the next run; parts without runs are only worth a look', () => {
    expect(found('input modules', ...rows(16, (i) => ({ run: i < 8 ? 'A' : 'B' })))).toEqual([]);
    expect(found('input modules', ...rows(10, (i) => ({ group: i < 5 ? 'Wing' : 'Tail' })))).toMatchObject([{ verdict: 'WARN' }]); // prettier-ignore
    expect(found('input modules', ...rows(10, (i) => ({ group: i < 9 ? 'Wing' : 'Tail' })))).toMatchObject([{ verdict: 'FAIL' }]); // prettier-ignore
  });
});
