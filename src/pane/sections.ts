import { PLANNING_AID } from '../plan/cautions';
import { columnsView } from './columns-view';
import { countsView, WORST_FIRST } from './counts';
import { make } from './dom';
import { noticesView } from './notices-view';
import type { PaneState } from './pane-state';
import { rowListView } from './row-list';

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const folded = (
  key: string,
  title: string,
  note: string,
  open: boolean,
  ...content: readonly HTMLElement[]
): HTMLDetailsElement =>
  make(
    'details',
    { open },
    make('summary', { 'data-key': key }, title, make('span', { class: 'quiet' }, ` ${note}`)),
    ...content,
  );

const progressView = ({ busy }: PaneState): HTMLElement | null =>
  busy
    ? make('progress', {
        class: 'cw-progress',
        'aria-label': busy.what,
        max: busy.total || undefined,
        value: busy.total ? busy.done : undefined,
      })
    : null;

const checkSection = (state: PaneState): HTMLElement => {
  const { view, busy, problem, session } = state;
  const channels = view?.tables?.channels;
  return make(
    'section',
    { 'aria-label': 'Check' },
    make('h2', {}, channels ? `${plural(session.channelCount, 'channel')} on “${channels.sheet}”` : 'Channel list'),
    channels ? make('p', { class: 'quiet' }, session.describeTables()) : null,
    view?.trouble ? make('p', { class: 'cw-message note' }, view.trouble) : null,
    make(
      'div',
      { class: 'cw-actions' },
      make(
        'button',
        {
          type: 'button',
          class: 'primary',
          'data-key': 'check',
          disabled: !channels || Boolean(busy),
          onclick: () => void state.check(),
        },
        view?.results ? 'Check again' : 'Check channels',
      ),
      progressView(state),
      busy?.what === 'Checking'
        ? make('button', { type: 'button', class: 'plain', 'data-key': 'stop', onclick: () => state.cancel() }, 'Stop')
        : null,
    ),
    problem ? make('p', { class: 'cw-message', role: 'alert' }, problem) : null,
    view?.results ? countsView(view.results, state.shown, (verdict) => state.toggle(verdict)) : null,
  );
};

const rowsSection = (state: PaneState): HTMLElement | null => {
  const results = state.view?.results;
  if (!results) return null;
  const shown = WORST_FIRST.filter((verdict) => state.shown.has(verdict));
  return make(
    'section',
    { 'aria-label': 'Rows' },
    make('h2', {}, shown.length > 0 ? `Rows with ${shown.join(', ')}` : 'No rows chosen'),
    rowListView({
      results,
      shown: state.shown,
      pages: state.pages,
      openRow: state.openRow,
      detail: state.detail,
      choose: (row) => state.choose(row),
      more: () => state.more(),
    }),
  );
};

const columnsSection = (state: PaneState): HTMLElement | null => {
  const { view } = state;
  if (!view || view.fields.length === 0) return null;
  const toDecide = view.fields.filter(
    ({ status, needed }) => status === 'ask' || (status === 'absent' && needed),
  ).length;
  const section = folded(
    'columns',
    'Columns as read',
    toDecide > 0 ? `${toDecide} to decide` : 'all found',
    state.columnsOpen ?? (toDecide > 0 && !view.results),
    ...columnsView(view.fields, (field, column) => void state.correct(field, column)),
  );
  section.addEventListener('toggle', () => {
    state.columnsOpen = section.open;
  });
  return section;
};

const cautionsSection = ({ view }: PaneState): HTMLElement | null =>
  view && view.cautions.length > 0
    ? folded(
        'cautions',
        'Cautions for this plan',
        String(view.cautions.length),
        false,
        ...view.cautions.map(({ title, text }) =>
          make('p', { class: 'cw-caution' }, make('strong', {}, title), ` ${text}`),
        ),
      )
    : null;

/** The pane from top to bottom. */
export const sections = (state: PaneState): (HTMLElement | null)[] => {
  const { view } = state;
  return [
    checkSection(state),
    view && view.unread.length > 0
      ? folded(
          'unread',
          'Cells that could not be read',
          String(view.unread.length),
          false,
          noticesView(view.unread, (p) => state.go(p)),
        )
      : null,
    rowsSection(state),
    view?.results && view.across.length > 0
      ? folded(
          'across',
          'Across rows',
          String(view.across.length),
          true,
          noticesView(view.across, (p) => state.go(p)),
        )
      : null,
    columnsSection(state),
    cautionsSection(state),
    make('section', { class: 'cw-foot' }, make('p', {}, PLANNING_AID)),
  ];
};
