import fixture from '../../fixtures/cases.json';
import { callFunction } from '../../../src/engine/call';
import type { Block, Cell } from '../../../src/functions/define';
import { check } from '../../../src/functions/verdict/check';

type Row = readonly Cell[];
const curve = (pairs: readonly (readonly number[])[] | undefined): Cell =>
  pairs ? pairs.map(([x, y]) => `${x}:${y}`).join('; ') : null;
const value = (record: object, key: string): Cell => (record as Record<string, Cell>)[key] ?? null;
const values = (record: object, ...keys: string[]): Cell[] => keys.map((key) => value(record, key));

/** The worked channels as sheets; local masses by the fixture’s own result, for a cell holds no plate. */
const SENSORS: Block = [
  ['Sensor type', 'Output', 'Sensitivity [mV/g]', 'Charge sensitivity [pC/g]', 'Full scale [g]', 'Mass [gram]', 'Capacitance [pF]', 'Resonance [Hz]', 'Quality factor', 'Low limit [Hz]', 'Bias min [V]', 'Bias max [V]', 'Temperature min [°C]', 'Temperature max [°C]', 'Noise density [µg/√Hz]', 'Thermal deviation [%]'], // prettier-ignore
  ...Object.entries(fixture.sensors).map(([name, sensor]): Row => [
    name,
    ...values(sensor, 'output', 'sensitivity_mV_per_gn', 'sensitivity_pC_per_gn', 'full_scale_gn', 'mass_gram', 'capacitance_pF', 'resonance_Hz', 'quality_factor', 'low_limit_Hz', 'bias_min_V', 'bias_max_V', 'temperature_min_degC', 'temperature_max_degC'), // prettier-ignore
    curve('noise_density_ugn_per_sqrtHz' in sensor ? sensor.noise_density_ugn_per_sqrtHz : undefined),
    curve(sensor.deviation_curve_degC_percent),
  ]),
];
const MOUNTS: Block = [
  ['Mount', 'Mount mass [gram]', 'Stiffness [N/m]'],
  ...Object.entries(fixture.mounts).map(([name, mount]) => [name, ...values(mount, 'hardware_mass_gram', 'stiffness_N_per_m')]), // prettier-ignore
];
const CABLES: Block = [
  ['Cable', 'Capacitance [pF]', 'Effective mass [gram]'],
  ...Object.entries(fixture.cables).map(([name, cable]) => [name, ...values(cable, 'capacitance_pF', 'effective_mass_gram')]), // prettier-ignore
];
const INPUTS: Block = [
  ['Input', 'Mode', 'Range [V]', 'Dynamic range [dB]', 'Sample rate [Hz]', 'AC coupling [Hz]', 'Supply [V]', 'Supply current [mA]', 'Source drop [V]', 'Bias floor [V]', 'Sensor current [mA]', 'Charge gain [mV/pC]', 'Amplifier noise [nV/√Hz]', 'Feedback capacitance [pF]', 'Time constant [s]', 'Output limit [V]'], // prettier-ignore
  ...Object.entries(fixture.inputs).map(([name, input]): Row => [
    name,
    ...values(input, 'kind', 'range_V', 'dynamic_range_dB', 'sample_rate_Hz'),
    input.ac_poles_Hz.join('; ') || 'none',
    ...values(input, 'supply_V', 'supply_current_mA', 'current_source_drop_V', 'bias_floor_V', 'sensor_current_mA', 'gain_mV_per_pC', 'noise_voltage_nV_per_sqrtHz', 'feedback_capacitance_pF', 'time_constant_s', 'output_limit_V'), // prettier-ignore
  ]),
];
const CHANNEL_HEADINGS = ['Channel', 'Purpose', 'Lowest level [g]', 'Highest level [g]', 'Band low [Hz]', 'Band high [Hz]', 'Line spacing [Hz]', 'Temperature low [°C]', 'Temperature high [°C]', 'Reference frequency [Hz]', 'Local mass [gram]', 'Sensor type', 'Mount', 'Cable', 'Input']; // prettier-ignore
const ROWS = fixture.cases.map((worked): Row => {
  const { requirement, expected } = worked;
  return [
    worked.id,
    ...values(requirement, 'purpose', 'level_low_rms_gn', 'level_high_peak_gn', 'band_low_Hz', 'band_high_Hz'),
    value(requirement.detector, 'line_spacing_Hz'),
    ...values(requirement, 'temperature_min_degC', 'temperature_max_degC', 'reference_frequency_Hz'),
    expected.mass.local_mass_gram,
    worked.sensor,
    worked.mount,
    worked.cable,
    worked.input,
  ];
});
const LISTS = [SENSORS, MOUNTS, CABLES, INPUTS];

const call = (channels: Block, ...others: Block[]): Cell[][] => {
  const result = callFunction(check, [channels, ...(others.length > 0 ? others : LISTS)]);
  if (!result.ok || !Array.isArray(result.value)) throw new Error(JSON.stringify(result));
  return result.value;
};

describe('CHECK', () => {
  const [headings, ...rows] = call([CHANNEL_HEADINGS, ...ROWS]);
  const cell = (row: number, heading: string): Cell => rows[row]![headings!.indexOf(heading)]!;

  it.each(fixture.cases.map(({ id, expected }, row) => [id, expected, row] as const))(
    'gives the numbers and verdicts of %s, computed independently with Python/scipy',
    (_id, expected, row) => {
      const numbers: [string, number | null][] = [
        ['Signal to noise [dB]', expected.level.signal_to_noise_dB],
        ['Headroom [dB]', expected.level.headroom_dB],
        ['Mass ratio', expected.mass.mass_ratio],
        ['Thermal low [%]', expected.thermal.low_percent],
        ['Thermal high [%]', expected.thermal.high_percent],
        ['Span low [Hz]', expected.frequency.span_5_percent.low_Hz],
        ['Span high [Hz]', expected.frequency.span_5_percent.high_Hz],
      ];
      for (const [heading, number] of numbers) {
        const given = cell(row, heading);
        if (number === null) expect([heading, given]).toEqual([heading, '']);
        else expect(Math.abs(Number(given) - number)).toBeLessThanOrEqual(1e-6 * Math.abs(number));
      }
      expect(
        ['Level verdict', 'Mass verdict', 'Thermal verdict', 'Frequency verdict', 'Verdict'].map((h) => cell(row, h)),
      ).toEqual([
        expected.level.verdict,
        expected.mass.verdict,
        expected.thermal.verdict,
        expected.frequency.verdict,
        expected.verdict,
      ]);
      expect(cell(row, 'Reason') === '').toBe(expected.verdict === 'PASS');
    },
  );

  it('keeps one row for each row of the list and drops blank ones at its end', () => {
    const blank = CHANNEL_HEADINGS.map(() => null);
    const result = call([CHANNEL_HEADINGS, ROWS[0]!, blank, ROWS[1]!, blank, blank, blank]);
    expect(result.map((row) => row[0])).toEqual(['Channel', 'C1', '', 'C2']);
    expect(new Set(result.map((row) => row.length))).toEqual(new Set([14]));
  });

  it('judges by the limits that are given', () => {
    const limits: Block = [
      ['Limit', 'Pass', 'Warn', 'Unit', 'Origin'],
      ['Headroom', 12, 0, 'dB', 'this test'],
    ];
    const [, first] = call([CHANNEL_HEADINGS, ROWS[0]!], ...LISTS, limits);
    expect(first![3]).toBe('WARN');
    expect(first![13]).toContain('Headroom 10.4 dB, limit 12 dB (this test)');
  });

  it('says what it could not read', () => {
    const noisy = ROWS.map((row, at) => row.map((given, i) => (at === 0 && i === 2 ? 'quiet' : given)));
    const [, first] = call([CHANNEL_HEADINGS, ...noisy]);
    expect(first![3]).toBe('INCOMPLETE');
    expect(first![13]).toContain('Lowest level [g]: read "quiet", expected a number in g, r.m.s., above 0.');
  });

  it('makes a row INCOMPLETE that names a sensor no list has', () => {
    const [, first] = call([CHANNEL_HEADINGS, ROWS[0]!.map((given) => (given === 'S7' ? 'S77' : given))]);
    expect(first!.slice(-2)).toEqual(['INCOMPLETE', expect.stringContaining('Sensor type (no “S77” in its list)')]);
  });

  it('refuses a range without headings it knows', () => {
    expect(callFunction(check, [[[1, 2], [3, 4]], ...LISTS])).toMatchObject({ ok: false, issue: { code: 'wrong-size', arg: 'channels' } }); // prettier-ignore
    expect(callFunction(check, [[[null]], ...LISTS])).toMatchObject({ ok: false, issue: { code: 'wrong-size' } });
  });
});
