/** A quantity a planner asks about: what gives it, what turns the question round, and which published checks hold it. */
export interface Question {
  readonly quantity: string;
  readonly forward: readonly string[];
  readonly inverse: readonly string[];
}
const ask = (quantity: string, forward: string, inverse: string): Question => ({
  quantity,
  forward: forward.split(' ').filter(Boolean),
  inverse: inverse.split(' ').filter(Boolean),
});

/** Every function of the catalogue stands in at least one line; `test/functions/questions.test.ts` holds that. */
export const QUESTIONS: readonly Question[] = [
  ask(
    'margin of the smallest level over noise',
    'SIGNAL.TO.NOISE NOISE.BIAS COHERENCE.LIMIT',
    'NOISE.ALLOWED BANDWIDTH.ALLOWED SIGNAL.TO.NOISE.NEEDED',
  ),
  ask(
    'margin of the upper limit over the peak',
    'HEADROOM CEILING CEILING.CAUSE CEILING.OFFSET CREST.FACTOR',
    'SENSITIVITY.ALLOWED RANGE.NEEDED RANGE.CHOICE',
  ),
  ask('range a channel offers', 'DYNAMIC.RANGE', 'DYNAMIC.RANGE.NEEDED'),
  ask('bias swing of an IEPE sensor', 'BIAS.SWING', 'SUPPLY.NEEDED'),
  ask('noise of the sensor', 'NOISE.BAND NOISE.MODEL NOISE.CURVE NOISE.SUM', 'NOISE.ALLOWED'),
  ask(
    'noise of the input',
    'NOISE.INPUT NOISE.DENSITY.INPUT QUANTISATION.STEP QUANTISATION.NOISE',
    'INPUT.DYNAMIC.NEEDED',
  ),
  ask('noise of a charge amplifier', 'NOISE.CHARGE NOISE.GAIN', 'CHARGE.RUN.ALLOWED SOURCE.RESISTANCE.NEEDED'),
  ask('bits and dynamic range of a converter', 'BITS.RANGE', 'BITS.EFFECTIVE'),
  ask(
    'bandwidth in which noise is read',
    'BANDWIDTH.LINE BANDWIDTH.OCTAVE LINE.SPACING',
    'BANDWIDTH.ALLOWED RECORD.TIME',
  ),
  ask(
    'sensitivity at the input and over temperature',
    'SENSITIVITY.CHARGE SENSITIVITY.VOLTAGE SENSITIVITY.LEAST SENSITIVITY.MOST',
    'SENSITIVITY.ALLOWED',
  ),
  ask('r.m.s. of a spectrum', 'PSD.RMS PSD.LEVEL PSD.ALONG', 'PSD.CHANGE PSD.SLOPE'),
  ask('peak of random vibration', 'PEAK.EXPECTED PEAK.SHARE LEVEL.PEAK', 'PEAK.DURATION PEAK.EXCEEDED CREST.FACTOR'),
  ask('response of a mode', 'RESPONSE.RANDOM RESPONSE.SINE', 'PSD.ALLOWED INPUT.ALLOWED'),
  ask('acceleration of a sine', 'LEVEL.SINE', 'SINE.DISPLACEMENT SINE.VELOCITY CROSSOVER.FREQUENCY'),
  ask('sine on random', 'LEVEL.COMBINED', 'RANDOM.ALLOWED'),
  ask('linearity', 'LINEARITY.SCALE LINEARITY.GROWTH', 'LINEARITY.LEVEL LINEARITY.REACH'),
  ask(
    'usable frequency span',
    'FREQUENCY.SPAN FREQUENCY.LOW FREQUENCY.HIGH FREQUENCY.CAUSE RESPONSE.CURVE',
    'CORNER.ALLOWED RESONANCE.NEEDED',
  ),
  ask(
    'low corner',
    'CORNER.FROM.LIMIT CORNER.FROM.TIME CORNER.FROM.PARTS POLES.LIMIT',
    'LIMIT.FROM.CORNER TIME.CONSTANT CORNER.ALLOWED TIME.CONSTANT.NEEDED',
  ),
  ask(
    'response at one frequency',
    'RESPONSE.DEVIATION RESPONSE.PHASE RESPONSE.LOSS',
    'CORNER.ALLOWED RESONANCE.NEEDED',
  ),
  ask('wait after a step', 'SETTLING.TIME', 'CORNER.FOR.SETTLING'),
  ask('high end from the resonance', 'RESONANCE.LIMIT', 'RESONANCE.NEEDED'),
  ask('mounted resonance', 'RESONANCE.MOUNTED RESONANCE.BODIES MOUNT.PRACTICE', 'STIFFNESS.NEEDED'),
  ask('stiffness of a joint', 'STIFFNESS.LAYER', 'LAYER.THICKNESS.ALLOWED'),
  ask('cable drive', 'CABLE.LIMIT SERIES.LIMIT', 'CURRENT.NEEDED CABLE.RUN.ALLOWED'),
  ask('charge cable', 'CHARGE.CABLE.LOSS', 'CHARGE.CABLE.ALLOWED'),
  ask('analyser limit', 'ANALYSER.LIMIT', 'SAMPLE.RATE.NEEDED'),
  ask('phase between two channels', 'DELAY.PHASE', 'DELAY.ALLOWED'),
  ask('half-sine pulse, low end', 'PULSE.ERROR', 'PULSE.TIME.NEEDED'),
  ask('half-sine pulse, high end', 'PULSE.OVERSHOOT', 'PULSE.RESONANCE.NEEDED PULSE.SHORTEST'),
  ask('mass-loading ratio', 'MASS.RATIO MASS.SUM', 'MASS.ALLOWED LOCAL.MASS.NEEDED MASS.COUNT.ALLOWED MASS.SPLIT'),
  ask(
    'effect of mass on frequency and level',
    'MASS.SHIFT MASS.LEVEL MASS.PHASE MASS.SHIFT.EXACT',
    'MASS.RATIO.ALLOWED MASS.FREQUENCY.LIMIT',
  ),
  ask(
    'exact loading from a frequency response',
    'MASS.LEVEL.EXACT MASS.LEVEL.FRF FRF.LOADED MODES.LOADED',
    'MASS.ALLOWED.EXACT MASS.CORRECTION',
  ),
  ask(
    'local mass',
    'LOCAL.MASS.PLATE LOCAL.MASS.BEAM LOCAL.MASS.IMPEDANCE LOCAL.MASS.MODAL LOCAL.MASS.MEMBER LOCAL.MASS.MODES LOCAL.MASS.RIGID LOCAL.MASS.FRF LOCAL.MASS.GOVERNING',
    'LOCAL.MASS.NEEDED',
  ),
  ask(
    'point impedance and bending waves',
    'IMPEDANCE.PLATE IMPEDANCE.BEAM WAVELENGTH.PLATE WAVELENGTH.BEAM MODAL.DENSITY.PLATE MODES.PLATE MOBILITY.PEAK',
    'MASS.FREQUENCY.LIMIT',
  ),
  ask('roving sensor and lightly damped peaks', 'MASS.SPREAD PEAK.DROP', 'PEAK.SHIFT.ALLOWED'),
  ask('tall units', 'MASS.ROTARY', 'HEIGHT.ALLOWED'),
  ask('mass of a cable', 'CABLE.MASS', 'CABLE.LENGTH.ALLOWED'),
  ask('stiffness of a cable', 'CABLE.STIFFNESS CABLE.SHIFT', 'CABLE.LENGTH.NEEDED'),
  ask('holding force of a mount', 'MOUNT.FORCE MOUNT.MARGIN MOUNT.STRESS', 'MOUNT.LEVEL.ALLOWED'),
  ask(
    'thermal deviation',
    'THERMAL.BAND THERMAL.LOW THERMAL.HIGH THERMAL.WORST THERMAL.HALFBAND THERMAL.DEVIATION THERMAL.CURVE THERMAL.COEFFICIENT.IMPLIED',
    'THERMAL.COEFFICIENT.ALLOWED THERMAL.WINDOW',
  ),
  ask('deviation in decibel', 'DEVIATION.DECIBEL', 'DECIBEL.DEVIATION'),
  ask('what a correction leaves', 'THERMAL.RESIDUAL THERMAL.SLOPE', 'THERMAL.UNCERTAINTY.ALLOWED'),
  ask('temperature ramp', 'THERMAL.RAMP', 'CORNER.FOR.RAMP RAMP.ALLOWED'),
  ask('zero drift', 'THERMAL.ZERO', 'THERMAL.DRIFT.ALLOWED'),
  ask('temperature limits, heat and touch', 'THERMAL.LIMITS SENSOR.HEAT TOUCH.CAUTION', ''),
  ask(
    'uncertainty of a level',
    'UNCERTAINTY.COMBINED UNCERTAINTY.EXPANDED UNCERTAINTY.BIAS UNCERTAINTY.FREEDOM UNCERTAINTY.COVERAGE UNCERTAINTY.RANKING',
    'UNCERTAINTY.ALLOWED',
  ),
  ask(
    'standard uncertainty of one contribution',
    'UNCERTAINTY.STANDARD UNCERTAINTY.TRANSVERSE STRAIN.ERROR MISALIGNMENT.LOSS',
    'UNCERTAINTY.HALFWIDTH',
  ),
  ask('statistics of random vibration', 'UNCERTAINTY.STATISTICAL', 'DURATION.NEEDED'),
  ask(
    'verdicts of a channel',
    'CHECK VERDICT.ATLEAST VERDICT.ATMOST VERDICT.WORST VERDICT.THERMAL VERDICT.SPAN VERDICT.MODE VERDICT.RAMP CAUSE.MODE CAUSE.TEMPERATURE REASON MISSING',
    '',
  ),
  ask('which sensor type to take', 'CANDIDATES TECHNOLOGY', 'ENVELOPE'),
  ask('text and units', 'READ CONVERT', ''),
];
