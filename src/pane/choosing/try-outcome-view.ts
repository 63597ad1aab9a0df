import { VERDICTS } from '../../core/verdict';
import { marginWords } from '../../plan/choosing/candidate-words';
import type { ComparedChannel } from '../../plan/choosing/what-if';
import { sentenceOf } from '../../plan/sentence';
import type { TriedChange } from '../../workbook/choosing/what-if';
import { make } from '../dom';
import { folded } from '../folded';
import type { PaneState } from '../pane-state';
import { verdictWord } from '../verdict-mark';
import type { TryState } from './try-state';
import type { TryWords } from './try-words';

/** Changed rows drawn at first; the rest on request. */
const FIRST = 20;
const WORST_FIRST = [...VERDICTS].reverse();

/** The plan before and after, row by row, with what to do about it. */
export const outcomeViews = (state: PaneState, trying: TryState, words: TryWords): readonly (HTMLElement | null)[] => {
  const { outcome, trials } = trying;
  if (trials.length === 0) return [];
  const drop = make('button', { type: 'button', class: 'plain', 'data-key': 'try-drop', onclick: () => trying.drop() }, words.drop); // prettier-ignore
  if (!outcome)
    return [
      make(
        'div',
        { class: 'cw-actions' },
        make('button', { type: 'button', class: 'plain', 'data-key': 'try-again', onclick: () => void state.tryAgain() }, words.again), // prettier-ignore
        drop,
      ),
    ];
  const { changed, across } = outcome.comparison;
  const shown = trying.isLong ? changed : changed.slice(0, FIRST);
  const rest = changed.length - shown.length;
  return [
    countsTable(state, outcome, words),
    make(
      'p',
      { class: 'quiet', role: 'status' },
      changed.length === 0 ? words.nothing : words.changed(state.count(changed.length), changed.length === 1),
    ),
    outcome.refusals.length > 0
      ? make(
          'div',
          { class: 'cw-message', role: 'alert' },
          words.cannot,
          make('ul', {}, ...outcome.refusals.slice(0, FIRST).map((text) => make('li', {}, text))),
        )
      : null,
    make(
      'div',
      { class: 'cw-actions' },
      outcome.refusals.length === 0
        ? make('button', { type: 'button', class: 'primary', 'data-key': 'try-keep', onclick: () => void state.keepTried() }, words.keep) // prettier-ignore
        : null,
      drop,
    ),
    make('ul', { class: 'cw-tried' }, ...shown.map((one) => changedView(state, outcome, one, words))),
    rest > 0
      ? make('p', {}, make('button', { type: 'button', class: 'plain', 'data-key': 'try-more', onclick: () => trying.showAll() }, words.more(state.count(rest)))) // prettier-ignore
      : null,
    across.came.length + across.gone.length > 0 ? acrossView(state, across, words) : null,
  ];
};

const signed = (number: number): string => (number > 0 ? `+${number}` : number < 0 ? `−${-number}` : '0');

const countsTable = (state: PaneState, { comparison }: TriedChange, words: TryWords): HTMLElement =>
  make(
    'table',
    { class: 'cw-before-after' },
    make(
      'tr',
      {},
      make('th', { scope: 'col' }, words.verdict),
      ...[words.before, words.after, words.difference].map((text) =>
        make('th', { scope: 'col', class: 'number' }, text),
      ),
    ),
    ...WORST_FIRST.map((verdict) => {
      const [was, is] = [comparison.before[verdict], comparison.after[verdict]];
      return make(
        'tr',
        {},
        make('th', { scope: 'row' }, verdictWord(verdict)),
        ...[state.count(was), state.count(is), signed(is - was)].map((text) => make('td', { class: 'number' }, text)),
      );
    }),
  );

const changedView = (
  state: PaneState,
  outcome: TriedChange,
  { place, before, after, marginBefore, marginAfter, came, gone }: ComparedChannel,
  words: TryWords,
): HTMLElement => {
  const { language } = state;
  const row = outcome.rows[place]!;
  const margins = [marginBefore, marginAfter].map((margin) => marginWords(margin, language));
  return make(
    'li',
    {},
    make(
      'button',
      { type: 'button', class: 'cw-place', 'data-key': `tried-${row}`, onclick: () => state.goToRow(row) },
      make('strong', {}, after.channel.id),
      ' ',
      verdictWord(before.verdict),
      ' → ',
      verdictWord(after.verdict),
    ),
    make('div', { class: 'quiet' }, `${words.margin} ${margins.join(' → ')}`),
    came.length + gone.length > 0 ? reasonList(state, { came, gone }, words) : null,
  );
};

const acrossView = (state: PaneState, across: TriedChange['comparison']['across'], words: TryWords): HTMLElement =>
  folded(state, 'try-across', words.across, () => [reasonList(state, across, words)], {
    note: state.count(across.came.length + across.gone.length),
    class: 'cw-asked',
  });

const reasonList = (
  { language }: PaneState,
  { came, gone }: Pick<ComparedChannel, 'came' | 'gone'>,
  words: TryWords,
): HTMLElement =>
  make(
    'ul',
    {},
    ...came.map((finding) => make('li', {}, `${words.came} ${sentenceOf(finding, language)}`)),
    ...gone.map((finding) => make('li', { class: 'quiet' }, `${words.gone} ${sentenceOf(finding, language)}`)),
  );
