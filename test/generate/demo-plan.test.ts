import cases from '../fixtures/cases.json';
import { readCurve } from '../../src/core/text/curve';
import { readQuantity } from '../../src/core/text/quantity';
import { fromSi } from '../../src/core/units';
import type { Cell } from '../../src/functions/define';
import { readDemoTable, type SourceRow } from '../../src/generate/demo-csv';
import { fieldByKey, TABLES, type TableName } from '../../src/plan/fields';
import { recognise } from '../../src/workbook/recognise';
import { itemsOf, readWorkbook, ROOT } from './demo-workbook';

const sheets = readWorkbook('assets/demo-plan.xlsx');
const tables = recognise(sheets);
const KEYS = {
  channels: 'channel',
  sensors: 'sensor',
  mounts: 'mount',
  cables: 'cable',
  inputs: 'input',
  limits: 'limit',
} as const;
const source = Object.fromEntries(TABLES.map((table) => [table, readDemoTable(ROOT, table)])) as Record<
  TableName,
  SourceRow[]
>;
const items = Object.fromEntries(TABLES.map((table) => [table, itemsOf(sheets, tables[table])])) as Record<
  TableName,
  Record<string, Cell>[]
>;

/** A cell as a number in the field's unit, whether it was typed as a number or with a unit. */
const numberIn = (table: TableName, key: string, cell: Cell | undefined): number | null => {
  if (cell === null || cell === undefined) return null;
  const { unit } = fieldByKey(table, key);
  const read = readQuantity(String(cell), unit!);
  if (!read.ok) throw new Error(`${table}.${key} ${String(cell)}: ${read.problem.code}`);
  return fromSi(read.value.si, unit!);
};
const itemOfCase = (table: TableName, id: string): Record<string, Cell> => {
  const key = KEYS[table];
  const name = source[table].find((row) => row['case'] === id)?.[key];
  const item = items[table].find((entry) => entry[key] === name);
  if (name === undefined || !item) throw new Error(`${id} is not in ${table}`);
  return item;
};
const expectNumbers = (
  table: TableName,
  item: Record<string, Cell>,
  expected: Record<string, number | null | undefined>,
): void => {
  for (const [key, value] of Object.entries(expected)) {
    const given = numberIn(table, key, item[key]);
    if (value === null || value === undefined) expect([key, given]).toEqual([key, null]);
    else expect(Math.abs((given ?? NaN) / value - 1) <= 1e-12 || given === value ? key : [key, given, value]).toBe(key);
  }
};

describe('the demo workbook is what its source says', () => {
  it.each(TABLES.map((table) => [table] as const))('%s: the same items in the same order', (table) => {
    expect(items[table].map((item) => item[KEYS[table]])).toEqual(source[table].map((row) => row[KEYS[table]]));
  });
  it('is large enough to show every check at work', () => {
    const counts = TABLES.map((table) => items[table].length);
    [240, 25, 9, 7, 10, 7].forEach((least, i) => expect(counts[i]).toBeGreaterThanOrEqual(least));
  });
  it('has unique names in every list', () => {
    for (const table of TABLES) {
      const names = source[table].map((row) => row[KEYS[table]]);
      expect(new Set(names).size).toBe(names.length);
    }
  });
  it('keeps its libraries as table objects and the channel list as a plain range below title rows', () => {
    expect(tables.channels).toMatchObject({ headerRow: 4, listObject: undefined });
    expect([tables.sensors, tables.mounts, tables.cables, tables.inputs].map((t) => t?.listObject)).toEqual([
      'SensorTypes',
      'MountTypes',
      'CableRuns',
      'InputSettings',
    ]);
  });
  it('is recognised completely', () => {
    for (const table of TABLES) {
      expect([...(tables[table]?.unsure.keys() ?? [])]).toEqual([]);
      expect(tables[table]?.confidence).toBeGreaterThan(0.9);
    }
    expect(tables.channels?.columns.size).toBe(24);
  });
  it('names types, mounts, cables and inputs that its lists have, but for one misspelt type', () => {
    const known = (table: TableName) => new Set(items[table].map((item) => item[KEYS[table]]));
    const unknown = (['sensors', 'mounts', 'cables', 'inputs'] as const).flatMap((table) =>
      items.channels
        .map((item) => item[KEYS[table]])
        .filter((name) => name !== null && !known(table).has(name ?? null)),
    );
    expect(unknown).toEqual(['Ce-100 genral']);
  });
});

describe('the twelve worked channels stand in the demo workbook with the inputs of the independent computation', () => {
  it.each(cases.cases.map((worked) => [worked.id, worked] as const))('%s', (id, worked) => {
    const item = itemOfCase('channels', id);
    const { requirement, expected } = worked;
    expectNumbers('channels', item, {
      levelLow: requirement.level_low_rms_gn,
      levelHigh: requirement.level_high_peak_gn,
      bandLow: requirement.band_low_Hz,
      bandHigh: requirement.band_high_Hz,
      lineSpacing: 'line_spacing_Hz' in requirement.detector ? (requirement.detector.line_spacing_Hz as number) : null,
      temperatureLow: requirement.temperature_min_degC,
      temperatureHigh: requirement.temperature_max_degC,
      localMass: expected.mass.local_mass_gram,
      referenceFrequency: requirement.reference_frequency_Hz === 160 ? null : requirement.reference_frequency_Hz,
    });
    expect(item['purpose']).toBe(requirement.purpose);
    expect(item['sensor']).toBe(itemOfCase('sensors', worked.sensor)['sensor']);
    expect(item['mount']).toBe(itemOfCase('mounts', worked.mount)['mount']);
    expect(item['cable']).toBe(itemOfCase('cables', worked.cable)['cable']);
    expect(item['input']).toBe(itemOfCase('inputs', worked.input)['input']);
  });

  it.each(Object.entries(cases.sensors))('%s, sensor', (id, sensor) => {
    const item = itemOfCase('sensors', id);
    const given = sensor as Record<string, unknown>;
    const number = (key: string) => given[key] as number | undefined;
    expectNumbers('sensors', item, {
      axes: sensor.axes,
      sensitivity: number('sensitivity_mV_per_gn'),
      chargeSensitivity: number('sensitivity_pC_per_gn'),
      capacitance: number('capacitance_pF'),
      fullScale: sensor.full_scale_gn,
      mass: sensor.mass_gram,
      resonance: sensor.resonance_Hz,
      qualityFactor: sensor.quality_factor,
      lowLimit: number('low_limit_Hz'),
      biasMin: number('bias_min_V'),
      biasMax: number('bias_max_V'),
      temperatureMin: sensor.temperature_min_degC,
      temperatureMax: sensor.temperature_max_degC,
    });
    expect(item['output']).toBe(sensor.output);
    const curve = readCurve(String(item['deviation']), '°C', '%');
    expect(curve.ok && curve.value.x.map((x, i) => [x, fromSi(curve.value.y[i]!, '%')])).toEqual(
      sensor.deviation_curve_degC_percent.map(([x, y]) => [x, expect.closeTo(y!, 12)]),
    );
  });

  it.each(Object.entries(cases.mounts))('%s, mount', (id, mount) => {
    expectNumbers('mounts', itemOfCase('mounts', id), {
      mountMass: mount.hardware_mass_gram,
      stiffness: mount.stiffness_N_per_m,
    });
  });
  it.each(Object.entries(cases.cables))('%s, cable', (id, cable) => {
    expectNumbers('cables', itemOfCase('cables', id), {
      cableCapacitance: cable.capacitance_pF,
      cableMass: cable.effective_mass_gram,
    });
  });
  it.each(Object.entries(cases.inputs))('%s, input', (id, input) => {
    const item = itemOfCase('inputs', id);
    const given = input as Record<string, unknown>;
    const number = (key: string) => given[key] as number | undefined;
    expectNumbers('inputs', item, {
      range: input.range_V,
      dynamicRange: input.dynamic_range_dB,
      sampleRate: input.sample_rate_Hz,
      supply: number('supply_V'),
      supplyCurrent: number('supply_current_mA'),
      sourceDrop: number('current_source_drop_V'),
      biasFloor: number('bias_floor_V'),
      sensorCurrent: number('sensor_current_mA'),
      gain: number('gain_mV_per_pC'),
      noiseVoltage: number('noise_voltage_nV_per_sqrtHz'),
      feedbackCapacitance: number('feedback_capacitance_pF'),
      timeConstant: number('time_constant_s'),
      outputLimit: number('output_limit_V'),
    });
    expect(item['mode']).toBe(input.kind);
    expect(String(item['couplingPoles'])).toBe(input.ac_poles_Hz.length === 0 ? 'none' : input.ac_poles_Hz.join('; '));
  });
});

describe('the demo plan has the mistakes of real plans', () => {
  const count = (holds: (item: Record<string, Cell>) => boolean): number => items.channels.filter(holds).length;
  it.each<[string, (item: Record<string, Cell>) => boolean]>([
    ['wax in the hot chamber', (c) => c['mount'] === 'Wax' && Number(c['temperatureHigh']) > 100],
    ['a heavy triax on thin skin', (c) => c['sensor'] === 'Ce-100 triax' && c['group'] === 'Wing skin'],
    ['an AC-coupled input on a slow pulse', (c) => c['input'] === 'AC 10 V' && Number(c['bandLow']) < 1],
    [
      'a charge sensor on an IEPE input',
      (c) => String(c['sensor']).endsWith('hot charge') && String(c['input']).startsWith('IEPE'),
    ],
    ['a missing local mass', (c) => c['localMass'] === null],
    ['a level with its unit in the cell', (c) => c['levelLow'] === '0.8 mg'],
    ['a decimal comma', (c) => c['levelHigh'] === '12,5'],
    ['a number that can be read two ways', (c) => c['bandHigh'] === '1,250'],
    ['a range in one cell', (c) => c['temperatureLow'] === '15..135 °C' && c['temperatureHigh'] === null],
  ])('%s', (_, holds) => {
    expect(count(holds)).toBeGreaterThan(0);
  });
  it('one shaker run with a single control channel and one with two', () => {
    const controls = (run: string) => count((c) => c['group'] === run && c['role'] === 'control');
    expect([controls('Shaker run A'), controls('Shaker run B')]).toEqual([1, 2]);
  });
});
