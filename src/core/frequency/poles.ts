import { rootBetween } from '../numerics/root';
import { polesGain } from './response';

/** Frequency in Hz at which several high-pass poles together lose a fraction; 0 without poles. */
export const polesLimit = (corners: readonly number[], loss: number): number => {
  let cornersSquared = 0;
  for (const corner of corners) cornersSquared += corner * corner;
  if (cornersSquared === 0) return 0;
  // 1+Σ(fc/f)² ≤ Π(1+(fc/f)²) ≤ exp Σ(fc/f)²: the loss is reached between these two.
  const low = Math.sqrt(cornersSquared / ((1 - loss) ** -2 - 1));
  const high = Math.sqrt(cornersSquared / (-2 * Math.log1p(-loss)));
  return rootBetween((frequency) => polesGain(corners, frequency) - (1 - loss), low, high);
};
