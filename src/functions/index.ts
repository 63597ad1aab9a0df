import type { AnyFunction } from './define';
// level and dynamic range
import { dynamicRange } from './level/dynamic-range';
import { signalToNoise } from './level/signal-to-noise';
import { headroom } from './level/headroom';
import { ceiling } from './level/ceiling';
import { ceilingCause } from './level/ceiling-cause';
import { noiseBand } from './level/noise-band';
import { noiseInput } from './level/noise-input';
import { noiseCharge } from './level/noise-charge';
import { noiseSum } from './level/noise-sum';
import { sensitivityCharge } from './level/sensitivity-charge';
import { sensitivityLeast } from './level/sensitivity-least';
import { sensitivityMost } from './level/sensitivity-most';
import { psdRms } from './level/psd-rms';
import { psdLevel } from './level/psd-level';
import { psdAlong } from './level/psd-along';
import { psdSlope } from './level/psd-slope';
import { psdChange } from './level/psd-change';
import { peakExpected } from './level/peak-expected';
import { peakDuration } from './level/peak-duration';
import { peakShare } from './level/peak-share';
import { peakExceeded } from './level/peak-exceeded';
import { crestFactor } from './level/crest-factor';
import { levelPeak } from './level/level-peak';
import { responseRandom } from './level/response-random';
import { psdAllowed } from './level/psd-allowed';
import { responseSine } from './level/response-sine';
import { inputAllowed } from './level/input-allowed';
import { levelSine } from './level/level-sine';
import { sineDisplacement } from './level/sine-displacement';
import { sineVelocity } from './level/sine-velocity';
import { crossoverFrequency } from './level/crossover-frequency';
import { levelCombined } from './level/level-combined';
import { randomAllowed } from './level/random-allowed';
import { noiseModel } from './level/noise-model';
import { noiseAllowed } from './level/noise-allowed';
import { bandwidthAllowed } from './level/bandwidth-allowed';
import { noiseBias } from './level/noise-bias';
import { signalToNoiseNeeded } from './level/signal-to-noise-needed';
import { coherenceLimit } from './level/coherence-limit';
import { bitsEffective } from './level/bits-effective';
import { bitsRange } from './level/bits-range';
import { quantisationStep } from './level/quantisation-step';
import { quantisationNoise } from './level/quantisation-noise';
import { noiseDensityInput } from './level/noise-density-input';
import { inputDynamicNeeded } from './level/input-dynamic-needed';
import { bandwidthLine } from './level/bandwidth-line';
import { bandwidthOctave } from './level/bandwidth-octave';
import { rangeChoice } from './level/range-choice';
import { rangeNeeded } from './level/range-needed';
import { sensitivityAllowed } from './level/sensitivity-allowed';
import { biasSwing } from './level/bias-swing';
import { supplyNeeded } from './level/supply-needed';
import { dynamicRangeNeeded } from './level/dynamic-range-needed';
import { ceilingOffset } from './level/ceiling-offset';
import { linearityScale } from './level/linearity-scale';
import { linearityGrowth } from './level/linearity-growth';
import { linearityLevel } from './level/linearity-level';
import { linearityReach } from './level/linearity-reach';
import { chargeRunAllowed } from './level/charge-run-allowed';
import { noiseGain } from './level/noise-gain';
import { sourceResistanceNeeded } from './level/source-resistance-needed';
import { noiseCurve } from './level/noise-curve';

// frequency span
import { frequencySpan } from './frequency/frequency-span';
import { frequencyLow } from './frequency/frequency-low';
import { frequencyHigh } from './frequency/frequency-high';
import { resonanceMounted } from './frequency/resonance-mounted';
import { cableLimit } from './frequency/cable-limit';
import { cornerFromLimit } from './frequency/corner-from-limit';
import { limitFromCorner } from './frequency/limit-from-corner';
import { cornerFromTime } from './frequency/corner-from-time';
import { timeConstant } from './frequency/time-constant';
import { cornerFromParts } from './frequency/corner-from-parts';
import { cornerAllowed } from './frequency/corner-allowed';
import { timeConstantNeeded } from './frequency/time-constant-needed';
import { polesLimit } from './frequency/poles-limit';
import { responseDeviation } from './frequency/response-deviation';
import { responsePhase } from './frequency/response-phase';
import { responseLoss } from './frequency/response-loss';
import { settlingTime } from './frequency/settling-time';
import { cornerForSettling } from './frequency/corner-for-settling';
import { resonanceLimit } from './frequency/resonance-limit';
import { resonanceNeeded } from './frequency/resonance-needed';
import { resonanceBodies } from './frequency/resonance-bodies';
import { stiffnessNeeded } from './frequency/stiffness-needed';
import { stiffnessLayer } from './frequency/stiffness-layer';
import { layerThicknessAllowed } from './frequency/layer-thickness-allowed';
import { currentNeeded } from './frequency/current-needed';
import { cableRunAllowed } from './frequency/cable-run-allowed';
import { chargeCableLoss } from './frequency/charge-cable-loss';
import { chargeCableAllowed } from './frequency/charge-cable-allowed';
import { seriesLimit } from './frequency/series-limit';
import { sensitivityVoltage } from './frequency/sensitivity-voltage';
import { analyserLimit } from './frequency/analyser-limit';
import { sampleRateNeeded } from './frequency/sample-rate-needed';
import { recordTime } from './frequency/record-time';
import { lineSpacing } from './frequency/line-spacing';
import { delayPhase } from './frequency/delay-phase';
import { delayAllowed } from './frequency/delay-allowed';
import { pulseError } from './frequency/pulse-error';
import { pulseTimeNeeded } from './frequency/pulse-time-needed';
import { pulseOvershoot } from './frequency/pulse-overshoot';
import { pulseResonanceNeeded } from './frequency/pulse-resonance-needed';
import { pulseShortest } from './frequency/pulse-shortest';
import { mountPractice } from './frequency/mount-practice';
import { responseCurve } from './frequency/response-curve';
import { frequencyCause } from './frequency/frequency-cause';

// mass loading
import { massRatio } from './mass/mass-ratio';
import { massShift } from './mass/mass-shift';
import { massLevel } from './mass/mass-level';
import { massAllowed } from './mass/mass-allowed';
import { localMassPlate } from './mass/local-mass-plate';
import { localMassImpedance } from './mass/local-mass-impedance';
import { massPhase } from './mass/mass-phase';
import { massRatioAllowed } from './mass/mass-ratio-allowed';
import { localMassNeeded } from './mass/local-mass-needed';
import { localMassBeam } from './mass/local-mass-beam';
import { impedancePlate } from './mass/impedance-plate';
import { impedanceBeam } from './mass/impedance-beam';
import { massFrequencyLimit } from './mass/mass-frequency-limit';
import { localMassModal } from './mass/local-mass-modal';
import { localMassRigid } from './mass/local-mass-rigid';
import { massSum } from './mass/mass-sum';
import { massCountAllowed } from './mass/mass-count-allowed';
import { massSpread } from './mass/mass-spread';
import { massSplit } from './mass/mass-split';
import { peakDrop } from './mass/peak-drop';
import { peakShiftAllowed } from './mass/peak-shift-allowed';
import { massRotary } from './mass/mass-rotary';
import { heightAllowed } from './mass/height-allowed';
import { wavelengthPlate } from './mass/wavelength-plate';
import { wavelengthBeam } from './mass/wavelength-beam';
import { modalDensityPlate } from './mass/modal-density-plate';
import { modesPlate } from './mass/modes-plate';
import { mobilityPeak } from './mass/mobility-peak';
import { cableMass } from './mass/cable-mass';
import { cableLengthAllowed } from './mass/cable-length-allowed';
import { cableStiffness } from './mass/cable-stiffness';
import { cableShift } from './mass/cable-shift';
import { cableLengthNeeded } from './mass/cable-length-needed';
import { mountForce } from './mass/mount-force';
import { mountMargin } from './mass/mount-margin';
import { mountLevelAllowed } from './mass/mount-level-allowed';
import { mountStress } from './mass/mount-stress';
import { massShiftExact } from './mass/mass-shift-exact';
import { localMassFrf } from './mass/local-mass-frf';
import { massLevelFrf } from './mass/mass-level-frf';
import { massCorrection } from './mass/mass-correction';
import { frfLoaded } from './mass/frf-loaded';
import { localMassModes } from './mass/local-mass-modes';
import { modesLoaded } from './mass/modes-loaded';
import { massLevelExact } from './mass/mass-level-exact';
import { massAllowedExact } from './mass/mass-allowed-exact';
import { localMassMember } from './mass/local-mass-member';
import { localMassGoverning } from './mass/local-mass-governing';

// thermal
import { thermalBand } from './thermal/thermal-band';
import { thermalLow } from './thermal/thermal-low';
import { thermalHigh } from './thermal/thermal-high';
import { thermalWorst } from './thermal/thermal-worst';
import { thermalHalfband } from './thermal/thermal-halfband';
import { thermalDeviation } from './thermal/thermal-deviation';
import { thermalCurve } from './thermal/thermal-curve';
import { deviationDecibel } from './thermal/deviation-decibel';
import { decibelDeviation } from './thermal/decibel-deviation';
import { thermalCoefficientAllowed } from './thermal/thermal-coefficient-allowed';
import { thermalCoefficientImplied } from './thermal/thermal-coefficient-implied';
import { thermalWindow } from './thermal/thermal-window';
import { thermalSlope } from './thermal/thermal-slope';
import { thermalResidual } from './thermal/thermal-residual';
import { thermalUncertaintyAllowed } from './thermal/thermal-uncertainty-allowed';
import { thermalRamp } from './thermal/thermal-ramp';
import { cornerForRamp } from './thermal/corner-for-ramp';
import { rampAllowed } from './thermal/ramp-allowed';
import { thermalZero } from './thermal/thermal-zero';
import { thermalDriftAllowed } from './thermal/thermal-drift-allowed';
import { sensorHeat } from './thermal/sensor-heat';
import { touchCaution } from './thermal/touch-caution';
import { thermalLimits } from './thermal/thermal-limits';

// verdict
import { verdictAtleast } from './verdict/verdict-atleast';
import { verdictAtmost } from './verdict/verdict-atmost';
import { verdictWorst } from './verdict/verdict-worst';
import { verdictThermal } from './verdict/verdict-thermal';
import { verdictSpan } from './verdict/verdict-span';
import { causeMode } from './verdict/cause-mode';
import { causeTemperature } from './verdict/cause-temperature';
import { verdictMode } from './verdict/verdict-mode';
import { missing } from './verdict/missing';
import { check } from './verdict/check';
import { reason } from './verdict/reason';
import { verdictRamp } from './verdict/verdict-ramp';

// trust
import { uncertaintyCombined } from './trust/uncertainty-combined';
import { uncertaintyExpanded } from './trust/uncertainty-expanded';
import { uncertaintyBias } from './trust/uncertainty-bias';
import { uncertaintyFreedom } from './trust/uncertainty-freedom';
import { uncertaintyCoverage } from './trust/uncertainty-coverage';
import { uncertaintyRanking } from './trust/uncertainty-ranking';
import { uncertaintyAllowed } from './trust/uncertainty-allowed';
import { uncertaintyStandard } from './trust/uncertainty-standard';
import { uncertaintyHalfwidth } from './trust/uncertainty-halfwidth';
import { uncertaintyTransverse } from './trust/uncertainty-transverse';
import { strainError } from './trust/strain-error';
import { uncertaintyStatistical } from './trust/uncertainty-statistical';
import { durationNeeded } from './trust/duration-needed';
import { misalignmentLoss } from './trust/misalignment-loss';

// choosing
import { candidates } from './choosing/candidates';
import { envelope } from './choosing/envelope';
import { technology } from './choosing/technology';

// text and units
import { read } from './text/read';
import { convert } from './text/convert';

/** Every worksheet function name starts with this and a dot. */
export const NAMESPACE = 'CHAN';

/** The catalogue, in the order of the reference. */
export const FUNCTIONS: readonly AnyFunction[] = [
  // level and dynamic range
  dynamicRange,
  signalToNoise,
  headroom,
  ceiling,
  ceilingCause,
  noiseBand,
  noiseInput,
  noiseCharge,
  noiseSum,
  sensitivityCharge,
  sensitivityLeast,
  sensitivityMost,
  psdRms,
  psdLevel,
  psdAlong,
  psdSlope,
  psdChange,
  peakExpected,
  peakDuration,
  peakShare,
  peakExceeded,
  crestFactor,
  levelPeak,
  responseRandom,
  psdAllowed,
  responseSine,
  inputAllowed,
  levelSine,
  sineDisplacement,
  sineVelocity,
  crossoverFrequency,
  levelCombined,
  randomAllowed,
  noiseModel,
  noiseAllowed,
  bandwidthAllowed,
  noiseBias,
  signalToNoiseNeeded,
  coherenceLimit,
  bitsEffective,
  bitsRange,
  quantisationStep,
  quantisationNoise,
  noiseDensityInput,
  inputDynamicNeeded,
  bandwidthLine,
  bandwidthOctave,
  rangeChoice,
  rangeNeeded,
  sensitivityAllowed,
  biasSwing,
  supplyNeeded,
  dynamicRangeNeeded,
  ceilingOffset,
  linearityScale,
  linearityGrowth,
  linearityLevel,
  linearityReach,
  chargeRunAllowed,
  noiseGain,
  sourceResistanceNeeded,
  noiseCurve,

  // frequency span
  frequencySpan,
  frequencyLow,
  frequencyHigh,
  resonanceMounted,
  cableLimit,
  cornerFromLimit,
  limitFromCorner,
  cornerFromTime,
  timeConstant,
  cornerFromParts,
  cornerAllowed,
  timeConstantNeeded,
  polesLimit,
  responseDeviation,
  responsePhase,
  responseLoss,
  settlingTime,
  cornerForSettling,
  resonanceLimit,
  resonanceNeeded,
  resonanceBodies,
  stiffnessNeeded,
  stiffnessLayer,
  layerThicknessAllowed,
  currentNeeded,
  cableRunAllowed,
  chargeCableLoss,
  chargeCableAllowed,
  seriesLimit,
  sensitivityVoltage,
  analyserLimit,
  sampleRateNeeded,
  recordTime,
  lineSpacing,
  delayPhase,
  delayAllowed,
  pulseError,
  pulseTimeNeeded,
  pulseOvershoot,
  pulseResonanceNeeded,
  pulseShortest,
  mountPractice,
  responseCurve,
  frequencyCause,

  // mass loading
  massRatio,
  massShift,
  massLevel,
  massAllowed,
  localMassPlate,
  localMassImpedance,
  massPhase,
  massRatioAllowed,
  localMassNeeded,
  localMassBeam,
  impedancePlate,
  impedanceBeam,
  massFrequencyLimit,
  localMassModal,
  localMassRigid,
  massSum,
  massCountAllowed,
  massSpread,
  massSplit,
  peakDrop,
  peakShiftAllowed,
  massRotary,
  heightAllowed,
  wavelengthPlate,
  wavelengthBeam,
  modalDensityPlate,
  modesPlate,
  mobilityPeak,
  cableMass,
  cableLengthAllowed,
  cableStiffness,
  cableShift,
  cableLengthNeeded,
  mountForce,
  mountMargin,
  mountLevelAllowed,
  mountStress,
  massShiftExact,
  localMassFrf,
  massLevelFrf,
  massCorrection,
  frfLoaded,
  localMassModes,
  modesLoaded,
  massLevelExact,
  massAllowedExact,
  localMassMember,
  localMassGoverning,

  // thermal
  thermalBand,
  thermalLow,
  thermalHigh,
  thermalWorst,
  thermalHalfband,
  thermalDeviation,
  thermalCurve,
  deviationDecibel,
  decibelDeviation,
  thermalCoefficientAllowed,
  thermalCoefficientImplied,
  thermalWindow,
  thermalSlope,
  thermalResidual,
  thermalUncertaintyAllowed,
  thermalRamp,
  cornerForRamp,
  rampAllowed,
  thermalZero,
  thermalDriftAllowed,
  sensorHeat,
  touchCaution,
  thermalLimits,

  // verdict
  verdictAtleast,
  verdictAtmost,
  verdictWorst,
  verdictThermal,
  verdictSpan,
  verdictMode,
  causeMode,
  causeTemperature,
  check,
  reason,
  missing,
  verdictRamp,

  // trust
  uncertaintyCombined,
  uncertaintyExpanded,
  uncertaintyBias,
  uncertaintyFreedom,
  uncertaintyCoverage,
  uncertaintyRanking,
  uncertaintyAllowed,
  uncertaintyStandard,
  uncertaintyHalfwidth,
  uncertaintyTransverse,
  strainError,
  uncertaintyStatistical,
  durationNeeded,
  misalignmentLoss,

  // choosing
  candidates,
  envelope,
  technology,

  // text and units
  read,
  convert,
];

const byName = new Map<string, AnyFunction>();
/** The declaration of "MASS.RATIO", whatever its case. */
export const functionByName = (name: string): AnyFunction | undefined => {
  if (byName.size === 0) FUNCTIONS.forEach((f) => byName.set(f.name, f));
  return byName.get(name.toUpperCase());
};
