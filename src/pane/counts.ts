import { VERDICTS, type Verdict } from '../core/verdict';
import type { PaneState } from './pane-state';
import { make } from './dom';
import { verdictMark } from './verdict-mark';

/** Worst first, as the list below is. */
export const WORST_FIRST: readonly Verdict[] = [...VERDICTS].reverse();

/** Four counts that are also the switches of what the list shows. */
export const countsView = (state: PaneState, counts: Readonly<Record<Verdict, number>>): HTMLElement =>
  make(
    'div',
    { class: 'cw-counts', role: 'group', 'aria-label': state.words.counts },
    ...WORST_FIRST.map((verdict) =>
      make(
        'button',
        {
          type: 'button',
          'data-key': `count-${verdict}`,
          'aria-pressed': String(state.shown.has(verdict)),
          title: `${verdict}: ${state.words.meaning[verdict]}`,
          onclick: () => state.toggle(verdict),
        },
        make('span', { class: 'number' }, verdictMark(verdict), ` ${state.count(counts[verdict])}`),
        ' ',
        make('span', { class: 'word' }, verdict),
      ),
    ),
  );
