import { beamAntinode, BEAMS, beamShape, type Beam } from './beam-modes';
import { clampedCircularModalMassShare, LAST_CIRCULAR_MODE } from './circular-plate';

/** Uniform members whose modal masses are known in closed form. */
export const MEMBERS = [...BEAMS, 'simply supported plate', 'clamped circular plate'] as const;
export type Member = (typeof MEMBERS)[number];

/** Below this square of the shape (mean square 1) rounding decides: the point is a node. */
const NODE = 1e-20;

const isBeam = (member: Member): member is Beam => (BEAMS as readonly string[]).includes(member);

/** Square of the shape, its mean over the member being 1; an absent position is where the mode moves most. */
const shapeSquare = (beam: Beam, mode: number, position: number | undefined): number =>
  beamShape(beam, mode)(position ?? beamAntinode(beam, mode)) ** 2;

/**
 * Modal mass over the member's mass with the shape 1 at the position: x/L (and y/b of a rectangular plate), or r/R of a
 * circular one whose centre moves most. Modes of a plate: half waves along and across.
 */
export const memberModalMassShare = (
  member: Member,
  [mode, across]: readonly [number, number],
  [position, acrossPosition]: readonly [number | undefined, number | undefined],
): number | 'node' | 'no such mode' => {
  if (member === 'clamped circular plate') {
    if (mode > LAST_CIRCULAR_MODE) return 'no such mode';
    const share = clampedCircularModalMassShare(mode, position ?? 0);
    return share < 1 / NODE ? share : 'node';
  }
  const square = isBeam(member)
    ? shapeSquare(member, mode, position)
    : shapeSquare('simply supported beam', mode, position) *
      shapeSquare('simply supported beam', across, acrossPosition);
  return square > NODE ? 1 / square : 'node';
};
