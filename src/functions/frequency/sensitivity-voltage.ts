import { defineFunction } from '../define';

export const sensitivityVoltage = defineFunction({
  name: 'SENSITIVITY.VOLTAGE',
  family: 'frequency span',
  summary: 'Voltage sensitivity of a piezoelectric sensor without built-in electronics on its cable.',
  equation: 'S = S_q/(C_s + C_c)',
  args: {
    chargeSensitivity: { unit: 'pC/g', symbol: 'S_q', text: 'Charge sensitivity.', above: 0 },
    sensorCapacitance: { unit: 'pF', symbol: 'C_s', text: 'Capacitance of the sensor.', above: 0 },
    cableCapacitance: { unit: 'pF', symbol: 'C_c', text: 'Capacitance of the cable.', atLeast: 0 },
  },
  result: { unit: 'mV/g', symbol: 'S', text: 'Voltage sensitivity.' },
  validity: 'High-impedance input. Here the cable is part of the calibration: change its length and recalibrate.',
  source: { kind: 'derivation', from: 'V = Q/C' },

  compute: ({ chargeSensitivity, sensorCapacitance, cableCapacitance }) =>
    chargeSensitivity / (sensorCapacitance + cableCapacitance),

  examples: [
    { args: [10, 900, 100], result: 10, within: 1e-6, from: 'by hand: 10 pC/1000 pF' },
    { args: [10, 900, 1100], result: 5, within: 1e-6, from: 'by hand: 10 pC/2000 pF' },
  ],
});
