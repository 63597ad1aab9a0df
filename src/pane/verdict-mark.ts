import type { Verdict } from '../core/verdict';
import { make } from './dom';

const SVG = 'http://www.w3.org/2000/svg';

/** Strokes of each verdict's mark on a 16 by 16 field; each also differs in outline, so that it holds in grey. */
const PATHS: Readonly<Record<Verdict, readonly (readonly [path: string, filled: boolean])[]>> = {
  PASS: [['M3 8.5 6.5 12 13 4.5', false]],
  WARN: [
    ['M8 2.5 14 13.5H2Z', false],
    ['M8 6.5V10', false],
  ],
  FAIL: [
    ['M1.5 1.5H14.5V14.5H1.5Z', true],
    ['M5 5 11 11M11 5 5 11', false],
  ],
  INCOMPLETE: [
    ['M2 2H14V14H2Z', false],
    ['M2 8 8 2M2 14 14 2M8 14 14 8', false],
  ],
};

/** The mark beside a verdict's word. It is decoration: the word carries the meaning. */
export const verdictMark = (verdict: Verdict): SVGSVGElement => {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('class', `mark mark-${verdict.toLowerCase()}`);
  svg.setAttribute('aria-hidden', 'true');
  for (const [path, filled] of PATHS[verdict]) {
    const stroke = document.createElementNS(SVG, 'path');
    stroke.setAttribute('d', path);
    stroke.setAttribute('class', filled ? 'mark-ground' : 'mark-line');
    svg.append(stroke);
  }
  return svg;
};

/** The word with its mark. */
export const verdictWord = (verdict: Verdict): HTMLElement =>
  make('span', { class: `cw-verdict ${verdict.toLowerCase()}` }, verdictMark(verdict), verdict);
