import type { Assigned } from '../../plan/assign/assignment';
import { handedOutWords } from '../../plan/assign/piece-words';
import { marginWords } from '../../plan/choosing/candidate-words';
import type { ScopedAssignment } from '../../workbook/assign/assign-rows';
import { hasColumn } from '../../workbook/assign/write-assignment';
import { make } from '../dom';
import { verdictWord } from '../verdict-mark';
import type { AssignState } from './assign-state';
import { CHOOSE_PANE_WORDS } from './choose-words';

/** Rows drawn at once; a long list stays quick that way. */
const PAGE = 50;

/** What each row would get, with its verdict then. */
export const assignedList = (state: AssignState, found: ScopedAssignment): readonly (HTMLElement | null)[] => {
  const { words, pane } = state;
  const { assigned } = found;
  const length = state.lengths.get('rows') ?? PAGE;
  const rest = assigned.length - length;
  const pieces = handedOutWords(found, hasColumn(pane.session.source, 'serial'), pane.language);
  return [
    ...pieces.map((text) => make('p', { class: 'quiet' }, text)),
    make(
      'ol',
      { class: 'cw-assign-rows', 'aria-label': words.rowByRow },
      ...assigned.slice(0, length).map((one) => line(state, found, one)),
    ),
    rest > 0
      ? make(
          'button',
          {
            type: 'button',
            class: 'plain',
            'data-key': 'assign-more-rows',
            onclick: () => state.showMore('rows', length + PAGE),
          },
          words.more(pane.count(Math.min(rest, PAGE))),
        )
      : null,
  ];
};

const line = (state: AssignState, { channels, rows }: ScopedAssignment, one: Assigned): HTMLElement => {
  const { words, pane } = state;
  const { id, point, direction, sensor } = channels[one.channel]!;
  const { combination, piece, serial, axis, verdict, margin, isPinned } = one;
  const parts = [combination.mount, combination.cable, combination.input].flatMap((part) => (part ? [part.name] : []));
  const facts = [
    serial === undefined ? words.piece(String(piece), axis) : words.numbered(serial, axis),
    ...parts,
    `${CHOOSE_PANE_WORDS[pane.language].margin} ${marginWords(margin, pane.language)}`,
    ...(isPinned ? [words.keeps] : sensor === combination.sensor ? [words.asNow] : []),
  ];
  return make(
    'li',
    {},
    make(
      'div',
      { class: 'head' },
      make(
        'button',
        {
          type: 'button',
          class: 'link',
          'data-key': `assign-row-${rows[one.channel]}`,
          onclick: () => pane.goToRow(rows[one.channel]!),
        },
        id,
      ),
      make('span', { class: 'quiet' }, [point, direction].filter(Boolean).join(' ')),
      verdictWord(verdict),
    ),
    make('div', {}, make('strong', {}, combination.sensor.name)),
    make('div', { class: 'quiet' }, facts.join(' · ')),
  );
};
