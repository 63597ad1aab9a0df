import { planningAid } from '../plan/words/cautions';
import { columnsView } from './columns-view';
import { countsView, WORST_FIRST } from './counts';
import { channelSheets } from '../workbook/channel-lists';
import type { CautionView, Notice } from '../workbook/plan-view';
import { make } from './dom';
import { folded } from './folded';
import { listsView, sheetsOf } from './lists-view';
import { noticesView } from './notices-view';
import type { PaneState } from './pane-state';
import { mappingView, papersView } from './papers/papers-view';
import { READINGS_TITLE } from './readings-words';
import { revisionsView } from './revisions/revisions-view';
import { shareView } from './share/share-view';
import { rowListView } from './row-list';
import { tryViews } from './choosing/try-view';
import { TRY_WORDS } from './choosing/try-words';

const progressView = ({ busy, words }: PaneState): HTMLElement | null =>
  busy
    ? make('progress', {
        class: 'cw-progress',
        'aria-label': words.busy[busy.what],
        max: busy.total || undefined,
        value: busy.total ? busy.done : undefined,
      })
    : null;

const checkSection = (state: PaneState): HTMLElement => {
  const { view, busy, problem, session, words } = state;
  const channels = view?.tables?.channels;
  return make(
    'section',
    { 'aria-label': words.check },
    make(
      'h2',
      {},
      channels
        ? words.channelsOn(
            state.count(session.channelCount),
            session.channelCount === 1,
            sheetsOf(channelSheets({ channels }), state.language),
          )
        : words.channelList,
    ),
    channels ? make('p', { class: 'quiet' }, session.describeTables()) : null,
    view?.trouble ? make('p', { class: 'cw-message note' }, view.trouble) : null,
    view && view.lists.length > 0 ? listsView(state, view.lists) : null,
    make(
      'div',
      { class: 'cw-actions' },
      make(
        'button',
        {
          type: 'button',
          class: 'primary',
          'data-key': 'check',
          disabled: !channels,
          // Still there for the keyboard, so that the focus is not lost.
          'aria-disabled': busy ? 'true' : undefined,
          onclick: () => void state.check(),
        },
        view?.results ? words.checkAgain : words.checkChannels,
      ),
      progressView(state),
      busy?.what === 'checking'
        ? make(
            'button',
            { type: 'button', class: 'plain', 'data-key': 'stop', onclick: () => state.cancel() },
            words.stop,
          )
        : null,
    ),
    problem ? make('p', { class: 'cw-message', role: 'alert' }, problem) : null,
    view?.results ? countsView(state, view.results.counts) : null,
  );
};

const rowsSection = (state: PaneState): HTMLElement | null => {
  const { words } = state;
  const results = state.view?.results;
  if (!results) return null;
  const shown = WORST_FIRST.filter((verdict) => state.shown.has(verdict));
  return make(
    'section',
    { 'aria-label': words.rows },
    make('h2', {}, shown.length > 0 ? words.rowsWith(shown.join(', ')) : words.noRowsChosen),
    rowListView(state, results),
  );
};

const columnsSection = (state: PaneState): HTMLElement | null => {
  const { view, words } = state;
  if (!view || view.fields.length === 0) return null;
  const toDecide = view.fields.filter(
    ({ status, needed }) => status === 'ask' || (status === 'absent' && needed),
  ).length;
  return folded(
    state,
    'columns',
    words.columns,
    () => [
      ...columnsView(view.fields, words, (field, column) => void state.correct(field, column)),
      ...(state.papers ? [mappingView(state.papers)] : []),
    ],
    {
      note: toDecide > 0 ? words.toDecide(state.count(toDecide)) : words.allFound,
      openAtFirst: toDecide > 0 && !view.results,
    },
  );
};

const opening = (state: PaneState, key: string) => (at: string, text: string, parts: () => HTMLElement[]) =>
  folded(state, `${key} ${at}`, text, parts, { class: 'cw-group' });

const noticesSection = (
  state: PaneState,
  key: string,
  title: string,
  notices: readonly Notice[],
): HTMLElement | null =>
  notices.length > 0
    ? folded(state, key, title, () => [noticesView(notices, (place) => state.go(place), opening(state, key))], {
        note: state.count(notices.length),
      })
    : null;

const cautionView = ({ title, text }: CautionView): HTMLElement =>
  make('p', { class: 'cw-caution' }, make('strong', {}, title), ` ${text}`);

const papersSection = (state: PaneState): HTMLElement | null => {
  const { papers, view } = state;
  if (!papers) return null;
  const { title, note } = papers.words;
  return folded(state, 'papers', title, () => papersView(papers, view?.tables !== undefined), { note });
};

const revisionsSection = (state: PaneState): HTMLElement | null => {
  const { revisions, view } = state;
  if (!revisions || !view?.tables) return null;
  return folded(state, 'revisions', revisions.words.title, () => revisionsView(revisions), {
    note: revisions.words.note,
  });
};

const shareSection = (state: PaneState): HTMLElement | null => {
  const { share, view } = state;
  if (!share) return null;
  const { title, note } = share.words;
  return folded(state, 'share', title, () => shareView(share, view?.tables !== undefined), { note });
};

/** The pane from top to bottom. */
export const sections = (state: PaneState): (HTMLElement | null)[] => {
  const { words, language } = state;
  const { unread = [], readings = [], across = [], cautions = [], results } = state.view ?? {};
  return [
    checkSection(state),
    noticesSection(state, 'unread', words.unread, unread),
    rowsSection(state),
    results ? folded(state, 'try', TRY_WORDS[language].title, () => tryViews(state, state.trying)) : null,
    noticesSection(state, 'readings', READINGS_TITLE[language], readings),
    results ? noticesSection(state, 'across', words.across, across) : null,
    columnsSection(state),
    papersSection(state),
    revisionsSection(state),
    shareSection(state),
    cautions.length > 0
      ? folded(state, 'cautions', words.cautions, () => cautions.map(cautionView), {
          note: state.count(cautions.length),
        })
      : null,
    make('section', { class: 'cw-foot' }, make('p', {}, planningAid(language))),
  ];
};
