import type { TypeUse, Unserved } from '../../plan/assign/assignment';
import { lateWords } from '../../plan/assign/piece-words';
import { objectiveWords, outcomeWords, shortageWords, stillNamedWords, unservedWords } from '../../plan/assign/words';
import type { ScopedAssignment } from '../../workbook/assign/assign-rows';
import { make } from '../dom';
import { assignedList } from './assign-rows-view';
import type { AssignState } from './assign-state';

type Parts = readonly (HTMLElement | null)[];
/** Lines of a list at first. */
const FIRST = 8;

/** Everything that was found, from the answer to how it came about; nothing of it is written yet. */
export const assignResult = (state: AssignState, found: ScopedAssignment): Parts => {
  const { words } = state;
  const { language } = state.pane;
  const [served, ...certain] = outcomeWords(found, language);
  const missing = shortageWords(found, language);
  const [objective, ...terms] = objectiveWords(found, language);
  const short = found.unserved.filter(({ why }) => why === 'stock');
  const unfit = found.unserved.filter(({ why }) => why !== 'stock');
  const count = (list: readonly unknown[]) => state.pane.count(list.length);
  return [
    make('div', { class: 'cw-message note' }, make('p', {}, make('strong', {}, served ?? '')), ...certain.map((text) => make('p', {}, text))), // prettier-ignore
    ...(missing.length > 0
      ? [make('h3', {}, words.missing), ...missing.map((text) => make('p', { class: 'cw-assign-missing' }, text))]
      : []),
    ...leftOut(state, found, short, words.without(count(short))),
    ...unservedList(state, found, unfit, 'unfit', words.unfitting(count(unfit)), words.unfittingHint),
    ...stillNamedWords(found, language).map((text) => make('p', { class: 'cw-caution' }, text)),
    found.overdrawn.length > 0 ? make('p', { class: 'cw-caution' }, words.overdrawn(found.overdrawn.join(', '))) : null,
    ...usesTable(state, found.uses),
    ...lateWords(found, language, 'used').map((text) => make('p', { class: 'quiet' }, text)),
    folded(state, 'assign-rows', words.rowByRow, count(found.assigned), () => assignedList(state, found)),
    terms.length > 0
      ? folded(state, 'assign-objective', words.objective, '', () => [
          make('p', { class: 'quiet' }, objective ?? ''),
          make('ul', {}, ...terms.map((text) => make('li', {}, text))),
        ])
      : null,
    ...writeViews(state),
  ];
};

const writeViews = (state: AssignState): Parts => {
  const { words, cells, written, pane } = state;
  if (!state.isCurrent)
    return [make('p', { class: 'cw-message note' }, written === undefined ? words.stale : state.writtenWords(written))];
  if (cells === 0) return [make('p', { class: 'cw-message note' }, words.nothingToWrite)];
  const text = words.write(pane.count(cells), cells === 1);
  return [
    make(
      'div',
      { class: 'cw-actions' },
      make(
        'button',
        {
          type: 'button',
          class: 'primary',
          'data-key': 'assign-write',
          'aria-disabled': pane.busy ? 'true' : undefined,
          onclick: () => void state.write(),
        },
        text,
      ),
    ),
  ];
};

/** One reason for all of them, so that names are enough. */
const leftOut = (state: AssignState, found: ScopedAssignment, all: readonly Unserved[], title: string): Parts =>
  all.length === 0
    ? []
    : [
        make('h3', {}, title),
        make('p', { class: 'quiet' }, state.words.withoutWhy),
        make('ul', { class: 'cw-assign-names', 'aria-label': title }, ...all.map((one) => make('li', {}, rowLink(state, found, one)))), // prettier-ignore
      ];

const rowLink = (state: AssignState, { channels, rows }: ScopedAssignment, { channel }: Unserved): HTMLElement =>
  make(
    'button',
    {
      type: 'button',
      class: 'link',
      'data-key': `assign-out-${rows[channel]}`,
      onclick: () => state.pane.goToRow(rows[channel]!),
    },
    channels[channel]!.id,
  );

const unservedList = (
  state: AssignState,
  found: ScopedAssignment,
  all: readonly Unserved[],
  name: string,
  title: string,
  hint?: string,
): Parts => {
  if (all.length === 0) return [];
  const shown = all.slice(0, state.lengths.get(name) ?? FIRST);
  const rest = all.length - shown.length;
  const line = (one: Unserved): HTMLElement => {
    const { id } = found.channels[one.channel]!;
    const said = unservedWords(one, found.channels, state.pane.language);
    return make('li', {}, rowLink(state, found, one), said.startsWith(id) ? said.slice(id.length) : ` ${said}`);
  };
  return [
    make('h3', {}, title),
    hint ? make('p', { class: 'quiet' }, hint) : null,
    make('ul', { class: 'cw-findings', 'aria-label': title }, ...shown.map(line)),
    rest > 0 ? moreButton(state, name, rest, all.length) : null,
  ];
};

const moreButton = (state: AssignState, name: string, rest: number, length: number): HTMLElement =>
  make(
    'button',
    {
      type: 'button',
      class: 'plain',
      'data-key': `assign-more-${name}`,
      onclick: () => state.showMore(name, length),
    },
    state.words.more(state.pane.count(rest)),
  );

const usesTable = (state: AssignState, uses: readonly TypeUse[]): Parts => {
  const { words, pane } = state;
  const inUse = uses.filter(({ used }) => used > 0);
  const idle = uses.length - inUse.length;
  const amount = (n: number | undefined): string => (n === undefined ? words.noLimit : pane.count(n));
  const head = [words.type, words.used, words.stock, words.kept, words.left];
  const line = ({ sensor, quantity, used, kept, left }: TypeUse): HTMLElement =>
    make(
      'tr',
      { class: left === 0 ? 'spent' : undefined },
      make('th', { scope: 'row' }, sensor.name),
      ...[used, quantity, kept, left].map((n) => make('td', {}, amount(n))),
    );
  return [
    make('h3', { id: 'cw-assign-uses' }, words.uses),
    make(
      'table',
      { class: 'cw-assign-uses', 'aria-labelledby': 'cw-assign-uses' },
      make('thead', {}, make('tr', {}, ...head.map((text) => make('th', { scope: 'col' }, text)))),
      make('tbody', {}, ...inUse.map(line)),
    ),
    make('p', { class: 'quiet' }, [words.usesNote, ...(idle > 0 ? [words.idleTypes(pane.count(idle), idle === 1)] : [])].join(' ')), // prettier-ignore
  ];
};

/** A part that opens on demand; its content is made only while it is open. */
const folded = (state: AssignState, key: string, title: string, note: string, content: () => Parts): HTMLElement => {
  const open = state.opened.has(key);
  const part = make(
    'details',
    { open, class: 'cw-assign-fold' },
    make('summary', { 'data-key': key }, title, note ? make('span', { class: 'quiet' }, ` ${note}`) : null),
    ...(open ? content() : []),
  );
  part.addEventListener('toggle', () => {
    if (part.open !== open) state.setOpened(key, part.open);
  });
  return part;
};
