import type { UnitId } from '../../core/units';

/** What is possible at all, in the documented unit; only for telling columns apart, never a check. Common practice, no source. */
const BY_UNIT: Readonly<Partial<Record<UnitId, readonly [number, number]>>> = {
  g: [1e-7, 2e5],
  Hz: [0, 1e6],
  '°C': [-273.15, 1200],
  gram: [0, 1e9],
  '%': [0, 100],
  'mV/g': [1e-3, 2e4],
  'pC/g': [1e-3, 2e4],
  'N/m': [1e3, 1e13],
  pF: [0, 1e7],
  V: [0, 400],
  dB: [0, 250],
  mA: [0, 100],
  'mV/pC': [1e-4, 1e5],
  'nV/√Hz': [0, 1e5],
  s: [0, 1e4],
  N: [0, 1e5],
  '%/K': [-5, 5],
  'mg/K': [-1e4, 1e4],
};
const BY_FIELD: Readonly<Record<string, readonly [number, number]>> = {
  'sensors.mass': [1e-3, 5e3],
  'mounts.mountMass': [0, 2e3],
  'cables.cableMass': [0, 500],
  'channels.levelLow': [1e-7, 2e3],
  'channels.levelHigh': [1e-4, 2e5],
  'sensors.resonance': [10, 1e6],
  'sensors.qualityFactor': [0.3, 500],
  'sensors.lowLimit': [0, 200],
  'channels.bandLow': [0, 2e4],
  'sensors.axes': [1, 6],
  'sensors.quantity': [0, 1e5],
  'inputs.sampleRate': [1, 1e8],
  'inputs.dynamicRange': [20, 250],
  'channels.lineSpacing': [1e-4, 1e3],
};

export const isPlausible = (value: number, field: string, unit: UnitId | undefined): boolean => {
  const range = BY_FIELD[field] ?? (unit === undefined ? undefined : BY_UNIT[unit]);
  return range === undefined || (value >= range[0] && value <= range[1]);
};
