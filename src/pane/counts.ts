import { VERDICTS, type Verdict } from '../core/verdict';
import type { Results } from '../workbook/results';
import { make } from './dom';
import { verdictMark } from './verdict-mark';

/** Worst first, as the list below is. */
export const WORST_FIRST: readonly Verdict[] = [...VERDICTS].reverse();

/** Four counts that are also the switches of what the list shows. */
export const countsView = (
  results: Results,
  shown: ReadonlySet<Verdict>,
  toggle: (verdict: Verdict) => void,
): HTMLElement =>
  make(
    'div',
    { class: 'cw-counts', role: 'group', 'aria-label': 'Channels by verdict; press to show or hide them below' },
    ...WORST_FIRST.map((verdict) =>
      make(
        'button',
        {
          type: 'button',
          'data-key': `count-${verdict}`,
          'aria-pressed': String(shown.has(verdict)),
          'aria-label': `${verdict}: ${results.counts[verdict]}`,
          onclick: () => toggle(verdict),
        },
        make('span', { class: 'number' }, verdictMark(verdict), ` ${results.counts[verdict]}`),
        make('span', { class: 'word' }, verdict),
      ),
    ),
  );
