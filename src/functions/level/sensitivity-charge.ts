import { defineFunction } from '../define';

export const sensitivityCharge = defineFunction({
  name: 'SENSITIVITY.CHARGE',
  family: 'level and dynamic range',
  summary: 'Voltage sensitivity of a charge-output sensor behind its charge amplifier.',
  equation: 'S_V = S_q · G',
  args: {
    chargeSensitivity: { unit: 'pC/g', symbol: 'S_q', text: 'Charge sensitivity of the sensor.', above: 0 },
    gain: { unit: 'mV/pC', symbol: 'G', text: 'Gain of the charge amplifier.', above: 0 },
  },
  result: { unit: 'mV/g', symbol: 'S_V', text: 'Sensitivity at the analyser input.' },
  validity: 'Cable capacitance is without effect while the amplifier’s open-loop gain is large.',
  source: { kind: 'derivation', from: 'the output voltage of a charge amplifier is its gain times the charge' },
  compute: ({ chargeSensitivity, gain }) => chargeSensitivity * gain,
  examples: [
    { args: [1.2, 10], result: 12, within: 1e-12, from: 'by hand: 1.2 pC/g × 10 mV/pC' },
    { args: ['1 pC/(m/s²)', 1], result: 9.80665, within: 1e-12, from: 'by hand: 1 pC/(m/s²) = 9.80665 pC/g' },
  ],
});
