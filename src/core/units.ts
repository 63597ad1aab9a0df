/**
 * The units in which worksheet arguments, results and our own sheets are documented.
 * Core calculates in SI; temperatures stay in °C, deviations are fractions of 1.
 */
export const UNITS = {
  '1': { quantity: 'ratio', toSi: 1, label: '' },
  '%': { quantity: 'fraction', toSi: 0.01, label: '%' },
  dB: { quantity: 'level difference', toSi: 1, label: 'dB' },
  g: { quantity: 'acceleration', toSi: 9.80665, label: 'g' },
  'm/s²': { quantity: 'acceleration', toSi: 1, label: 'm/s²' },
  'µg/√Hz': { quantity: 'acceleration noise density', toSi: 9.80665e-6, label: 'µg/√Hz' },
  'g²/Hz': { quantity: 'acceleration spectral density', toSi: 96.1703842225, label: 'g²/Hz' },
  'mV/g': { quantity: 'voltage sensitivity', toSi: 1e-3 / 9.80665, label: 'mV/g' },
  'pC/g': { quantity: 'charge sensitivity', toSi: 1e-12 / 9.80665, label: 'pC/g' },
  'mV/pC': { quantity: 'charge gain', toSi: 1e9, label: 'mV/pC' },
  'mg/K': { quantity: 'zero drift', toSi: 9.80665e-3, label: 'mg/K' },
  gram: { quantity: 'mass', toSi: 1e-3, label: 'gram' },
  kg: { quantity: 'mass', toSi: 1, label: 'kg' },
  Hz: { quantity: 'frequency', toSi: 1, label: 'Hz' },
  s: { quantity: 'time', toSi: 1, label: 's' },
  ms: { quantity: 'time', toSi: 1e-3, label: 'ms' },
  '°C': { quantity: 'temperature', toSi: 1, label: '°C' },
  K: { quantity: 'temperature difference', toSi: 1, label: 'K' },
  '%/K': { quantity: 'temperature coefficient', toSi: 0.01, label: '%/K' },
  V: { quantity: 'voltage', toSi: 1, label: 'V' },
  mA: { quantity: 'current', toSi: 1e-3, label: 'mA' },
  pF: { quantity: 'capacitance', toSi: 1e-12, label: 'pF' },
  'pF/m': { quantity: 'capacitance per length', toSi: 1e-12, label: 'pF/m' },
  'nV/√Hz': { quantity: 'voltage noise density', toSi: 1e-9, label: 'nV/√Hz' },
  'N/m': { quantity: 'stiffness', toSi: 1, label: 'N/m' },
  'N·s/m': { quantity: 'mechanical impedance', toSi: 1, label: 'N·s/m' },
  GPa: { quantity: 'elastic modulus', toSi: 1e9, label: 'GPa' },
  'kg/m³': { quantity: 'density', toSi: 1, label: 'kg/m³' },
  mm: { quantity: 'length', toSi: 1e-3, label: 'mm' },
  'mm²': { quantity: 'area', toSi: 1e-6, label: 'mm²' },
  m: { quantity: 'length', toSi: 1, label: 'm' },
  N: { quantity: 'force', toSi: 1, label: 'N' },
  'N·m': { quantity: 'torque', toSi: 1, label: 'N·m' },
  'mm/s': { quantity: 'velocity', toSi: 1e-3, label: 'mm/s' },
  deg: { quantity: 'angle', toSi: Math.PI / 180, label: '°' },
  'N·m²': { quantity: 'bending stiffness', toSi: 1, label: 'N·m²' },
  'kg/m': { quantity: 'mass per length', toSi: 1, label: 'kg/m' },
  'gram/m': { quantity: 'mass per length', toSi: 1e-3, label: 'gram/m' },
  'kg·m²': { quantity: 'moment of inertia', toSi: 1, label: 'kg·m²' },
  '1/Hz': { quantity: 'modal density', toSi: 1, label: '1/Hz' },
  'K/min': { quantity: 'temperature rate', toSi: 1 / 60, label: 'K/min' },
  mW: { quantity: 'power', toSi: 1e-3, label: 'mW' },
  kPa: { quantity: 'pressure', toSi: 1e3, label: 'kPa' },
  µε: { quantity: 'strain', toSi: 1e-6, label: 'µε' },
  'mg/µε': { quantity: 'base strain sensitivity', toSi: 9.80665e-3 / 1e-6, label: 'mg/µε' },
  'dB/oct': { quantity: 'spectral slope', toSi: 1, label: 'dB/oct' },
  Ω: { quantity: 'resistance', toSi: 1, label: 'Ω' },
  MΩ: { quantity: 'resistance', toSi: 1e6, label: 'MΩ' },
} as const satisfies Record<string, { quantity: string; toSi: number; label: string }>;

export type UnitId = keyof typeof UNITS;
export type QuantityName = (typeof UNITS)[UnitId]['quantity'];

export const toSi = (value: number, unit: UnitId): number => value * UNITS[unit].toSi;
export const fromSi = (si: number, unit: UnitId): number => si / UNITS[unit].toSi;
