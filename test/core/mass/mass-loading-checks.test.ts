import { eigs } from 'mathjs';
import {
  allowedSensorMass,
  frequencyShift,
  levelEffect,
  massRatio,
  ratioForFrequencyDrop,
  ratioForLevelDrop,
} from '../../../src/core/mass/loading';
import { cableStiffness, rotaryEffect, stiffnessShift } from '../../../src/core/mass/added-parts';
import { beamModalMassShare, beamRoot, type Beam } from '../../../src/core/mass/beam-modes';
import { exactFrequencyRatio } from '../../../src/core/mass/beam-with-mass';
import { clampedCircularModalMassShare, clampedCircularRoot } from '../../../src/core/mass/circular-plate';
import { modulus } from '../../../src/core/mass/complex';
import { loadingFactor } from '../../../src/core/mass/modification';
import {
  beamPointImpedance,
  frequencyForRatio,
  localMassOfImpedance,
  platePointImpedance,
  rigidLocalMass,
} from '../../../src/core/mass/local-mass';
import { loadedFrequencies, modalAccelerance, type Mode } from '../../../src/core/mass/modes';
import { countPlateModes, plateModalDensity, plateWavelength } from '../../../src/core/mass/plate-waves';
import { peakDrop, rovingSpread, summedMassRatio } from '../../../src/core/mass/several-sensors';
import { describeChecks, type Inputs } from '../published-checks';

const GRAM = 1e-3;
const MM = 1e-3;
const PERCENT = 0.01;
const DEGREE = Math.PI / 180;

const plate = (given: Inputs) => ({
  modulus: given.youngs_modulus_GPa * 1e9,
  density: given.density_kg_per_m3,
  poisson: given.poisson_ratio,
  thickness: given.thickness_mm * MM,
});
const beam = (given: Inputs) => ({
  bendingStiffness: given.bending_stiffness_N_m2,
  massPerLength: given.mass_per_length_kg_per_m,
});

/** Modes of a chain, fixed at the first spring, seen at its free end; by another library's eigenvalue solver. */
const chainModes = ({ masses_kg: masses, stiffness_N_per_m: stiffness }: Inputs): Mode[] => {
  const size: number = masses.length;
  const scaled = masses.map((row: number, i: number) =>
    masses.map((column: number, k: number) => {
      const between = Math.abs(i - k) === 1 ? -stiffness : 0;
      const own = i === k ? (i === size - 1 ? 1 : 2) * stiffness : between;
      return own / Math.sqrt(row * column);
    }),
  );
  return eigs(scaled).eigenvectors.map(({ value, vector }) => ({
    frequency: Math.sqrt(value as number) / (2 * Math.PI),
    modalMass: 1,
    shape: (vector as unknown as number[])[size - 1]! / Math.sqrt(masses[size - 1]),
  }));
};

describeChecks('mass loading', {
  'first natural frequency of a fixed-free chain with a mass added at the free end': (given) =>
    loadedFrequencies(chainModes(given), given.added_kg)[0]!,
  "ratio of loaded to free driving-point accelerance of the chain's free end": (given) =>
    modulus(
      loadingFactor(modalAccelerance(chainModes(given), given.loss_factor / 2, given.frequency_Hz), given.added_kg),
    ),
  'frequency shift of a mode': (given) => frequencyShift(given.mass_ratio) / PERCENT,
  'level effect on a mass-like structure': (given) => levelEffect(given.mass_ratio, 'mass').level / PERCENT,
  'largest mass ratio for a frequency drop': (given) => ratioForFrequencyDrop(given.drop_percent * PERCENT),
  'largest mass ratio for a level drop': (given) => ratioForLevelDrop(given.drop_percent * PERCENT, 'mass'),
  'allowed sensor mass': (given) =>
    allowedSensorMass(given.local_mass_gram * GRAM, given.ratio, given.mount_gram * GRAM, given.cable_gram * GRAM) /
    GRAM,
  'level loss at the old peak for a shift in units of damping': (given) =>
    peakDrop(given.shift_over_damping * 0.01, 0.01) / PERCENT,
  'characteristic root of a cantilever': (given) => beamRoot('cantilever', given.mode),
  'characteristic root of a free-free or clamped beam': (given) => beamRoot('free beam', given.mode),
  'eigenvalue squared of the clamped circular plate, first mode': (given) => clampedCircularRoot(given.mode) ** 2,
  'modal mass over total mass, uniform beam': (given) => {
    const names: Record<string, Beam> = {
      cantilever: 'cantilever',
      'clamped-clamped': 'clamped beam',
      'free-free': 'free beam',
    };
    return beamModalMassShare(names[given.beam]!, given.mode, given.position);
  },
  'modal mass over total mass, clamped circular plate, centre, first mode': (given) =>
    clampedCircularModalMassShare(given.mode, 0),
  'frequency ratio of a cantilever with a tip mass': (given) =>
    exactFrequencyRatio('cantilever, mass at the tip', given.mass_over_total),
  'frequency ratio of a simply supported beam with a mass at mid-span': (given) =>
    exactFrequencyRatio('simply supported beam, mass at mid-span', given.mass_over_total),
  'local mass of a rigid free part off its centre': (given) =>
    rigidLocalMass(given.mass_gram * GRAM, given.inertia_kg_m2, given.offset_mm * MM) / GRAM,
  'point impedance of an infinite thin plate': (given) => platePointImpedance(plate(given)),
  'local mass of a plate': (given) => localMassOfImpedance(given.impedance_N_s_per_m, given.frequency_Hz) / GRAM,
  'frequency at which a mass reaches a given ratio on a plate': (given) =>
    frequencyForRatio(given.impedance_N_s_per_m, given.mass_gram * GRAM, given.ratio),
  'level effect on a plate': (given) => levelEffect(given.ratio, 'plate').level / PERCENT,
  'phase effect on a plate': (given) => levelEffect(given.ratio, 'plate').phase / DEGREE,
  'ratio for a level drop on a plate': (given) => ratioForLevelDrop(given.drop_percent * PERCENT, 'plate'),
  'magnitude of the point impedance of an infinite beam': (given) =>
    beamPointImpedance(beam(given), given.frequency_Hz, 'interior'),
  'magnitude of the point impedance at the free end of a semi-infinite beam': (given) =>
    beamPointImpedance(beam(given), given.frequency_Hz, 'end'),
  'level effect on a beam': (given) => levelEffect(given.ratio, 'beam').level / PERCENT,
  'bending wavelength of a plate': (given) => plateWavelength(plate(given), given.frequency_Hz) / MM,
  'modal density of a plate': (given) => plateModalDensity(plate(given), given.area_m2),
  'modes of a simply supported plate below a frequency': (given) =>
    countPlateModes(plate(given), given.length_m, given.width_m, given.below_Hz),
  'summed mass ratio of sensors on one mode': (given) =>
    summedMassRatio(
      given.masses_gram.map((mass: number) => mass * GRAM),
      given.modal_mass_kg,
      given.mode_shape,
    ),
  'frequency spread when one sensor roves from a node to an antinode': (given) =>
    rovingSpread(given.mass_ratio) / PERCENT,
  'rotary to translational effect': (given) => rotaryEffect(given.wave_number_rad_per_m, given.height_mm * MM),
  'stiffness of a free cable length': (given) => cableStiffness(given.bending_stiffness_N_m2, given.length_mm * MM),
  "frequency shift from a cable's stiffness": (given) =>
    stiffnessShift(given.cable_N_per_m, given.modal_mass_gram * GRAM, given.frequency_Hz) / PERCENT,
  'mass ratio of several sensors at one point': (given) =>
    massRatio(
      given.totals_gram.reduce((sum: number, mass: number) => sum + mass * GRAM, 0),
      localMassOfImpedance(given.impedance_N_s_per_m, given.frequency_Hz),
    ),
});
