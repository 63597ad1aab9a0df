import type { LoadingModel } from './loading';

/** Modulus of the local mass of a point impedance at a frequency, kg: |Z|/(2πf). Falls with frequency on plates. */
export const localMassOfImpedance = (impedance: number, frequency: number): number =>
  impedance / (2 * Math.PI * frequency);

/** Frequency in Hz at which a mass reaches a ratio of a frequency-independent impedance: r·|Z|/(2πm). */
export const frequencyForRatio = (impedance: number, addedMass: number, ratio: number): number =>
  (ratio * impedance) / (2 * Math.PI * addedMass);

/** Local mass of one mode at the point, kg: M_r/φ², φ in the scaling of M_r. Infinite at a node. */
export const modalLocalMass = (modalMass: number, shape: number): number => modalMass / shape ** 2;

/**
 * Local mass of a free rigid part at a point off its centre of mass, kg: 1/(1/M + d²/J). Offset d in m square to the
 * sensor's axis, J in kg·m² about the centre of mass, in the plane of d and the axis. Soft suspension.
 */
export const rigidLocalMass = (mass: number, inertia: number, offset: number): number =>
  1 / (1 / mass + offset ** 2 / inertia);

export interface PlateProperties {
  /** Young's modulus, Pa. */
  readonly modulus: number;
  /** kg/m³. */
  readonly density: number;
  readonly poisson: number;
  /** m. */
  readonly thickness: number;
}

/** Bending stiffness of a plate per width, N·m: E·h³/(12(1−ν²)). */
export const plateBendingStiffness = (plate: PlateProperties): number =>
  (plate.modulus * plate.thickness ** 3) / (12 * (1 - plate.poisson ** 2));

/**
 * Point impedance of an infinite thin plate, N·s/m: 8·√(B′m″), real at every frequency (Cremer and Heckl). Thickness
 * below a sixth of the bending wavelength, point a quarter wavelength from edges and stiffeners (common practice).
 */
export const platePointImpedance = (plate: PlateProperties): number =>
  8 * Math.sqrt(plateBendingStiffness(plate) * plate.density * plate.thickness);

export interface BeamProperties {
  /** Bending stiffness EI, N·m². */
  readonly bendingStiffness: number;
  /** kg/m. */
  readonly massPerLength: number;
}
/** Where on the beam: far from both ends, or at the free end of a long beam. */
export const BEAM_POINTS = ['interior', 'end'] as const;
export type BeamPoint = (typeof BEAM_POINTS)[number];

/** Bending wave speed of a beam, m/s: (EI·ω²/m′)^¼. */
export const beamWaveSpeed = (beam: BeamProperties, frequency: number): number =>
  ((beam.bendingStiffness * (2 * Math.PI * frequency) ** 2) / beam.massPerLength) ** 0.25;

/** Modulus of a long beam's point impedance, N·s/m: |2m′c_B(1+j)|, at a free end a quarter of it. Argument 45°. */
export const beamPointImpedance = (beam: BeamProperties, frequency: number, point: BeamPoint): number =>
  (point === 'end' ? 0.5 : 2) * beam.massPerLength * beamWaveSpeed(beam, frequency) * Math.SQRT2;

/** One estimate of the local mass at a point. */
export interface LocalMassBranch {
  readonly name: string;
  /** kg. */
  readonly mass: number;
  readonly model: LoadingModel;
}
/** The branch with the smallest local mass: the one a sensor loads most. Undefined without branches. */
export const governingBranch = <B extends LocalMassBranch>(branches: readonly B[]): B | undefined =>
  branches.reduce<B | undefined>((least, next) => (least && least.mass <= next.mass ? least : next), undefined);
