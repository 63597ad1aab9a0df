import { DEFAULT_LIMITS } from '../plan/limits';

const number = (value: number, comma: boolean): string => (comma ? String(value).replace('.', ',') : String(value));
const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;

/** Number columns of the table of limits, from the defaults themselves. */
export const limitZones = (comma: boolean) => {
  const { signalToNoise: s, headroom: h, massRatio, thermalTolerance: t, spanTolerance: f } = DEFAULT_LIMITS;
  const n = (value: number | undefined) => number(value ?? NaN, comma);
  return {
    noise: [`≥ ${n(s.pass)} dB`, `${n(s.warn)} … ${n(s.pass)} dB`, `< ${n(s.warn)} dB`],
    headroom: [`≥ ${n(h.pass)} dB`, `${n(h.warn)} … ${n(h.pass)} dB`, `< ${n(h.warn)} dB`],
    survey: [`≤ ${n(massRatio.survey.pass)}`, `≤ ${n(massRatio.survey.warn)}`, `> ${n(massRatio.survey.warn)}`],
    modal: [`≤ ${n(massRatio.modal.pass)}`, `≤ ${n(massRatio.modal.warn)}`, `> ${n(massRatio.modal.warn)}`],
    thermal: percent(t.pass),
    span: [percent(f.pass), percent(f.warn ?? NaN)],
  } as const;
};
