import { dateFromText } from '../../src/plan/json-date';
import type { Channel, Piece, SensorType } from '../../src/plan/model';
import { pieceLines } from '../../src/workbook/piece-lines';

const day = (text: string) => dateFromText(text)!;
// 98.4 mV/g is 0.0984 V over 9.80665 m/s².
const piece = (serial: string, due: string, type = 'Ce-100'): Piece => ({ serial, type, line: 1, calibrationDue: day(due), sensitivity: 0.0984 / 9.80665 }); // prettier-ignore
const sensor: SensorType = { name: 'Ce-100', pieces: [piece('S1', '2027-01-01'), piece('S2', '2028-01-01')] };
const lines = (more: Partial<Channel>, language: 'en' | 'de' = 'en') =>
  pieceLines({ id: 'a', requirement: { detector: { kind: 'band' }, localMass: [] }, ...more }, language).map(({ label, value, unit }) => `${label}: ${value} ${unit}`.trim()); // prettier-ignore

describe('what an open row says of its piece', () => {
  it('is the number, the day when it is due and the sensitivity of its certificate', () => {
    expect(lines({ sensor, serial: 'S1', piece: sensor.pieces![0] })).toEqual(['Serial number: S1', 'Calibration due: 2027-01-01', 'Sensitivity by its certificate: 98.4 mV/g']); // prettier-ignore
    expect(lines({ sensor, serial: 'S1', piece: sensor.pieces![0] }, 'de')[2]).toBe('Empfindlichkeit laut Zertifikat: 98,4 mV/g'); // prettier-ignore
  });
  it('is the latest day of its type where it names none, and what the list has the number for where that is another type', () => {
    expect(lines({ sensor })).toEqual(['Calibration due, latest piece: 2028-01-01']);
    expect(lines({ sensor, serial: 'Q7', piece: piece('Q7', '2027-05-01', 'Qz-10') })[0]).toBe('Serial number: Q7, listed as Qz-10'); // prettier-ignore
    expect(lines({})).toEqual([]);
  });
});
