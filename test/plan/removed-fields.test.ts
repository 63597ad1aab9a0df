import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { checkChannel } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';

type Worked = (typeof fixture.cases)[number];
type Json = Record<string, Record<string, Record<string, unknown>>>;

/** What every verdict rests on, by the keys of the fixture; from its rules. */
const OF_EVERY_ROW = {
  requirement: [
    'level_low_rms_gn',
    'level_high_peak_gn',
    'band_low_Hz',
    'band_high_Hz',
    'temperature_min_degC',
    'temperature_max_degC',
    'local_mass',
  ],
  channel: ['sensor', 'mount', 'cable', 'input'],
  sensors: [
    'output',
    'full_scale_gn',
    'mass_gram',
    'resonance_Hz',
    'quality_factor',
    'temperature_min_degC',
    'temperature_max_degC',
    'deviation_curve_degC_percent',
  ],
  mounts: ['hardware_mass_gram'],
  cables: ['effective_mass_gram'],
  inputs: ['kind', 'range_V', 'dynamic_range_dB', 'sample_rate_Hz', 'ac_poles_Hz'],
};
const BY_OUTPUT: Record<string, Partial<typeof OF_EVERY_ROW>> = {
  IEPE: {
    sensors: ['sensitivity_mV_per_gn', 'noise_density_ugn_per_sqrtHz', 'low_limit_Hz', 'bias_min_V', 'bias_max_V'],
    cables: ['capacitance_pF'],
    inputs: ['supply_V', 'supply_current_mA', 'current_source_drop_V', 'bias_floor_V', 'sensor_current_mA'],
  },
  charge: {
    sensors: ['sensitivity_pC_per_gn', 'capacitance_pF'],
    cables: ['capacitance_pF'],
    inputs: [
      'gain_mV_per_pC',
      'noise_voltage_nV_per_sqrtHz',
      'feedback_capacitance_pF',
      'time_constant_s',
      'output_limit_V',
    ],
  },
  DC: { sensors: ['sensitivity_mV_per_gn', 'noise_density_ugn_per_sqrtHz'] },
};

/**
 * Fields without which a FAIL is no longer proved; any other loss leaves it proved. Worked out by hand: C2 fails by each
 * of its two poles alone, C3 by full scale and by mass, C6 by mount and cable alone (0.2/0.241), C11 also by its input
 * range (10 V / 0.4003 V per g = 24.98 g under 30 g).
 */
const PROOF: Record<string, readonly string[]> = {
  C2: ['requirement.band_low_Hz', 'sensors.resonance_Hz', 'sensors.quality_factor', 'channel.sensor', 'channel.mount'],
  C3: ['channel.sensor'],
  C6: ['requirement.local_mass'],
  C7: [
    'requirement.temperature_min_degC',
    'requirement.temperature_max_degC',
    'sensors.deviation_curve_degC_percent',
    'channel.sensor',
  ],
  C9: ['requirement.temperature_max_degC', 'sensors.temperature_max_degC', 'channel.sensor'],
  C11: ['requirement.level_high_peak_gn', 'channel.sensor'],
};

const requiredOf = (worked: Worked): string[] => {
  const { output } = fixture.sensors[worked.sensor as 'S1'];
  return Object.entries(OF_EVERY_ROW).flatMap(([part, keys]) =>
    [...keys, ...(BY_OUTPUT[output]?.[part as 'sensors'] ?? [])].map((key) => `${part}.${key}`),
  );
};

const verdictWithout = (worked: Worked, removed: readonly string[]): string => {
  const json = structuredClone({ ...fixture, cases: [worked], panel_sums: undefined }) as unknown as Json;
  const row = (json['cases'] as unknown as Record<string, Record<string, unknown>>[])[0]!;
  for (const field of removed) {
    const [part = '', key = ''] = field.split('.');
    if (part === 'channel') delete row[key];
    else if (part === 'requirement') delete row['requirement']![key];
    else delete json[part]![String(worked[part.slice(0, -1) as 'sensor'])]![key];
  }
  const { plan } = readJsonPlan(json);
  return checkChannel(plan.channels[0]!, plan.limits).verdict;
};

describe('a channel that lacks something', () => {
  it.each(fixture.cases.map((worked) => [worked.id, worked] as const))(
    '%s without any one needed field is INCOMPLETE, or FAIL where the rest still proves it',
    (id, worked) => {
      const proof = worked.expected.verdict === 'FAIL' ? PROOF[id]! : undefined;
      const outcomes = requiredOf(worked).map((field) => [field, verdictWithout(worked, [field])]);
      const expected = requiredOf(worked).map((field) => [
        field,
        proof && !proof.includes(field) ? 'FAIL' : 'INCOMPLETE',
      ]);
      expect(outcomes).toEqual(expected);
    },
  );

  it('never passes nor warns, however much is missing, and never fails what the whole row would not', () => {
    fc.assert(
      fc.property(fc.constantFrom(...fixture.cases), fc.infiniteStream(fc.boolean()), (worked, dice) => {
        const removed = requiredOf(worked).filter(() => dice.next().value === true);
        fc.pre(removed.length > 0);
        const verdict = verdictWithout(worked, removed);
        expect(worked.expected.verdict === 'FAIL' ? ['FAIL', 'INCOMPLETE'] : ['INCOMPLETE']).toContain(verdict);
      }),
      { numRuns: 300 },
    );
  });

  it('reads one line only when its spacing is known', () => {
    const worked = structuredClone(fixture.cases.find(({ id }) => id === 'C4')!);
    delete (worked.requirement.detector as { line_spacing_Hz?: number }).line_spacing_Hz;
    expect(verdictWithout(worked, [])).toBe('INCOMPLETE');
  });

  it('is judged by documented defaults where a blank has a meaning', () => {
    const worked = structuredClone(fixture.cases.find(({ id }) => id === 'C8')!) as Worked;
    const { requirement } = worked as unknown as { requirement: Record<string, unknown> };
    for (const key of ['purpose', 'thermal_tolerance_percent', 'span_tolerance_percent', 'reference_frequency_Hz'])
      delete requirement[key];
    expect(verdictWithout(worked, [])).toBe('PASS');
  });
});
