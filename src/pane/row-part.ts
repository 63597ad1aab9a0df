// What an open row shows: a chunk of its own, for plots and choosing are large and the pane opens without them.
import type { Language } from '../core/language';
import { detailOf } from '../workbook/detail';
import type { DetailLine, RowDetail } from '../workbook/plan-view';
import { askedViews } from './choosing/asked-view';
import type { ChooseState } from './choosing/choose-state';
import { chooseView } from './choosing/choose-view';
import { make } from './dom';
import type { PaneState } from './pane-state';
import { channelSheetView } from './papers/papers-view';
import { PLOT_WIDTH, plotView } from './plot-view';
import { verdictWord } from './verdict-mark';
import type { PaneWords } from './words';

export { ChooseState } from './choosing/choose-state';

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

const detailView = (
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

/** All that is known of the open row, and what can be chosen for it; undefined where the row carries no channel. */
export const openRowView = (state: PaneState): HTMLElement | undefined => {
  const { words, language, openRow, choosing } = state;
  const { judged } = state.session.source;
  const check = openRow === undefined ? undefined : judged?.byRow.get(openRow);
  if (!judged || !check) return undefined;
  const detail = detailOf(check, judged.limits, language, PLOT_WIDTH);
  return detailView(detail, words, language, ...(choosing ? choiceViews(state, choosing) : []));
};
