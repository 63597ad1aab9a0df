import { biasSwing, allowedSensitivity } from '../../../src/core/level/ceiling';
import { effectiveBits, idealRange, quantisationNoise, quantisationStep } from '../../../src/core/level/converter';
import { coherenceLimit, octaveBandwidth, rmsBias } from '../../../src/core/level/detector';
import { decibels } from '../../../src/core/level/margin';
import {
  allowedDensity,
  bandNoise,
  chargeNoiseDensity,
  inputNoise,
  inputNoiseDensity,
  modelNoise,
  rootSumSquare,
  whiteNoise,
} from '../../../src/core/level/noise';
import { randomResponse } from '../../../src/core/level/one-mode';
import { accelerationOfDisplacement, accelerationOfVelocity } from '../../../src/core/level/sine';
import { slopeExponent, tableArea } from '../../../src/core/level/spectrum';
import { combinedPeak, combinedRms, largestPeak, shareOutside } from '../../../src/core/level/statistics';
import { fromSi, toSi, type UnitId } from '../../../src/core/units';
import { describeChecks, type Calls } from '../published-checks';

const G = 9.80665;
const MICRO_G = 9.80665e-6;
const curve = (pairs: readonly (readonly [number, number])[], unit: UnitId) => ({
  x: pairs.map(([x]) => x),
  y: pairs.map(([, y]) => toSi(y, unit)),
});
const spectrumRms = (pairs: readonly (readonly [number, number])[], low?: number, high?: number): number => {
  const table = curve(pairs, 'g²/Hz');
  return Math.sqrt(tableArea(table, 1, low ?? table.x[0]!, high ?? table.x[table.x.length - 1]!)) / G;
};
const charge = (i: { noise_voltage_nV_per_sqrtHz: number; capacitance_pF: number; bandwidth_Hz: number }) =>
  whiteNoise(
    chargeNoiseDensity(
      i.noise_voltage_nV_per_sqrtHz * 1e-9,
      i.capacitance_pF * 0.7e-12,
      i.capacitance_pF * 0.2e-12,
      i.capacitance_pF * 0.1e-12,
    ),
    i.bandwidth_Hz,
  );

const CALLS: Calls = {
  'range between two amplitudes': (i) => decibels(i.high_gn * G, i.low_gn * G),
  'displacement peak to peak of a sine to acceleration peak': (i) =>
    accelerationOfDisplacement(i.frequency_Hz, i.displacement_pkpk_mm / 2000) / G,
  'velocity peak of a sine to acceleration peak': (i) =>
    accelerationOfVelocity(i.frequency_Hz, i.velocity_peak_mm_per_s / 1000) / G,
  'probability that a Gaussian signal lies outside k sigma': (i) => shareOutside(i.k),
  'largest expected peak of narrow-band noise': (i) => largestPeak(i.frequency_Hz * i.duration_s),
  'r.m.s. response of one mode to a flat spectrum': (i) =>
    randomResponse(i.natural_frequency_Hz, i.Q, toSi(i.psd_gn2_per_Hz, 'g²/Hz')) / G,
  'r.m.s. of sine plus random': (i) => combinedRms(i.sine_peak_gn * G, i.random_rms_gn * G) / G,
  'planning peak of sine plus random': (i) => combinedPeak(i.sine_peak_gn, i.random_rms_gn, i.sigmas),
  'r.m.s. of a published spectrum': (i) => spectrumRms(i.psd_Hz_gn2_per_Hz),
  'r.m.s. of a spectrum with straight log-log lines': (i) => spectrumRms(i.psd_Hz_gn2_per_Hz),
  'r.m.s. of part of a spectrum': (i) => spectrumRms(i.psd_Hz_gn2_per_Hz, i.low_Hz, i.high_Hz),
  'acceleration spectral density unit': (i) => toSi(i.psd_gn2_per_Hz, 'g²/Hz'),
  'exponent of a slope in dB per octave': (i) => slopeExponent(i.slope_dB_per_octave),
  'band noise of a density table': (i) =>
    bandNoise(curve(i.density_Hz_ugn_per_sqrtHz, 'µg/√Hz'), i.low_Hz, i.high_Hz) / MICRO_G,
  'white noise in a band': (i) => whiteNoise(i.density_ugn_per_sqrtHz, i.bandwidth_Hz),
  'white plus 1/f noise in a band': (i) => modelNoise(i.white_ugn_per_sqrtHz, i.corner_Hz, i.low_Hz, i.high_Hz),
  'noise in one Hann line': (i) => bandNoise({ x: [10], y: [i.density_ugn_per_sqrtHz] }, 10, 500, i.line_spacing_Hz),
  'relative bandwidth of a third octave, base two': (i) => octaveBandwidth(i.centre_Hz, 3, 'two'),
  'relative bandwidth of a third octave, base ten': (i) => octaveBandwidth(i.centre_Hz, 3, 'ten'),
  'largest white density that keeps a signal-to-noise ratio': (i) =>
    allowedDensity(i.low_rms_gn * 1e6, i.snr_dB, i.high_Hz - i.low_Hz),
  'quantisation step': (i) => quantisationStep(i.bits, i.range_V) * 1e6,
  'quantisation noise': (i) => quantisationNoise(i.bits, i.range_V) * 1e6,
  'ideal signal-to-noise ratio of a converter': (i) => idealRange(i.bits),
  'effective bits for a dynamic range': (i) => effectiveBits(i.dynamic_range_dB),
  'input noise referred to the sensor': (i) =>
    (inputNoise(i.range_V, i.dynamic_range_dB) / toSi(i.sensitivity_mV_per_gn, 'mV/g') / G) * 1000,
  'input noise density': (i) => inputNoiseDensity(i.range_V, i.dynamic_range_dB, i.sample_rate_Hz) * 1e6,
  'charge amplifier noise': (i) => charge(i) * 1e12,
  'charge amplifier noise at the sensor': (i) => charge(i) / toSi(i.sensitivity_pC_per_gn, 'pC/g') / MICRO_G,
  'root of the sum of squares of noise': (i) => rootSumSquare(i.parts_mgn),
  'bias swing limit of a constant-current sensor': (i) =>
    biasSwing(i.supply_V, i.bias_min_V, i.bias_max_V, i.drop_V, i.floor_V) / toSi(i.sensitivity_mV_per_gn, 'mV/g') / G,
  'largest sensitivity for a range with margin 1.5': (i) =>
    fromSi(allowedSensitivity(i.range_V, i.high_peak_gn * G, 1.5), 'mV/g'),
  'range needed with margins': (i) => decibels(i.high_gn, i.low_gn) + i.snr_dB + decibels(i.headroom_factor, 1),
  'r.m.s. reading error from uncorrelated noise': (i) => rmsBias(i.snr_dB) * 100,
  'largest coherence with output noise': (i) => coherenceLimit(i.snr_dB),
  'headroom in standard deviations': (i) => i.upper_limit_gn / i.random_rms_gn,
};

describeChecks('level and dynamic range', CALLS);
