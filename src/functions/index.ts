import type { AnyFunction } from './define';
// level and dynamic range
import { dynamicRange } from './level/dynamic-range';
import { signalToNoise } from './level/signal-to-noise';
import { headroom } from './level/headroom';
import { ceiling } from './level/ceiling';
import { ceilingCause } from './level/ceiling-cause';
import { noiseBand } from './level/noise-band';
import { noiseInput } from './level/noise-input';
import { noiseCharge } from './level/noise-charge';
import { noiseSum } from './level/noise-sum';
import { sensitivityCharge } from './level/sensitivity-charge';
import { sensitivityLeast } from './level/sensitivity-least';
import { sensitivityMost } from './level/sensitivity-most';

// frequency span
import { frequencySpan } from './frequency/frequency-span';
import { frequencyLow } from './frequency/frequency-low';
import { frequencyHigh } from './frequency/frequency-high';
import { resonanceMounted } from './frequency/resonance-mounted';
import { cableLimit } from './frequency/cable-limit';

// mass loading
import { massRatio } from './mass/mass-ratio';
import { massShift } from './mass/mass-shift';
import { massLevel } from './mass/mass-level';
import { massAllowed } from './mass/mass-allowed';
import { localMassPlate } from './mass/local-mass-plate';
import { localMassImpedance } from './mass/local-mass-impedance';

// thermal
import { thermalBand } from './thermal/thermal-band';
import { thermalLow } from './thermal/thermal-low';
import { thermalHigh } from './thermal/thermal-high';
import { thermalWorst } from './thermal/thermal-worst';
import { thermalHalfband } from './thermal/thermal-halfband';

// verdict
import { verdictAtleast } from './verdict/verdict-atleast';
import { verdictAtmost } from './verdict/verdict-atmost';
import { verdictWorst } from './verdict/verdict-worst';
import { verdictThermal } from './verdict/verdict-thermal';
import { verdictSpan } from './verdict/verdict-span';
import { verdictMode } from './verdict/verdict-mode';
import { missing } from './verdict/missing';

// trust

// choosing

// text and units
import { read } from './text/read';
import { convert } from './text/convert';

/** Every worksheet function name starts with this and a dot. */
export const NAMESPACE = 'CHAN';

/** The catalogue, in the order of the reference. */
export const FUNCTIONS: readonly AnyFunction[] = [
  // level and dynamic range
  dynamicRange,
  signalToNoise,
  headroom,
  ceiling,
  ceilingCause,
  noiseBand,
  noiseInput,
  noiseCharge,
  noiseSum,
  sensitivityCharge,
  sensitivityLeast,
  sensitivityMost,

  // frequency span
  frequencySpan,
  frequencyLow,
  frequencyHigh,
  resonanceMounted,
  cableLimit,

  // mass loading
  massRatio,
  massShift,
  massLevel,
  massAllowed,
  localMassPlate,
  localMassImpedance,

  // thermal
  thermalBand,
  thermalLow,
  thermalHigh,
  thermalWorst,
  thermalHalfband,

  // verdict
  verdictAtleast,
  verdictAtmost,
  verdictWorst,
  verdictThermal,
  verdictSpan,
  verdictMode,
  missing,

  // trust

  // choosing

  // text and units
  read,
  convert,
];

const byName = new Map<string, AnyFunction>();
/** The declaration of "MASS.RATIO", whatever its case. */
export const functionByName = (name: string): AnyFunction | undefined => {
  if (byName.size === 0) FUNCTIONS.forEach((f) => byName.set(f.name, f));
  return byName.get(name.toUpperCase());
};
