import type { UnitId } from '../core/units';
import { INPUT_MODES, OUTPUT_MODES, PURPOSES, ROLES, type TableName } from './fields';

/** How one key of a JSON plan becomes a field of the model. The key carries its unit. */
export type JsonField =
  | { readonly kind: 'number'; readonly to: string; readonly unit: UnitId; readonly field?: string }
  | { readonly kind: 'numbers'; readonly to: string; readonly unit: UnitId; readonly field?: string }
  | { readonly kind: 'pairs'; readonly to: string; readonly x: UnitId; readonly unit: UnitId }
  | { readonly kind: 'text'; readonly to: string }
  /** A day, as in 2026-11-30. */
  | { readonly kind: 'date'; readonly to: string }
  | { readonly kind: 'choice'; readonly to: string; readonly choices: readonly string[] };
export type JsonFields = Readonly<Record<string, JsonField>>;

const number = (to: string, unit: UnitId, field = to): JsonField => ({ kind: 'number', to, unit, field });
const text = (to: string): JsonField => ({ kind: 'text', to });
const date = (to: string): JsonField => ({ kind: 'date', to });
const choice = (to: string, choices: readonly string[]): JsonField => ({ kind: 'choice', to, choices });

const TEMPERATURES: JsonFields = {
  temperature_min_degC: number('temperatureMin', '°C'),
  temperature_max_degC: number('temperatureMax', '°C'),
};

export const SENSOR_KEYS: JsonFields = {
  description: text('description'),
  technology: text('technology'),
  output: choice('output', OUTPUT_MODES),
  axes: number('axes', '1'),
  sensitivity_mV_per_gn: number('sensitivity', 'mV/g'),
  sensitivity_pC_per_gn: number('chargeSensitivity', 'pC/g'),
  full_scale_gn: number('fullScale', 'g'),
  mass_gram: number('mass', 'gram'),
  noise_density_ugn_per_sqrtHz: { kind: 'pairs', to: 'noiseDensity', x: 'Hz', unit: 'µg/√Hz' },
  capacitance_pF: number('capacitance', 'pF'),
  resonance_Hz: number('resonance', 'Hz'),
  quality_factor: number('qualityFactor', '1'),
  low_limit_Hz: number('lowLimit', 'Hz'),
  low_limit_loss_percent: number('lowLimitLoss', '%'),
  bias_min_V: number('biasMin', 'V'),
  bias_max_V: number('biasMax', 'V'),
  ...TEMPERATURES,
  deviation_curve_degC_percent: { kind: 'pairs', to: 'deviation', x: '°C', unit: '%' },
  coefficient_percent_per_K: number('coefficient', '%/K'),
  coefficient_sign: choice('coefficientSign', ['signed', 'unsigned']),
  calibration_temperature_degC: number('calibrationTemperature', '°C'),
  zero_drift_mgn_per_K: number('zeroDrift', 'mg/K'),
  quantity: number('quantity', '1'),
  calibration_due: date('calibrationDue'),
};

/** A piece of a sensor type. */
export const PIECE_KEYS: JsonFields = {
  serial: text('serial'),
  calibration_due: date('calibrationDue'),
  sensitivity_mV_per_gn: number('sensitivity', 'mV/g'),
  sensitivity_pC_per_gn: number('chargeSensitivity', 'pC/g'),
};

export const MOUNT_KEYS: JsonFields = {
  description: text('description'),
  hardware_mass_gram: number('mass', 'gram', 'mountMass'),
  stiffness_N_per_m: number('stiffness', 'N/m'),
  holding_force_N: number('holdingForce', 'N'),
  ...TEMPERATURES,
};

export const CABLE_KEYS: JsonFields = {
  description: text('description'),
  capacitance_pF: number('capacitance', 'pF', 'cableCapacitance'),
  effective_mass_gram: number('mass', 'gram', 'cableMass'),
  ...TEMPERATURES,
};

export const INPUT_KEYS: JsonFields = {
  description: text('description'),
  kind: choice('mode', INPUT_MODES),
  range_V: number('range', 'V'),
  dynamic_range_dB: number('dynamicRange', 'dB'),
  sample_rate_Hz: number('sampleRate', 'Hz'),
  ac_poles_Hz: { kind: 'numbers', to: 'couplingPoles', unit: 'Hz', field: 'couplingPoles' },
  supply_V: number('supply', 'V'),
  supply_current_mA: number('supplyCurrent', 'mA'),
  current_source_drop_V: number('sourceDrop', 'V'),
  bias_floor_V: number('biasFloor', 'V'),
  sensor_current_mA: number('sensorCurrent', 'mA'),
  gain_mV_per_pC: number('gain', 'mV/pC'),
  noise_voltage_nV_per_sqrtHz: number('noiseVoltage', 'nV/√Hz'),
  feedback_capacitance_pF: number('feedbackCapacitance', 'pF'),
  time_constant_s: number('timeConstant', 's'),
  output_limit_V: number('outputLimit', 'V'),
  modules: number('modules', '1'),
  channels_per_module: number('moduleChannels', '1'),
};

export const REQUIREMENT_KEYS: JsonFields = {
  purpose: choice('purpose', PURPOSES),
  level_low_rms_gn: number('levelLow', 'g'),
  level_high_peak_gn: number('levelHigh', 'g'),
  band_low_Hz: number('bandLow', 'Hz'),
  band_high_Hz: number('bandHigh', 'Hz'),
  temperature_min_degC: number('temperatureLow', '°C'),
  temperature_max_degC: number('temperatureHigh', '°C'),
  thermal_tolerance_percent: number('thermalTolerance', '%'),
  span_tolerance_percent: number('spanTolerance', '%'),
  signal_to_noise_limit_dB: number('signalToNoiseLimit', 'dB'),
  headroom_limit_dB: number('headroomLimit', 'dB'),
  mass_ratio_limit: number('massRatioLimit', '1'),
  reference_frequency_Hz: number('referenceFrequency', 'Hz'),
};

export const CHANNEL_KEYS: JsonFields = {
  name: text('location'),
  group: text('group'),
  run: text('run'),
  run_start: date('runStart'),
  run_end: date('runEnd'),
  point: text('point'),
  direction: text('direction'),
  local_axes: text('localAxes'),
  sensor_axis: text('sensorAxis'),
  serial: text('serial'),
  calibration_due: date('calibrationDue'),
  input_channel: text('inputChannel'),
  panel: text('panel'),
  role: choice('role', ROLES),
  remarks: text('remarks'),
};

const AT: JsonFields = { at_frequency_Hz: number('frequency', 'Hz', 'bandHigh') };
const IMPEDANCE: JsonFields = { impedance_N_s_per_m: number('impedance', 'N·s/m', 'localMass') };
const MATERIAL: JsonFields = {
  youngs_modulus_Pa: number('modulus', '1', 'localMass'),
  density_kg_per_m3: number('density', 'kg/m³', 'localMass'),
  thickness_mm: number('thickness', 'mm', 'localMass'),
};

export const LOCAL_MASS_KEYS: Readonly<Record<string, JsonFields>> = {
  value: { mass_gram: number('mass', 'gram', 'localMass') },
  modal: { modal_mass_gram: number('modalMass', 'gram', 'localMass'), shape: number('shape', '1', '') },
  rigid: {
    mass_gram: number('mass', 'gram', 'localMass'),
    inertia_kg_m2: number('inertia', '1', 'localMass'),
    offset_mm: number('offset', 'mm', ''),
  },
  plate: { ...AT, ...IMPEDANCE, ...MATERIAL, poisson_ratio: number('poisson', '1', '') },
  beam: { ...AT, ...IMPEDANCE, ...MATERIAL, width_mm: number('width', 'mm', 'localMass') },
};

export const RECORD_TABLES = { sensors: SENSOR_KEYS, mounts: MOUNT_KEYS, cables: CABLE_KEYS, inputs: INPUT_KEYS };
export type RecordTable = keyof typeof RECORD_TABLES & TableName;
