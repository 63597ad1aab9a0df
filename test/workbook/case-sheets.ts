import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fieldsOf, type TableName } from '../../src/plan/fields';

export type Typed = number | string | null;
export interface CaseSheet {
  readonly name: string;
  readonly cells: readonly (readonly Typed[])[];
}

/* eslint-disable @typescript-eslint/no-explicit-any */
export const CASES = JSON.parse(readFileSync(join(__dirname, '../fixtures/cases.json'), 'utf8')) as any;

const curve = (points: [number, number][] | undefined): Typed =>
  points?.map(([x, y]) => `${x}:${y}`).join('; ') ?? null;
const list = (numbers: number[] | undefined): Typed =>
  numbers === undefined ? null : numbers.length === 0 ? 'none' : numbers.join('; ');

const impedanceMass = (branch: any): number => {
  // m = |Z|/(2πf); the plate's Z = 8·√(B'·m''): Cremer/Heckl, as the fixture's rules say.
  const bending =
    branch.impedance_N_s_per_m ??
    8 *
      Math.sqrt(
        ((branch.youngs_modulus_Pa * (branch.thickness_mm / 1e3) ** 3) / (12 * (1 - branch.poisson_ratio ** 2))) *
          branch.density_kg_per_m3 *
          (branch.thickness_mm / 1e3),
      );
  return (bending / (2 * Math.PI * branch.at_frequency_Hz)) * 1e3;
};
const localMass = (branches: any[]): Typed =>
  Math.min(...branches.map((b) => (b.model === 'plate' ? impedanceMass(b) : b.mass_gram)));

const ROWS: Readonly<Record<Exclude<TableName, 'limits'>, () => Record<string, Typed>[]>> = {
  channels: () =>
    CASES.cases.map(({ id, name, sensor, mount, cable, input, requirement: r }: any) => ({
      channel: id,
      location: name,
      purpose: r.purpose,
      levelLow: r.level_low_rms_gn,
      levelHigh: r.level_high_peak_gn,
      bandLow: r.band_low_Hz,
      bandHigh: r.band_high_Hz,
      lineSpacing: r.detector.line_spacing_Hz ?? null,
      temperatureLow: r.temperature_min_degC,
      temperatureHigh: r.temperature_max_degC,
      localMass: localMass(r.local_mass),
      thermalTolerance: r.thermal_tolerance_percent,
      spanTolerance: r.span_tolerance_percent,
      referenceFrequency: r.reference_frequency_Hz,
      sensor,
      mount,
      cable,
      input,
    })),
  sensors: () =>
    Object.entries<any>(CASES.sensors).map(([id, s]) => ({
      sensor: id,
      technology: s.technology,
      output: s.output,
      axes: s.axes,
      sensitivity: s.sensitivity_mV_per_gn ?? null,
      chargeSensitivity: s.sensitivity_pC_per_gn ?? null,
      fullScale: s.full_scale_gn,
      mass: s.mass_gram,
      noiseDensity: curve(s.noise_density_ugn_per_sqrtHz),
      capacitance: s.capacitance_pF ?? null,
      resonance: s.resonance_Hz,
      qualityFactor: s.quality_factor,
      lowLimit: s.low_limit_Hz ?? null,
      lowLimitLoss: s.low_limit_loss_percent ?? null,
      biasMin: s.bias_min_V ?? null,
      biasMax: s.bias_max_V ?? null,
      temperatureMin: s.temperature_min_degC,
      temperatureMax: s.temperature_max_degC,
      deviation: curve(s.deviation_curve_degC_percent),
    })),
  mounts: () =>
    Object.entries<any>(CASES.mounts).map(([id, m]) => ({
      mount: id,
      mountMass: m.hardware_mass_gram,
      stiffness: m.stiffness_N_per_m,
    })),
  cables: () =>
    Object.entries<any>(CASES.cables).map(([id, c]) => ({
      cable: id,
      cableCapacitance: c.capacitance_pF,
      cableMass: c.effective_mass_gram,
    })),
  inputs: () =>
    Object.entries<any>(CASES.inputs).map(([id, i]) => ({
      input: id,
      mode: i.kind,
      range: i.range_V,
      dynamicRange: i.dynamic_range_dB,
      sampleRate: i.sample_rate_Hz,
      couplingPoles: list(i.ac_poles_Hz),
      supply: i.supply_V ?? null,
      supplyCurrent: i.supply_current_mA ?? null,
      sourceDrop: i.current_source_drop_V ?? null,
      biasFloor: i.bias_floor_V ?? null,
      sensorCurrent: i.sensor_current_mA ?? null,
      gain: i.gain_mV_per_pC ?? null,
      noiseVoltage: i.noise_voltage_nV_per_sqrtHz ?? null,
      feedbackCapacitance: i.feedback_capacitance_pF ?? null,
      timeConstant: i.time_constant_s ?? null,
      outputLimit: i.output_limit_V ?? null,
    })),
};

const heading = ({ title, unit }: { title: string; unit?: string }) =>
  unit && unit !== '1' ? `${title}, ${unit}` : title;

/** The twelve worked cases as a plan workbook with our own headings. */
export const caseSheets = (): CaseSheet[] =>
  (Object.keys(ROWS) as (keyof typeof ROWS)[]).map((table) => {
    const rows = ROWS[table]();
    const fields = fieldsOf(table).filter(({ key }) => rows.some((row) => key in row));
    const name = table.charAt(0).toUpperCase() + table.slice(1);
    return { name, cells: [fields.map(heading), ...rows.map((row) => fields.map(({ key }) => row[key] ?? null))] };
  });
