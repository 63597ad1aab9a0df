import type { Results, RowResult } from '../workbook/results';
import { make } from './dom';
import type { PaneState } from './pane-state';
import { verdictWord } from './verdict-mark';

/** Rows drawn at once; more on request, so that a long plan stays quick. */
const PAGE = 100;

const rowView = (result: RowResult, open: boolean, choose: (row: number) => void): HTMLElement =>
  make(
    'button',
    {
      type: 'button',
      class: 'cw-row',
      'data-key': `row-${result.row}`,
      'aria-expanded': String(open),
      onclick: () => choose(result.row),
    },
    verdictWord(result.verdict),
    make(
      'span',
      { class: 'name' },
      result.channel,
      result.place ? make('span', { class: 'quiet' }, ` ${result.place}`) : null,
    ),
    result.sheet ? make('span', { class: 'cw-sheet' }, result.sheet) : null,
    result.reason ? make('span', { class: 'reason' }, result.reason) : null,
  );

/** Failing rows first, as real text; a click opens the row and jumps to it in the sheet. */
export const rowListView = (state: PaneState, results: Results): HTMLElement => {
  const { words, shown, openRow } = state;
  const opened = state.rowPart?.openRowView(state) ?? null;
  const rows = results.rows.filter((result) => shown.has(result.verdict));
  const drawn = rows.slice(0, state.pages * PAGE);
  const rest = rows.length - drawn.length;
  return make(
    'div',
    {},
    rows.length === 0 ? make('p', { class: 'quiet' }, words.noRows) : null,
    make(
      'ul',
      { class: 'cw-rows', 'aria-label': words.worstFirst },
      ...drawn.map((result) => {
        const open = result.row === openRow;
        const choose = (row: number) => state.choose(row);
        return make('li', {}, rowView(result, open, choose), open ? opened : null);
      }),
    ),
    rest > 0
      ? make(
          'p',
          { class: 'cw-actions' },
          make(
            'button',
            { type: 'button', class: 'plain', 'data-key': 'more', onclick: () => state.more() },
            words.more(state.count(rest)),
          ),
        )
      : null,
  );
};
