import type { InLanguages, Language } from '../core/language';
import { LIST_WORDS } from '../workbook/list-words';
import type { ListView } from '../workbook/plan-view';
import { make } from './dom';
import type { PaneState } from './pane-state';

interface Words {
  readonly title: string;
  readonly part: string;
  readonly ask: string;
  readonly belongs: string;
  readonly leftOut: string;
  readonly undecided: string;
  readonly label: (sheet: string) => string;
  readonly manySheets: (count: number) => string;
}
const WORDS: InLanguages<Words> = {
  en: {
    title: 'Sheets of the channel list',
    part: 'A plan may be spread over sheets. Each keeps its own columns; rows are judged together.',
    ask: 'Does each of these belong to the plan?',
    belongs: 'belongs to the plan',
    leftOut: 'left out',
    undecided: 'to decide: left out so far',
    label: (sheet) => `List on “${sheet}”`,
    manySheets: (count) => `${count} sheets`,
  },
  de: {
    title: 'Blätter der Kanalliste',
    part: 'Ein Plan darf auf mehrere Blätter verteilt sein. Jedes behält seine Spalten; geprüft wird alles zusammen.',
    ask: 'Gehört jedes davon zum Plan?',
    belongs: 'gehört zum Plan',
    leftOut: 'ausgelassen',
    undecided: 'zu entscheiden: bisher ausgelassen',
    label: (sheet) => `Liste auf „${sheet}“`,
    manySheets: (count) => `${count} Blättern`,
  },
  fr: {
    title: 'Feuilles de la liste des voies',
    part: 'Un plan peut occuper plusieurs feuilles. Chacune garde ses colonnes ; les lignes sont jugées ensemble.',
    ask: 'Chacune fait-elle partie du plan ?',
    belongs: 'fait partie du plan',
    leftOut: 'laissée de côté',
    undecided: 'à décider : laissée de côté jusqu’ici',
    label: (sheet) => `Liste sur « ${sheet} »`,
    manySheets: (count) => `${count} feuilles`,
  },
};

const MOST_NAMED = 3;

/** "“Wing” and “Tail”", or how many there are. */
export const sheetsOf = (sheets: readonly string[], language: Language): string =>
  sheets.length > MOST_NAMED ? WORDS[language].manySheets(sheets.length) : LIST_WORDS[language].sheets(sheets);

const listRow = (state: PaneState, { sheet, belongs, isAsked, note, canChange, at }: ListView): HTMLElement => {
  const words = WORDS[state.language];
  const key = `list-${sheet}`;
  const choices: readonly [value: string, label: string][] = isAsked
    ? [
        ['ask', words.undecided],
        ['yes', words.belongs],
        ['no', words.leftOut],
      ]
    : [
        ['yes', words.belongs],
        ['no', words.leftOut],
      ];
  const chosen = isAsked ? 'ask' : belongs ? 'yes' : 'no';
  return make(
    'tr',
    { class: isAsked ? 'ask' : '' },
    make(
      'th',
      { scope: 'row' },
      make('button', { type: 'button', class: 'link', 'data-key': `go-${key}`, onclick: () => state.go(at) }, sheet),
    ),
    make(
      'td',
      {},
      canChange
        ? make(
            'select',
            {
              'aria-label': words.label(sheet),
              'data-key': key,
              onchange: (event) => {
                const { value } = event.target as HTMLSelectElement;
                if (value !== 'ask') void state.chooseList(sheet, value === 'yes');
              },
            },
            ...choices.map(([value, label]) => make('option', { value, selected: value === chosen }, label)),
          )
        : null,
      make('div', { class: 'note' }, note),
    ),
  );
};

/** Which sheets the plan is made of, and those of which somebody has to say whether they belong. */
export const listsView = (state: PaneState, lists: readonly ListView[]): HTMLElement => {
  const words = WORDS[state.language];
  const isAsked = lists.some((list) => list.isAsked);
  const open = state.isOpen('lists', isAsked);
  const section = make(
    'details',
    { class: 'cw-lists', open },
    make('summary', { 'data-key': 'lists' }, words.title, make('span', { class: 'quiet' }, ` ${lists.length}`)),
    ...(open
      ? [
          make('p', { class: 'quiet' }, isAsked ? words.ask : words.part),
          make(
            'table',
            { class: 'cw-fields', 'aria-label': words.title },
            ...lists.map((list) => listRow(state, list)),
          ),
        ]
      : []),
  );
  section.addEventListener('toggle', () => {
    if (section.open !== open) state.setOpen('lists', section.open);
  });
  return section;
};
