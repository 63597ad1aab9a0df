import type { Language } from '../../core/language';
import type { Finding } from '../finding';
import { findingsOf } from '../findings';
import type { Limits } from '../limits';
import { reasonText, sentenceOf } from '../sentence';
import type { Aim, Fit } from './candidate';

/** Why this one is not a plain PASS: every finding that is none, number and inverse included. */
export const whyNot = ({ check }: Fit, limits: Limits): readonly Finding[] =>
  findingsOf(check, limits).filter(({ verdict }) => verdict !== 'PASS');

const isAbout = (finding: Finding, aim: Aim): boolean =>
  finding.check === aim || (finding.check === 'empty span' && (aim === 'span low' || aim === 'span high'));

/** The finding that sets the smallest margin: what limits a candidate, also one that passes. */
export const limitingFinding = ({ check, limiting }: Fit, limits: Limits): Finding | undefined =>
  limiting && findingsOf(check, limits).find((finding) => isAbout(finding, limiting.aim));

/** What limits a candidate in a sentence; what is missing where that is what keeps it from a verdict. */
export const limitText = (fit: Fit, limits: Limits, language: Language = 'en'): string => {
  if (fit.check.verdict === 'INCOMPLETE') return reasonText(whyNot(fit, limits));
  const finding = limitingFinding(fit, limits);
  return finding ? sentenceOf(finding, language) : '';
};
