import { describeInverses, number as n } from '../inverse';
import { cableLengthAllowed } from '../../../src/functions/mass/cable-length-allowed';
import { cableLengthNeeded } from '../../../src/functions/mass/cable-length-needed';
import { cableMass } from '../../../src/functions/mass/cable-mass';
import { cableShift } from '../../../src/functions/mass/cable-shift';
import { cableStiffness } from '../../../src/functions/mass/cable-stiffness';
import { heightAllowed } from '../../../src/functions/mass/height-allowed';
import { impedanceBeam } from '../../../src/functions/mass/impedance-beam';
import { impedancePlate } from '../../../src/functions/mass/impedance-plate';
import { localMassBeam } from '../../../src/functions/mass/local-mass-beam';
import { localMassImpedance } from '../../../src/functions/mass/local-mass-impedance';
import { localMassNeeded } from '../../../src/functions/mass/local-mass-needed';
import { localMassPlate } from '../../../src/functions/mass/local-mass-plate';
import { massAllowed } from '../../../src/functions/mass/mass-allowed';
import { massAllowedExact } from '../../../src/functions/mass/mass-allowed-exact';
import { massFrequencyLimit } from '../../../src/functions/mass/mass-frequency-limit';
import { massLevel } from '../../../src/functions/mass/mass-level';
import { massLevelExact } from '../../../src/functions/mass/mass-level-exact';
import { massRatio } from '../../../src/functions/mass/mass-ratio';
import { massRatioAllowed } from '../../../src/functions/mass/mass-ratio-allowed';
import { massRotary } from '../../../src/functions/mass/mass-rotary';
import { massShift } from '../../../src/functions/mass/mass-shift';
import { massSplit } from '../../../src/functions/mass/mass-split';
import { massSum } from '../../../src/functions/mass/mass-sum';
import { mountForce } from '../../../src/functions/mass/mount-force';
import { mountLevelAllowed } from '../../../src/functions/mass/mount-level-allowed';
import { mountMargin } from '../../../src/functions/mass/mount-margin';
import { mountStress } from '../../../src/functions/mass/mount-stress';
import { peakDrop } from '../../../src/functions/mass/peak-drop';
import { peakShiftAllowed } from '../../../src/functions/mass/peak-shift-allowed';
import { massSpread } from '../../../src/functions/mass/mass-spread';

describeInverses('mass loading', [
  {
    title: 'MASS.ALLOWED keeps MASS.RATIO',
    inputs: [
      [50, 500],
      [0.05, 0.5],
      [0, 1],
      [0, 1],
    ],
    target: ([, limit]) => limit!,
    reached: ([local, limit, mount, cable]) =>
      n(massRatio, [n(massAllowed, [local, limit, mount, cable]), mount, cable, local]),
  },
  {
    title: 'LOCAL.MASS.NEEDED keeps MASS.RATIO',
    inputs: [
      [0.1, 50],
      [0, 5],
      [0, 5],
      [0.01, 1],
    ],
    target: ([, , , limit]) => limit!,
    reached: ([sensor, mount, cable, limit]) =>
      n(massRatio, [sensor, mount, cable, n(localMassNeeded, [sensor, mount, cable, limit])]),
  },
  {
    title: 'MASS.SPLIT keeps MASS.SUM of both units at one point',
    inputs: [
      [100, 500],
      [0.1, 0.5],
      [0, 4],
      [0, 1],
      [0, 1],
    ],
    target: ([, limit]) => limit!,
    reached: ([local, limit, first, mount, cable]) =>
      n(massSum, [[[first!, n(massSplit, [local, limit, first, mount, cable]) + mount! + cable!]], local]),
  },
  {
    title: 'MASS.RATIO.ALLOWED keeps MASS.SHIFT',
    inputs: [[0.1, 90]],
    target: ([drop]) => -drop!,
    reached: ([drop]) => n(massShift, [n(massRatioAllowed, [drop])]),
  },
  {
    title: 'MASS.RATIO.ALLOWED keeps MASS.SPREAD of a roving sensor',
    inputs: [[0.1, 90]],
    target: ([drop]) => drop!,
    reached: ([drop]) => n(massSpread, [n(massRatioAllowed, [drop, 'frequency'])]),
  },
  ...(['mass', 'plate', 'beam'] as const).map((model) => ({
    title: `MASS.RATIO.ALLOWED keeps MASS.LEVEL, ${model}`,
    inputs: [[0.1, 90]] as const,
    target: ([drop]: readonly number[]) => -drop!,
    reached: ([drop]: readonly number[]) => n(massLevel, [n(massRatioAllowed, [drop, 'level', model]), model]),
  })),
  {
    title: 'MASS.ALLOWED.EXACT uses the tolerance of MASS.LEVEL.EXACT up',
    inputs: [
      [1, 500],
      [-180, 180],
      [1, 50],
    ],
    target: ([, , tolerance]) => tolerance!,
    reached: ([local, phase, tolerance]) =>
      Math.abs(n(massLevelExact, [n(massAllowedExact, [local, phase, tolerance, 0, 0]), local, phase])),
  },
  {
    title: 'MASS.FREQUENCY.LIMIT keeps MASS.RATIO on a plate',
    inputs: [
      [1, 500],
      [0.1, 20],
      [0.01, 1],
    ],
    target: ([, , limit]) => limit!,
    reached: ([impedance, added, limit]) =>
      n(massRatio, [added, 0, 0, n(localMassImpedance, [impedance, n(massFrequencyLimit, [impedance, added, limit])])]),
  },
  {
    title: 'LOCAL.MASS.PLATE is LOCAL.MASS.IMPEDANCE of IMPEDANCE.PLATE',
    inputs: [
      [10, 5000],
      [0.1, 10],
      [1, 300],
      [500, 9000],
      [0, 0.45],
    ],
    target: (plate) => n(localMassPlate, plate),
    reached: ([frequency, ...plate]) => n(localMassImpedance, [n(impedancePlate, plate), frequency]),
  },
  ...(['interior', 'end'] as const).map((point) => ({
    title: `LOCAL.MASS.BEAM is LOCAL.MASS.IMPEDANCE of IMPEDANCE.BEAM, ${point}`,
    inputs: [
      [10, 5000],
      [0.01, 100],
      [0.01, 10],
    ] as const,
    target: (beam: readonly number[]) => n(localMassBeam, [...beam, point]),
    reached: (beam: readonly number[]) => n(localMassImpedance, [n(impedanceBeam, [...beam, point]), beam[0]]),
  })),
  {
    title: 'PEAK.SHIFT.ALLOWED keeps PEAK.DROP',
    inputs: [
      [1, 90],
      [0.1, 5],
    ],
    target: ([drop]) => -drop!,
    reached: ([drop, damping]) => n(peakDrop, [n(peakShiftAllowed, [drop, damping]), damping]),
  },
  {
    title: 'HEIGHT.ALLOWED keeps MASS.ROTARY',
    inputs: [
      [10, 500],
      [0.01, 1],
    ],
    target: ([, limit]) => limit!,
    reached: ([wavelength, limit]) => n(massRotary, [wavelength, n(heightAllowed, [wavelength, limit])]),
  },
  {
    title: 'CABLE.LENGTH.ALLOWED keeps CABLE.MASS',
    inputs: [
      [0.01, 2],
      [0.5, 10],
    ],
    target: ([mass]) => mass!,
    reached: ([mass, perLength]) => n(cableMass, [n(cableLengthAllowed, [mass, perLength]), perLength]),
  },
  {
    title: 'CABLE.LENGTH.NEEDED keeps CABLE.SHIFT by CABLE.STIFFNESS',
    inputs: [
      [1e-6, 1e-3],
      [0.1, 100],
      [5, 2000],
      [0.01, 5],
    ],
    target: ([, , , shift]) => shift!,
    reached: ([stiffness, local, frequency, shift]) => {
      const length = n(cableLengthNeeded, [stiffness, local, frequency, shift]);
      return n(cableShift, [n(cableStiffness, [stiffness, length]), local, frequency]);
    },
  },
  {
    title: 'MOUNT.LEVEL.ALLOWED keeps MOUNT.MARGIN over MOUNT.FORCE',
    inputs: [
      [1, 500],
      [0.1, 100],
      [1, 10],
    ],
    target: ([, , reserve]) => reserve!,
    reached: ([holding, mass, reserve]) =>
      n(mountMargin, [holding, n(mountForce, [mass, n(mountLevelAllowed, [holding, mass, reserve])])]),
  },
  {
    title: 'MOUNT.STRESS times the area is the force',
    inputs: [
      [0.1, 100],
      [1, 1000],
    ],
    target: ([force]) => force!,
    reached: ([force, area]) => n(mountStress, [force, area]) * 1e3 * area! * 1e-6,
  },
]);
