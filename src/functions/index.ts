import type { AnyFunction } from './define';
// level and dynamic range
import { sensitivityCharge } from './level/sensitivity-charge';
import { sensitivityLeast } from './level/sensitivity-least';
import { sensitivityMost } from './level/sensitivity-most';

// frequency span

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

/** Every worksheet function name starts with this and a dot. */
export const NAMESPACE = 'CHAN';

/** The catalogue, in the order of the reference. */
export const FUNCTIONS: readonly AnyFunction[] = [
  // level and dynamic range
  sensitivityCharge,
  sensitivityLeast,
  sensitivityMost,

  // frequency span

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
];

const byName = new Map<string, AnyFunction>();
/** The declaration of "MASS.RATIO", whatever its case. */
export const functionByName = (name: string): AnyFunction | undefined => {
  if (byName.size === 0) FUNCTIONS.forEach((f) => byName.set(f.name, f));
  return byName.get(name.toUpperCase());
};
