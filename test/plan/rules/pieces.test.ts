import { dateFromText } from '../../../src/plan/json-date';
import type { Channel, Piece, SensorType } from '../../../src/plan/model';
import { found, row, UNI, verdicts } from './rows';

const day = (text: string) => dateFromText(text)!;
const piece = (serial: string, due?: string, type = UNI.name): Piece => ({ serial, type, line: 1, ...(due && { calibrationDue: day(due) }) }); // prettier-ignore
const RUN = { run: 'A', runStart: day('2027-03-01'), runEnd: day('2027-03-31') };
const of = (id: string, more: Partial<Channel>) => row(id, { sensor: UNI, ...RUN, ...more });
const typeOf = (...dues: (string | undefined)[]): SensorType => {
  const pieces = dues.map((due, i) => piece(`S${i}`, due));
  const earliest = Math.min(...pieces.map(({ calibrationDue = Infinity }) => calibrationDue));
  return { ...UNI, pieces, calibrationDue: Number.isFinite(earliest) ? earliest : undefined };
};

describe('the calibration of a single piece', () => {
  it('is that of the sensor list where the row has no date: a FAIL before the run, a WARN in it, none on its last day', () => {
    const due = (text: string) => verdicts('calibration due', of('a', { serial: '7', piece: piece('7', text) }));
    expect(due('2027-02-28')).toEqual([['FAIL', 'a']]);
    expect(due('2027-03-30')).toEqual([['WARN', 'a']]);
    expect(due('2027-03-31')).toEqual([]);
  });

  it('gives way to the row’s own date, and says nothing of a piece of another type', () => {
    const own = { serial: '7', piece: piece('7', '2026-01-01') };
    expect(verdicts('calibration due', of('a', { ...own, calibrationDue: day('2028-01-01') }))).toEqual([]);
    expect(verdicts('calibration due', of('a', { ...own, piece: piece('7', '2026-01-01', 'Qz-10') }))).toEqual([]);
  });

  it('is the latest of the type where the row names none, for that one can be taken', () => {
    const due = (...dues: (string | undefined)[]) => verdicts('calibration due', of('a', { sensor: typeOf(...dues) }));
    expect(due('2026-01-01', '2028-01-01')).toEqual([]);
    expect(due('2026-01-01', '2027-03-10')).toEqual([['WARN', 'a']]);
    expect(due('2026-01-01', '2026-02-01')).toEqual([['FAIL', 'a']]);
    expect(due('2026-01-01', undefined)).toEqual([]);
  });
});

it('a serial number that the list has under another type is told once for all rows with it', () => {
  const wrong = { serial: '7', piece: piece('7', undefined, 'Qz-10') };
  expect(verdicts('piece of another type', of('b', wrong), of('a', wrong), of('c', {}))).toEqual([['WARN', 'a b']]);
  expect(verdicts('piece of another type', of('a', { serial: '7', piece: piece('7', undefined, ` ${UNI.name.toUpperCase()}`) }))).toEqual([]); // prettier-ignore
  expect(found('piece of another type', of('a', wrong))[0]).toMatchObject({ serial: '7', listed: 'Qz-10', type: UNI.name }); // prettier-ignore
});
