/** Rotary over translational effect of a tall unit on bending waves, (k_B·h)²; h² = h_cg² + radius of gyration². */
export const rotaryEffect = (waveNumber: number, height: number): number => (waveNumber * height) ** 2;

/** Height in m that keeps the rotary effect. */
export const heightForRotaryEffect = (effect: number, waveNumber: number): number => Math.sqrt(effect) / waveNumber;

/** Effective mass of a cable, kg: half of its free length (m) up to the first tie. */
export const cableMass = (freeLength: number, massPerLength: number): number => (freeLength * massPerLength) / 2;

/** Free length that keeps an effective mass, m. */
export const cableLengthForMass = (mass: number, massPerLength: number): number => (2 * mass) / massPerLength;

/** Stiffness of a free cable length, clamped at its tie, N/m: 3EI/l³. */
export const cableStiffness = (bendingStiffness: number, freeLength: number): number =>
  (3 * bendingStiffness) / freeLength ** 3;

/** Rise of a mode's frequency by a stiffness at the point, a fraction: ½·k_c/(ω²·m_eff). Small shifts. */
export const stiffnessShift = (stiffness: number, localMass: number, frequency: number): number =>
  stiffness / (2 * localMass * (2 * Math.PI * frequency) ** 2);

/** Shortest free length in m that keeps a frequency shift. */
export const cableLengthForShift = (
  bendingStiffness: number,
  localMass: number,
  frequency: number,
  shift: number,
): number => Math.cbrt((3 * bendingStiffness) / (2 * shift * localMass * (2 * Math.PI * frequency) ** 2));
