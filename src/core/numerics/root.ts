/** Halvings after which two neighbouring doubles remain from any bracket of ordinary size. */
const HALVINGS = 200;

/** The place between low and high where a continuous function changes sign; it must do so once. */
export const rootBetween = (value: (at: number) => number, low: number, high: number): number => {
  // By both ends: at an end that is itself the root, rounding decides the sign.
  const rises = value(low) < value(high);
  let [near, far] = [low, high];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (near + far) / 2;
    if (middle === near || middle === far) break;
    if (value(middle) < 0 === rises) near = middle;
    else far = middle;
  }
  return (near + far) / 2;
};
