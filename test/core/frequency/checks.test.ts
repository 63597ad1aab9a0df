import { analyserLimit, delayPhase } from '../../../src/core/frequency/analyser';
import { cableDriveLimit, currentNeeded } from '../../../src/core/frequency/cable';
import {
  cornerAllowed,
  cornerFromLimit,
  cornerFromTimeConstant,
  frequencyOverCorner,
  frequencyOverCornerAtPhase,
  lossOfDecibels,
  settlingTime,
} from '../../../src/core/frequency/corner';
import { polesLimit } from '../../../src/core/frequency/poles';
import { pulseError } from '../../../src/core/frequency/pulse';
import { pulseOvershoot } from '../../../src/core/frequency/pulse-resonance';
import { frequencyOverResonance, mountedResonance, twoBodyResonance } from '../../../src/core/frequency/resonance';
import { resonanceGain } from '../../../src/core/frequency/response';
import { usableSpan } from '../../../src/core/frequency/span';
import { inertiaForce } from '../../../src/core/mass/holding';
import { describeChecks, type Calls, type Inputs } from '../published-checks';

const G = 9.80665;
const span = (i: Inputs) => {
  const found = usableSpan({
    lowPoles: i.corners_Hz,
    resonance: i.resonance_Hz,
    qualityFactor: i.Q,
    reference: i.reference_Hz,
    tolerance: i.tolerance_percent / 100,
  });
  if (!found) throw new Error('the span is empty');
  return found;
};
const twoBodies = (i: Inputs) =>
  twoBodyResonance(i.base_gram / 1000, i.seismic_gram / 1000, i.sensor_resonance_Hz, i.mount_N_per_m);

const CALLS: Calls = {
  'frequency over corner for a loss': (i) => frequencyOverCorner(i.loss_percent / 100),
  'frequency over corner for a loss in decibel': (i) => frequencyOverCorner(lossOfDecibels(i.loss_dB)),
  'frequency over corner for a phase lead': (i) => frequencyOverCornerAtPhase((i.phase_deg * Math.PI) / 180),
  'time constant from a stated low limit': (i) =>
    cornerFromTimeConstant(cornerFromLimit(i.low_limit_Hz, i.loss_percent / 100)),
  'frequency of a loss with several poles': (i) => polesLimit(i.corners_Hz, i.loss_percent / 100),
  'settling time of a step': (i) => settlingTime(i.corner_Hz, i.step_V, i.residue_V),
  'largest corner for a loss': (i) => cornerAllowed(i.low_Hz, i.loss_percent / 100, []),
  'frequency over resonance for a rise': (i) => frequencyOverResonance(i.rise_percent / 100, i.Q),
  'frequency over resonance for a fall, damped': (i) =>
    frequencyOverResonance(i.fall_percent / 100, 1 / (2 * i.damping)),
  'rise at a fraction of an undamped resonance': (i) => (resonanceGain(1, Infinity, i.fraction) - 1) * 100,
  'resonance needed, undamped': (i) => i.high_Hz / frequencyOverResonance(i.rise_percent / 100, Infinity),
  'mounted resonance, exact two degrees of freedom': twoBodies,
  'mounted resonance, lower bound': (i) => mountedResonance(i.sensor_resonance_Hz, i.mass_gram / 1000, i.mount_N_per_m),
  'error of the lower bound of the mounted resonance': (i) => {
    const mass = (i.base_gram + i.seismic_gram) / 1000;
    return (mountedResonance(i.sensor_resonance_Hz, mass, i.mount_N_per_m) / twoBodies(i) - 1) * 100;
  },
  'inertia force on a mount': (i) => inertiaForce(i.mass_gram / 1000, i.high_peak_gn * G, 0),
  'cable drive limit': (i) =>
    cableDriveLimit(i.supply_mA / 1000, i.sensor_mA / 1000, i.capacitance_nF * 1e-9, i.peak_V),
  'supply current needed': (i) =>
    currentNeeded(i.high_Hz, i.sensor_mA / 1000, i.capacitance_nF * 1e-9, i.peak_V) * 1000,
  'phase of a delay between channels': (i) => (delayPhase(i.frequency_Hz, i.delay_us * 1e-6) * 180) / Math.PI,
  'analyser limit from the sample rate': (i) => analyserLimit(i.sample_rate_Hz),
  'low end of the span': (i) => span(i).low,
  'high end of the span': (i) => span(i).high,
  'peak error of a half-sine through one pole': (i) => pulseError('peak', i.time_constant_over_duration) * 100,
  'undershoot of a half-sine through one pole': (i) => pulseError('undershoot', i.time_constant_over_duration) * 100,
  'velocity change error of a half-sine through one pole': (i) =>
    pulseError('velocity', i.time_constant_over_duration) * 100,
  'peak error of a half-sine through a second-order sensor': (i) =>
    pulseOvershoot(i.resonance_times_duration, 1 / (2 * i.damping)) * 100,
  'shortest half-sine for a resonance': (i) => (i.resonance_times_duration / i.resonance_Hz) * 1000,
};

describeChecks('frequency span', CALLS);
