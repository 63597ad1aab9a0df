import { beamWaveSpeed, plateBendingStiffness, type BeamProperties, type PlateProperties } from './local-mass';

/** √(m″/B′), s/m². */
const stretch = (plate: PlateProperties): number =>
  Math.sqrt((plate.density * plate.thickness) / plateBendingStiffness(plate));

/** Bending wave number of a thin plate, rad/m: (ω²m″/B′)^¼. */
export const plateWaveNumber = (plate: PlateProperties, frequency: number): number =>
  Math.sqrt(2 * Math.PI * frequency * stretch(plate));

export const plateWavelength = (plate: PlateProperties, frequency: number): number =>
  (2 * Math.PI) / plateWaveNumber(plate, frequency);

export const beamWavelength = (beam: BeamProperties, frequency: number): number =>
  beamWaveSpeed(beam, frequency) / frequency;

/** Modes per Hz of a thin plate of this area (m²), the same at every frequency: (S/2)·√(m″/B′). */
export const plateModalDensity = (plate: PlateProperties, area: number): number => (area / 2) * stretch(plate);

/** Modes of a simply supported rectangular plate up to a frequency, counted: (π/2)·√(B′/m″)·((i/a)² + (k/b)²) ≤ f. */
export const countPlateModes = (plate: PlateProperties, length: number, width: number, frequency: number): number => {
  const reach = (2 * frequency * stretch(plate)) / Math.PI;
  let count = 0;
  for (let i = 1; (i / length) ** 2 < reach; i++) {
    count += Math.floor(width * Math.sqrt(reach - (i / length) ** 2));
  }
  return count;
};

/** Height of lightly damped mobility peaks over their mean, 8/(π·ω·η·n(ω)) with n(ω) = n(f)/2π. */
export const mobilityPeakFactor = (frequency: number, lossFactor: number, modalDensity: number): number =>
  8 / (Math.PI * frequency * lossFactor * modalDensity);
