import type { CompareEntry, CompareSection } from '../../workbook/compare/compare-content';
import type { Beside } from '../../workbook/returned/beside';
import type { ReturnedCell } from '../../workbook/returned/returned-cells';
import { besideText, cellCares, cellName, cellPlace, cellTurn, returnedOutcome, RETURNED_WORDS } from '../../workbook/returned/returned-words'; // prettier-ignore
import { fileInput, make, plainButton } from '../dom';
import { verdictWord } from '../verdict-mark';
import type { Part, PickedFile, RevisionsState } from './revisions-state';

/** Entries drawn at once in each list. */
const FIRST = 20;

/** A button that lets a person pick a workbook. */
const picker = (state: RevisionsState, key: string, text: string, pick: (file: PickedFile) => void): HTMLElement[] => {
  const input = fileInput(`${key}-file`, text, '.xlsx,.xlsm', pick);
  return [plainButton(key, text, () => input.click(), state.busy !== undefined), input];
};

const stateViews = ({ busy, told, words }: RevisionsState, part: Part): (HTMLElement | null)[] => [
  busy === part ? make('progress', { class: 'cw-progress', 'aria-label': words.reading }) : null,
  told?.at === part
    ? make(
        'p',
        { class: told.isProblem ? 'cw-message' : 'cw-message note', role: told.isProblem ? 'alert' : 'status' },
        told.text,
      )
    : null,
];

const more = (state: RevisionsState, key: string, count: number): HTMLElement | null =>
  state.whole.has(key) || count <= FIRST
    ? null
    : plainButton(`all-${key}`, state.words.all(state.count(count)), () => state.showWhole(key));
const shownOf = <T>(state: RevisionsState, key: string, all: readonly T[]): readonly T[] =>
  state.whole.has(key) ? all : all.slice(0, FIRST);

const outcomeList = (lines: readonly string[]): HTMLElement =>
  make('ul', { class: 'cw-outcome', role: 'status' }, ...lines.map((line) => make('li', {}, line)));

const entryView = (state: RevisionsState, section: CompareSection, entry: CompareEntry, i: number): HTMLElement => {
  const { before, after } = entry.verdicts ?? {};
  const go = state.goTo(entry);
  const name =
    entry.name === '' || !go
      ? make('strong', {}, entry.name)
      : make('button', { type: 'button', class: 'link', 'data-key': `${section.key}-${i}`, onclick: go }, entry.name);
  const turn = [before, after].flatMap((verdict, k) =>
    verdict ? [k === 1 && before ? ' → ' : '', verdictWord(verdict)] : [],
  );
  return make(
    'li',
    {},
    entry.name === '' ? null : make('div', { class: 'head' }, name, make('span', { class: 'turn' }, ...turn)),
    ...entry.sentences.map((sentence) => make('div', {}, sentence)),
  );
};

const comparisonViews = (state: RevisionsState): (HTMLElement | null)[] => {
  const { comparison } = state;
  if (!comparison) return [];
  const { content, name } = comparison;
  return [
    make('p', { class: 'quiet' }, name),
    outcomeList(content.outcome),
    ...content.sections.flatMap((section) => [
      make('h4', {}, section.title),
      make(
        'ul',
        { class: 'cw-entries', 'aria-label': section.title },
        ...shownOf(state, section.key, section.entries).map((entry, i) => entryView(state, section, entry, i)),
      ),
      more(state, section.key, section.entries.length),
    ]),
  ];
};

const cellView = (state: RevisionsState, cell: ReturnedCell, i: number): HTMLElement => {
  const id = `cw-returned-${i}`;
  return make(
    'li',
    { class: 'cell' },
    make('input', {
      type: 'checkbox',
      id,
      'data-key': `returned-${i}`,
      checked: state.isChosen(cell),
      onchange: (event) => state.choose(cell, (event.target as HTMLInputElement).checked),
    }),
    make(
      'div',
      {},
      make('label', { for: id }, `${cellName(cell)}: ${cellTurn(cell, state.language)}`),
      ...cellCares(cell, state.language).map((care) => make('div', { class: 'care' }, `! ${care}`)),
      make(
        'button',
        { type: 'button', class: 'link', 'data-key': `returned-go-${i}`, onclick: () => state.goToCell(cell) },
        cellPlace(cell),
      ),
    ),
  );
};

/** Remarks of the customer, with their place in the copy. */
const besideViews = (state: RevisionsState, beside: readonly Beside[]): (HTMLElement | null)[] =>
  beside.length === 0
    ? []
    : [
        make('p', {}, RETURNED_WORDS[state.language].beside),
        make(
          'ul',
          { class: 'cw-entries', 'aria-label': RETURNED_WORDS[state.language].beside },
          ...shownOf(state, 'beside', beside).map((one) => make('li', {}, besideText(one, state.language), make('div', { class: 'quiet' }, cellPlace(one)))), // prettier-ignore
        ),
        more(state, 'beside', beside.length),
      ];

const returnedViews = (state: RevisionsState): (HTMLElement | null)[] => {
  const { returned, words, copyName } = state;
  if (!returned) return [];
  const { cells } = returned;
  const chosen = cells.filter((cell) => state.isChosen(cell)).length;
  return [
    make('p', { class: 'quiet' }, copyName),
    outcomeList(returnedOutcome(returned, state.language)),
    ...besideViews(state, returned.beside),
    ...(cells.length === 0
      ? []
      : [
          make(
            'div',
            { class: 'cw-actions' },
            plainButton('choose-easy', words.chooseEasy, () => state.chooseEasy()),
            plainButton('choose-none', words.chooseNone, () => state.chooseNone(), chosen === 0),
          ),
          make(
            'ul',
            { class: 'cw-entries', 'aria-label': words.takeBack },
            ...shownOf(state, 'returned', cells).map((cell, i) => cellView(state, cell, i)),
          ),
          more(state, 'returned', cells.length),
          make(
            'div',
            { class: 'cw-actions' },
            make(
              'button',
              { type: 'button', class: 'primary', 'data-key': 'take', disabled: chosen === 0 || state.busy !== undefined, onclick: () => void state.take() }, // prettier-ignore
              words.take(state.count(chosen), chosen === 1),
            ),
          ),
        ]),
  ];
};

/** Comparing the open plan with another file, and taking a returned copy back. */
export const revisionsView = (state: RevisionsState): readonly HTMLElement[] => {
  const { words, sentName } = state;
  return [
    make(
      'div',
      { class: 'cw-revisions' },
      make('h3', {}, words.compare),
      make('p', { class: 'quiet' }, words.compareText),
      make('div', { class: 'cw-actions' }, ...picker(state, 'compare', words.pickEarlier, (file) => void state.compare(file))), // prettier-ignore
      ...stateViews(state, 'compare'),
      ...comparisonViews(state),
    ),
    make(
      'div',
      { class: 'cw-revisions' },
      make('h3', {}, words.takeBack),
      make('p', { class: 'quiet' }, words.takeBackText),
      make(
        'div',
        { class: 'cw-actions' },
        ...picker(state, 'take-back', words.pickReturned, (file) => void state.takeBack(file)),
        ...picker(state, 'as-it-left', words.pickSent, (file) => void state.asItLeft(file)),
      ),
      sentName === '' ? null : make('p', { class: 'quiet' }, words.sentIs(sentName)),
      ...stateViews(state, 'returned'),
      ...returnedViews(state),
    ),
    make(
      'div',
      { class: 'cw-revisions' },
      make('h3', {}, words.stock),
      make('p', { class: 'quiet' }, words.stockText),
      make('div', { class: 'cw-actions' }, ...picker(state, 'stock', words.pickStock, (file) => void state.takeStock(file))), // prettier-ignore
      ...stateViews(state, 'stock'),
    ),
  ];
};
