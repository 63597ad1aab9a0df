import { rootBetween } from '../numerics/root';

/**
 * A half-sine pulse of height 1 through a second-order sensor, solved exactly. Time is counted in θ = πt/T, so the
 * resonance turns at w = 2·f_r·T. During the pulse y = P·sin(θ−φ) plus a decaying ring; afterwards the ring alone.
 */
interface Motion {
  readonly w: number;
  readonly decay: number;
  readonly turn: number;
  /** Amplitude and lag of the forced part. */
  readonly forced: number;
  readonly lag: number;
  /** Cosine and sine parts of the ring at θ = 0. */
  readonly cosine: number;
  readonly sine: number;
}

const motionOf = (resonanceTimesDuration: number, qualityFactor: number): Motion => {
  const w = 2 * resonanceTimesDuration;
  const decay = w / (2 * qualityFactor);
  const turn = Math.sqrt(w * w - decay * decay);
  const real = w * w - 1;
  const imaginary = 2 * decay;
  const forced = (w * w) / Math.hypot(real, imaginary);
  const lag = Math.atan2(imaginary, real);
  // At rest at θ = 0: the ring cancels the forced part's position and velocity.
  const cosine = forced * Math.sin(lag);
  const sine = (decay * cosine - forced * Math.cos(lag)) / turn;
  return { w, decay, turn, forced, lag, cosine, sine };
};

const position = (m: Motion, angle: number): number =>
  m.forced * Math.sin(angle - m.lag) +
  Math.exp(-m.decay * angle) * (m.cosine * Math.cos(m.turn * angle) + m.sine * Math.sin(m.turn * angle));

const velocity = (m: Motion, angle: number): number =>
  m.forced * Math.cos(angle - m.lag) +
  Math.exp(-m.decay * angle) *
    ((m.sine * m.turn - m.decay * m.cosine) * Math.cos(m.turn * angle) -
      (m.cosine * m.turn + m.decay * m.sine) * Math.sin(m.turn * angle));

/** Looks per turn of the ring: between two looks the ring cannot rise and fall unseen. */
const LOOKS_PER_TURN = 16;

/**
 * Error of the peak as a fraction (positive: reads high) for f_r·T and Q above 0.5. One resonance, linear.
 * The largest value lies where forced part and ring can add up to it, which bounds the search to a few turns.
 */
export const pulseOvershoot = (resonanceTimesDuration: number, qualityFactor: number): number => {
  const m = motionOf(resonanceTimesDuration, qualityFactor);
  const ring = Math.hypot(m.cosine, m.sine);
  const reach = ring >= m.forced ? Math.PI : Math.acos(1 - (2 * ring) / m.forced);
  const crest = Math.PI / 2 + m.lag;
  const from = Math.max(0, crest - reach);
  const to = Math.min(Math.PI, crest + reach);
  const step = Math.min((2 * Math.PI) / m.turn, Math.PI) / LOOKS_PER_TURN;
  let largest = Math.max(position(m, Math.min(from, Math.PI)), position(m, Math.max(0, to)), afterwards(m));
  for (let angle = from; angle < to; angle += step) {
    const next = Math.min(angle + step, to);
    if (velocity(m, angle) > 0 && velocity(m, next) <= 0) largest = Math.max(largest, crestBetween(m, angle, next));
  }
  return largest - 1;
};

const crestBetween = (m: Motion, low: number, high: number): number => {
  let [rising, falling] = [low, high];
  // The value is flat at its crest: half the digits of the angle are all that matter.
  for (let i = 0; i < 26; i += 1) {
    const middle = (rising + falling) / 2;
    if (velocity(m, middle) > 0) rising = middle;
    else falling = middle;
  }
  return position(m, rising);
};

/** First crest of the free ring after the pulse, from position and velocity at its end. */
const afterwards = (m: Motion): number => {
  const y = position(m, Math.PI);
  const v = velocity(m, Math.PI);
  const phase = Math.atan2(v * m.turn, m.w * m.w * y + m.decay * v);
  const wait = (phase < 0 ? phase + 2 * Math.PI : phase) / m.turn;
  return (
    Math.exp(-m.decay * wait) * (y * Math.cos(m.turn * wait) + ((v + m.decay * y) / m.turn) * Math.sin(m.turn * wait))
  );
};

/**
 * Smallest f_r·T from which on the peak stays within an error (a fraction below 1) at any higher value.
 * The error ripples by one ripple per unit of f_r·T while the ring lasts to the crest, so it is walked downward in
 * small steps from where forced part and ring together cannot exceed it.
 */
export const pulseProductNeeded = (error: number, qualityFactor: number): number => {
  const excess = (product: number) => Math.abs(pulseOvershoot(product, qualityFactor)) - error;
  const surplus = (product: number) => {
    const m = motionOf(product, qualityFactor);
    return Math.abs(m.forced - 1) + Math.hypot(m.cosine, m.sine) - error;
  };
  let product = 1;
  while (surplus(product) > 0) product *= 2;
  for (;;) {
    const m = motionOf(product, qualityFactor);
    const lasts = Math.hypot(m.cosine, m.sine) * Math.exp((-m.decay * Math.PI) / 4) > error * NEGLIGIBLE;
    const next = product - Math.min(product * SMOOTH_STEP, lasts ? RIPPLE_STEP : Infinity);
    if (excess(next) > 0) return rootBetween(excess, next, product);
    product = next;
  }
};

/** Share of the error below which the ring at the crest no longer counts. */
const NEGLIGIBLE = 1e-3;
const SMOOTH_STEP = 0.01;
const RIPPLE_STEP = 0.1;
