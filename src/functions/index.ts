import type { AnyFunction } from './define';
// level and dynamic range

// frequency span

// mass loading

// thermal

// verdict

// trust

// choosing

// text and units

/** Every worksheet function name starts with this and a dot. */
export const NAMESPACE = 'CHAN';

/** The catalogue, in the order of the reference. */
export const FUNCTIONS: readonly AnyFunction[] = [
  // level and dynamic range

  // frequency span

  // mass loading

  // thermal

  // verdict

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
