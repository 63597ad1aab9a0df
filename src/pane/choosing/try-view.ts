import { markedIn } from '../../core/language';
import { fieldTitle } from '../../plan/words/titles';
import { make } from '../dom';
import type { PaneState } from '../pane-state';
import { outcomeViews } from './try-outcome-view';
import type { Trial, TryState, TryTarget } from './try-state';
import { TRY_WORDS, type TryWords } from './try-words';

/** Changing a requirement or a part for many rows, and what it would do, before anything is written. */
export const tryViews = (state: PaneState, trying: TryState): readonly (HTMLElement | null)[] => {
  const words = TRY_WORDS[state.language];
  return [
    make('p', { class: 'quiet' }, words.note),
    targetView(state, trying, words),
    changeView(state, trying, words),
    problemView(trying, words),
    trying.trials.length > 0
      ? make('ul', { class: 'cw-trials' }, ...trying.trials.map((trial) => trialView(state, trying, trial, words)))
      : null,
    ...outcomeViews(state, trying, words),
  ];
};

const targetView = (state: PaneState, trying: TryState, words: TryWords): HTMLElement => {
  const label: Readonly<Record<TryTarget, string>> = {
    all: words.all(state.count(trying.allRows.length)),
    shown: words.shown(state.count(trying.rowsShown().length)),
    selected: words.selected,
  };
  return make(
    'p',
    { class: 'cw-asks' },
    make('label', { for: 'cw-try-target' }, words.target),
    make(
      'select',
      {
        id: 'cw-try-target',
        'data-key': 'try-target',
        onchange: (event) => trying.setTarget((event.target as HTMLSelectElement).value as TryTarget),
      },
      ...(Object.keys(label) as TryTarget[]).map((target) =>
        make('option', { value: target, selected: target === trying.target }, label[target]),
      ),
    ),
  );
};

/** The unit is the one that the column's heading gives. */
const headingOf = ({ session, language }: PaneState, key: string): string =>
  session.source.tables.channels?.columns.get(key)?.heading || fieldTitle('channels', key, language);

const changeView = (state: PaneState, trying: TryState, words: TryWords): HTMLElement => {
  const { names } = trying;
  return make(
    'form',
    {
      class: 'cw-asks',
      onsubmit: (event) => {
        event.preventDefault();
        void state.tryChange();
      },
    },
    make('label', { for: 'cw-try-field' }, words.field),
    make(
      'select',
      {
        id: 'cw-try-field',
        'data-key': 'try-field',
        onchange: (event) => trying.setKey((event.target as HTMLSelectElement).value),
      },
      ...trying.keys.map((key) => make('option', { value: key, selected: key === trying.key }, headingOf(state, key))),
    ),
    make('label', { for: 'cw-try-value' }, words.value),
    make('input', {
      id: 'cw-try-value',
      'data-key': 'try-value',
      value: trying.text,
      autocomplete: 'off',
      list: names.length > 0 ? 'cw-try-names' : undefined,
      oninput: (event) => {
        trying.text = (event.target as HTMLInputElement).value;
      },
    }),
    names.length > 0
      ? make('datalist', { id: 'cw-try-names' }, ...names.map((name) => make('option', { value: name })))
      : null,
    make('button', { type: 'submit', class: 'plain', 'data-key': 'try-go' }, words.go),
  );
};

const problemView = ({ problem, text }: TryState, words: TryWords): HTMLElement | null =>
  problem
    ? make(
        'p',
        { class: 'cw-message', role: 'alert' },
        problem === 'no rows' ? words.noRows : words.unread(text, problem.expected),
      )
    : null;

const trialView = (state: PaneState, trying: TryState, trial: Trial, words: TryWords): HTMLElement => {
  const { key, value, rows } = trial;
  const said = typeof value === 'number' ? markedIn(String(value), state.language) : (value ?? words.blank);
  const text = words.trial(headingOf(state, key), said, state.count(rows.length), rows.length === 1);
  return make(
    'li',
    {},
    make('span', {}, text),
    make(
      'button',
      {
        type: 'button',
        class: 'plain',
        'aria-label': words.remove(text),
        'data-key': `try-remove-${trying.trials.indexOf(trial)}`,
        onclick: () => void state.tryWithout(trial),
      },
      '×',
    ),
  );
};
