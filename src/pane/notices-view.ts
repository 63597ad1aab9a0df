import { cellAddress } from '../workbook/address';
import type { Notice, Place } from '../workbook/plan-view';
import { make } from './dom';

/** A line that opens. */
type Fold = (key: string, title: string, content: () => HTMLElement[]) => HTMLElement;

/** Sentences with a way to the cell each speaks of. */
export const noticesView = (
  notices: readonly Notice[],
  go: (place: Place) => void,
  fold: Fold,
  key = 'notice',
): HTMLElement =>
  make(
    'ul',
    { class: 'cw-findings' },
    ...notices.map(({ text, at, parts = [] }, i) =>
      make(
        'li',
        {},
        at
          ? make(
              'button',
              {
                type: 'button',
                class: 'link',
                'data-key': `${key}-${i}-${at.row}-${at.column}`,
                onclick: () => go(at),
              },
              `${at.sheet}!${cellAddress(at.row, at.column)}`,
            )
          : null,
        at ? ' ' : null,
        ...(parts.length > 0
          ? [fold(`${key}-${i}`, text, () => [noticesView(parts, go, fold, `${key}-${i}`)])]
          : [text]),
      ),
    ),
  );
