import { checkChannels } from '../../src/plan/check';
import { planFromTables } from '../../src/plan/from-tables';
import type { TableName } from '../../src/plan/fields';
import { describeMisread } from '../../src/plan/misread';
import type { ColumnReading, TableReading } from '../../src/plan/table-reading';

type Cell = TableReading['rows'][number][number];
type Columns = Readonly<Record<string, Partial<ColumnReading>>>;

/** A table whose columns stand in the order of their keys; its first row is row 2 of a sheet. */
const table = (name: TableName, columns: Columns, ...rows: Cell[][]): TableReading => ({
  name,
  columns: new Map(Object.entries(columns).map(([key, rest], column) => [key, { column, ...rest }])),
  rows,
  at: rows.map((_, i) => i + 2),
});
const plain = (...keys: string[]): Columns => Object.fromEntries(keys.map((key) => [key, {}]));

const SENSOR_KEYS = ['sensor', 'output', 'sensitivity', 'fullScale', 'mass', 'noiseDensity', 'resonance', 'qualityFactor', 'temperatureMin', 'temperatureMax', 'deviation']; // prettier-ignore
const sensors = table('sensors', plain(...SENSOR_KEYS), [
  'Bridge 2000',
  'dc',
  0.2,
  2000,
  1.3,
  '1:1500; 10000:1500',
  26000,
  10,
  -54,
  121,
  '-54:2.5; 23:0; 121:-3',
]);
const mounts = table('mounts', plain('mount', 'mountMass', 'stiffness'), ['screw', 2, null]);
const cables = table('cables', plain('cable', 'cableCapacitance', 'cableMass'), ['short', 1000, 0]);
const inputs = table('inputs', plain('input', 'mode', 'range', 'dynamicRange', 'sampleRate', 'couplingPoles'), [
  'fast',
  'voltage',
  1,
  110,
  204800,
  'none',
]);
const lists = [sensors, mounts, cables, inputs];

const ROW_KEYS = ['channel', 'purpose', 'levelLow', 'levelHigh', 'bandLow', 'bandHigh', 'temperatureLow', 'temperatureHigh', 'localMass', 'sensor', 'mount', 'cable', 'input']; // prettier-ignore
const STRIKER: readonly Cell[] = ['striker', 'shock', 20, 800, 100, 5000, 18, 28, 900, 'bridge 2000', ' SCREW', 'short', 'fast']; // prettier-ignore
const striker = (change: Readonly<Record<string, Cell>> = {}): Cell[] =>
  ROW_KEYS.map((key, i) => (key in change ? change[key]! : STRIKER[i]!));
const channels = (columns: Columns, ...rows: Cell[][]) =>
  table('channels', { ...plain(...ROW_KEYS), ...columns }, ...rows);

const check = (row: Cell[], columns: Columns = {}, others = lists) => {
  const { plan, misreads } = planFromTables([channels(columns, row), ...others]);
  return {
    ...checkChannels(plan.channels, plan.limits)[0]!,
    misreads: misreads.map((misread) => describeMisread(misread)),
  };
};

describe('a plan from tables', () => {
  it('joins rows to their lists whatever the case and outer blanks of a name', () => {
    const { verdict, misreads, level, mass } = check(striker());
    expect(misreads).toEqual([]);
    expect(verdict).toBe('PASS');
    // The striker plate, computed independently with Python/scipy.
    expect(level.headroom).toBeCloseTo(7.958800173440752, 9);
    expect(mass.ratio).toBeCloseTo(0.0036666666666666666, 12);
  });

  it('gives the same numbers for g, m/s² and texts with units', () => {
    const inG = check(striker());
    const inSi = check(striker({ levelLow: 20 * 9.80665, levelHigh: 800 * 9.80665 }), {
      levelLow: { unit: 'm/s²' },
      levelHigh: { unit: 'm/s²' },
    });
    const inTexts = check(
      striker({ levelLow: '20 g rms', levelHigh: '±800 g', bandHigh: '5 kHz', localMass: '0.9 kg' }),
    );
    for (const other of [inSi, inTexts]) {
      expect(other.misreads).toEqual([]);
      expect(other.verdict).toBe(inG.verdict);
      expect(other.level.signalToNoise).toBeCloseTo(inG.level.signalToNoise!, 9);
      expect(other.level.headroom).toBeCloseTo(inG.level.headroom!, 9);
      expect(other.mass.ratio).toBeCloseTo(inG.mass.ratio!, 12);
      expect(other.frequency.span).toEqual(inG.frequency.span);
    }
  });

  it('reads numbers under a heading in another unit, here °F and kHz', () => {
    const { misreads, thermal, verdict } = check(
      striker({ temperatureLow: 64.4, temperatureHigh: 82.4, bandHigh: 5 }),
      {
        temperatureLow: { unitText: '°F' },
        temperatureHigh: { unitText: '°F' },
        bandHigh: { unitText: 'kHz' },
      },
    );
    expect(misreads).toEqual([]);
    expect(verdict).toBe('PASS');
    // 64.4 °F and 82.4 °F are 18 °C and 28 °C; band by Python/scipy.
    expect(thermal.band!.low).toBeCloseTo(-0.001530612244897922, 12);
    expect(thermal.band!.high).toBeCloseTo(0.0016233766233766378, 12);
  });

  it('leaves the same-as-above mark and a text with two readings open', () => {
    const list = table('channels', plain('channel', 'sensor', 'temperatureLow'), ['W1', '"', '10 -20']);
    expect(planFromTables([list]).misreads.map(({ read, problem }) => [read, problem?.code])).toEqual([
      ['10 -20', 'ambiguous'],
      ['"', undefined],
    ]);
  });
  it('fills both ends from a range text, but not over a number that is given', () => {
    const { thermal, misreads } = check(striker({ temperatureLow: '18..28 °C', temperatureHigh: null }));
    expect(misreads).toEqual([]);
    expect(thermal.band!.high).toBeCloseTo(0.0016233766233766378, 12);
    const both = check(striker({ temperatureLow: '18..28 °C', temperatureHigh: 40 }));
    expect(both.thermal.verdict).toBe('INCOMPLETE');
    expect(both.misreads).toEqual([
      'channels, row 2, Temperature low: read "18..28 °C", expected one number beside Temperature high.',
    ]);
  });

  it('keeps a blank apart from 0', () => {
    expect(check(striker({ localMass: null })).mass.verdict).toBe('INCOMPLETE');
    const noMass = [sensors, mounts, table('cables', plain('cable', 'cableMass'), ['short', null]), inputs];
    expect(check(striker(), {}, noMass).mass.verdict).toBe('INCOMPLETE');
    expect(check(striker()).mass.verdict).toBe('PASS');
  });

  it('takes a level of another statistic for not known', () => {
    const { level, misreads } = check(striker({ levelHigh: '800 g rms' }));
    expect(level.highEnd).toBe('INCOMPLETE');
    expect(misreads).toEqual([
      'channels, row 2, Highest level: read "800 g rms", expected a number in g, peak, above 0.',
    ]);
    expect(check(striker(), { levelLow: { statistic: 'peak' } }).level.lowEnd).toBe('INCOMPLETE');
  });

  it.each([
    ['localMass', -3, 'Local mass: read "-3", expected a number in gram, above 0'],
    ['bandLow', 'soon', 'Band low: read "soon", expected a number in Hz, at least 0'],
    ['purpose', 'fun', 'Purpose: read "fun", expected one of survey, modal, shock'],
    ['levelLow', { error: '#N/A' }, 'Lowest level: read "#N/A", expected a number in g, r.m.s., above 0'],
    ['sensor', 'Bridge 9', 'Sensor type: read "Bridge 9", expected a name from sensors'],
  ])('says where a %s cannot be read and what was expected', (key, cell, said) => {
    const { misreads, verdict } = check(striker({ [key]: cell }));
    expect(misreads.map((text) => text.replace('channels, row 2, ', ''))).toEqual([`${said}.`]);
    // 0.0037 passes for every purpose.
    expect(verdict).toBe(key === 'purpose' ? 'PASS' : 'INCOMPLETE');
  });

  it('does not take a default for what was given but cannot be read', () => {
    const soft = table('mounts', plain('mount', 'mountMass', 'stiffness'), ['screw', 2, 'very stiff']);
    expect(check(striker(), {}, [sensors, soft, cables, inputs]).frequency.verdict).toBe('INCOMPLETE');
    const hot = table('mounts', plain('mount', 'mountMass', 'mountTemperatureMax'), ['screw', 2, 'warm']);
    expect(check(striker(), {}, [sensors, hot, cables, inputs]).thermal.verdict).toBe('INCOMPLETE');
    const wide = channels({ thermalTolerance: { column: 13 } }, [...striker(), 'a little']);
    const { plan } = planFromTables([wide, ...lists]);
    expect(checkChannels(plan.channels, plan.limits)[0]!.thermal.verdict).toBe('INCOMPLETE');
    const heavy = striker({ purpose: 'whatever', localMass: 50 });
    // 3.3 gram on 50 gram: within the survey limit, beyond the modal one.
    expect(check(heavy).mass.verdict).toBe('INCOMPLETE');
  });

  it('uses the first of two rows with one name and says so', () => {
    const twice = table('cables', plain('cable', 'cableMass'), ['short', 0], ['Short ', 5]);
    const { mass, misreads } = check(striker(), {}, [sensors, mounts, twice, inputs]);
    expect(mass.total).toBeCloseTo(0.0033, 12);
    expect(misreads).toHaveLength(1);
  });

  it('leaves out blank rows and keeps the row numbers of the others', () => {
    const blank = ROW_KEYS.map(() => null);
    const { plan, at } = planFromTables([channels({}, striker(), blank, striker({ channel: 'b' })), ...lists]);
    expect(plan.channels.map(({ id }) => id)).toEqual(['striker', 'b']);
    expect(at).toEqual([2, 4]);
  });
});

describe('limits from a table', () => {
  const limitsFrom = (...rows: Cell[][]) => {
    const limits = table('limits', plain('limit', 'pass', 'warn', 'limitUnit', 'origin'), ...rows);
    const { plan, misreads } = planFromTables([limits]);
    return { limits: plan.limits, misreads: misreads.map((misread) => describeMisread(misread)) };
  };

  it('replace the defaults row by row and keep their origin', () => {
    const { limits, misreads } = limitsFrom(
      ['mass ratio,  survey', 0.05, 0.1, null, 'test plan 7'],
      ['Headroom', 6, null, 'dB', null],
      ['Thermal tolerance', 10, null, '%', null],
    );
    expect(misreads).toEqual([]);
    expect(limits.massRatio.survey).toMatchObject({ pass: 0.05, warn: 0.1, origin: 'test plan 7' });
    expect(limits.headroom).toMatchObject({ pass: 6, warn: 0, origin: 'this plan' });
    expect(limits.thermalTolerance).toMatchObject({ pass: 0.1, origin: 'this plan' });
    expect(limits.signalToNoise).toMatchObject({ pass: 20, warn: 10, origin: 'default, no standard' });
  });

  it('are read in the unit of their row', () => {
    const { limits } = limitsFrom(['Mass ratio, modal', 2, 10, '%', null]);
    expect(limits.massRatio.modal).toMatchObject({ pass: 0.02, warn: 0.1 });
  });

  it('are told when no limit has that name', () => {
    expect(limitsFrom(['Loudness', 3, null, null, null]).misreads).toEqual([
      expect.stringContaining('limits, row 2, Limit: read "Loudness", expected one of Signal to noise;'),
    ]);
  });
});
