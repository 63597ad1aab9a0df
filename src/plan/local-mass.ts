import {
  beamPointImpedance,
  localMassOfImpedance,
  modalLocalMass,
  platePointImpedance,
  rigidLocalMass,
} from '../core/mass/local-mass';
import type { LoadingModel } from '../core/mass/loading';
import type { LocalMass } from './model';

export interface GoverningLocalMass {
  /** kg. */
  readonly mass: number;
  readonly model: LoadingModel;
  /** Whether every branch is known; one that is not could be smaller. */
  readonly complete: boolean;
}

/** The smallest of the known branches; undefined when none is known. */
export const governingLocalMass = (branches: readonly LocalMass[]): GoverningLocalMass | undefined => {
  let least: number | undefined;
  let model: LoadingModel = 'mass';
  let complete = true;
  for (const branch of branches) {
    const mass = localMassOf(branch);
    if (mass === undefined) complete = false;
    else if (least === undefined || mass < least) {
      least = mass;
      model = branch.model === 'plate' || branch.model === 'beam' ? branch.model : 'mass';
    }
  }
  return least === undefined ? undefined : { mass: least, model, complete };
};

/** kg; undefined while the branch lacks a number. */
export const localMassOf = (branch: LocalMass): number | undefined => {
  switch (branch.model) {
    case 'value':
      return usable(branch.mass);
    case 'modal':
      return branch.modalMass === undefined || branch.shape === undefined
        ? undefined
        : usable(modalLocalMass(branch.modalMass, branch.shape));
    case 'rigid':
      return branch.mass === undefined || branch.inertia === undefined || branch.offset === undefined
        ? undefined
        : usable(rigidLocalMass(branch.mass, branch.inertia, branch.offset));
    case 'plate':
    case 'beam': {
      const impedance = branch.impedance ?? (branch.model === 'plate' ? plateImpedance(branch) : beamImpedance(branch));
      return impedance === undefined || branch.frequency === undefined
        ? undefined
        : usable(localMassOfImpedance(impedance, branch.frequency));
    }
  }
};

/** A node (infinite mass) is known and loads nothing; anything not above 0 is no mass. */
const usable = (mass: number | undefined): number | undefined => (mass !== undefined && mass > 0 ? mass : undefined);

const plateImpedance = (plate: Extract<LocalMass, { model: 'plate' }>): number | undefined => {
  const { modulus, density, poisson, thickness } = plate;
  return modulus === undefined || density === undefined || poisson === undefined || thickness === undefined
    ? undefined
    : platePointImpedance({ modulus, density, poisson, thickness });
};

/** Rectangular section, bending across its thickness, far from the ends. */
const beamImpedance = (beam: Extract<LocalMass, { model: 'beam' }>): number | undefined => {
  const { modulus, density, width, thickness, frequency } = beam;
  if (modulus === undefined || density === undefined || width === undefined) return undefined;
  if (thickness === undefined || frequency === undefined) return undefined;
  const bendingStiffness = (modulus * width * thickness ** 3) / 12;
  return beamPointImpedance({ bendingStiffness, massPerLength: density * width * thickness }, frequency, 'interior');
};
