import type { ArgSpecs } from '../define';

/** The properties of a homogeneous plate, in this order at the end of every plate function's arguments. */
export const PLATE = {
  thickness: { unit: 'mm', symbol: 'h', text: 'Thickness of the plate.', above: 0 },
  modulus: { unit: 'GPa', symbol: 'E', text: 'Young’s modulus.', above: 0 },
  density: { unit: 'kg/m³', symbol: 'ρ', text: 'Density.', above: 0 },
  poisson: { unit: '1', symbol: 'ν', text: 'Poisson’s ratio.', atLeast: 0, below: 0.5 },
} as const satisfies ArgSpecs;

/** The properties of a uniform beam in bending. */
export const BEAM = {
  bendingStiffness: { unit: 'N·m²', symbol: 'EI', text: 'Bending stiffness in the direction of motion.', above: 0 },
  massPerLength: { unit: 'kg/m', symbol: 'm′', text: 'Mass per length.', above: 0 },
} as const satisfies ArgSpecs;

export const FREQUENCY = {
  unit: 'Hz',
  symbol: 'f',
  text: 'Highest frequency of interest.',
  above: 0,
} as const satisfies ArgSpecs[string];
