import type { DetailLine, RowDetail } from '../workbook/plan-view';
import type { Results, RowResult } from '../workbook/results';
import type { Language } from '../core/language';
import { askedViews } from './choosing/asked-view';
import type { ChooseState } from './choosing/choose-state';
import { chooseView } from './choosing/choose-view';
import { make } from './dom';
import type { PaneState } from './pane-state';
import { channelSheetView } from './papers/papers-view';
import { plotView } from './plot-view';
import { verdictWord } from './verdict-mark';
import type { PaneWords } from './words';

/** Rows drawn at once; more on request, so that a long plan stays quick. */
const PAGE = 100;

/** Only their titles: the texts stand once, under the cautions of the plan. */
const cautionLines = ({ cautions }: RowDetail, words: PaneWords): HTMLElement[] =>
  cautions.length > 0
    ? [make('p', { class: 'cw-caution' }, words.mind(cautions.map(({ title }) => title).join(', ')))]
    : [];

const numberList = (lines: readonly DetailLine[]): HTMLElement =>
  make(
    'dl',
    {},
    ...lines.flatMap(({ label, value, unit }) => [
      make('dt', {}, label),
      make('dd', {}, value, unit ? make('span', { class: 'unit' }, ` ${unit}`) : null),
    ]),
  );

export const detailView = (
  detail: RowDetail,
  words: PaneWords,
  language: Language,
  ...more: readonly (HTMLElement | null)[]
): HTMLElement =>
  make(
    'div',
    { class: 'cw-detail' },
    detail.place.length > 0 ? numberList(detail.place) : null,
    ...detail.headlines.flatMap(({ name, verdict, lines, sentences, plot }) => [
      make('h3', {}, words.headlines[name], verdictWord(verdict)),
      numberList(lines),
      plot ? plotView(plot, language) : null,
      sentences.length > 0 ? make('ul', {}, ...sentences.map((sentence) => make('li', {}, sentence))) : null,
    ]),
    ...cautionLines(detail, words),
    ...more,
  );

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

/** What the open row asks of a sensor, what kinds can give it, and the types of the list ranked. */
const choiceViews = (state: PaneState, choose: ChooseState): readonly HTMLElement[] => {
  const { judged } = state.session.source;
  const check = judged?.byRow.get(choose.row);
  return [
    ...(judged && check ? askedViews(state, check, judged.limits) : []),
    chooseView(state, choose),
    ...(state.papers ? [channelSheetView(state.papers, choose.row)] : []),
  ];
};

/** Failing rows first, as real text; a click opens the row and jumps to it in the sheet. */
export const rowListView = (state: PaneState, results: Results): HTMLElement => {
  const { words, shown, openRow, detail } = state;
  const chosen = state.choosing ? choiceViews(state, state.choosing) : [];
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
        return make(
          'li',
          {},
          rowView(result, open, choose),
          open && detail ? detailView(detail, words, state.language, ...chosen) : null,
        );
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
