import { cellAddress } from '../workbook/address';
import type { Notice, Place } from '../workbook/plan-view';
import { make } from './dom';

/** Sentences with a way to the cell each speaks of. */
export const noticesView = (notices: readonly Notice[], go: (place: Place) => void): HTMLElement =>
  make(
    'ul',
    { class: 'cw-findings' },
    ...notices.map(({ text, at }, i) =>
      make(
        'li',
        {},
        at
          ? make(
              'button',
              {
                type: 'button',
                class: 'link',
                'data-key': `notice-${i}-${at.row}-${at.column}`,
                onclick: () => go(at),
              },
              `${at.sheet}!${cellAddress(at.row, at.column)}`,
            )
          : null,
        at ? ' ' : null,
        text,
      ),
    ),
  );
