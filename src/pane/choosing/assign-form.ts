import { fieldByKey } from '../../plan/fields';
import { PARTS, stockOf } from '../../plan/choosing/candidate';
import { make } from '../dom';
import type { AssignNumber } from './assign-form-state';
import type { AssignState } from './assign-state';
import { MIXING_CHOICES, type AssignScope, type AssignSwitch, type MixingChoice } from './assign-words';
import { CHOOSE_PANE_WORDS } from './choose-words';

const SWITCHES: readonly AssignSwitch[] = ['warn', 'incomplete', 'keep', 'roving'];

/** What is known of the stock before a search, where it is not as one would wish. */
export const stockNote = (state: AssignState): string | undefined => {
  const { judged, words } = state;
  if (!judged || judged.byRow.size === 0) return words.noList;
  const { sensors } = stockOf(judged.plan);
  if (sensors.length === 0) return words.noSensors;
  const blank = sensors.filter(({ quantity }) => quantity === undefined).length;
  if (blank === sensors.length) return words.noQuantities(fieldByKey('sensors', 'quantity').title);
  return blank > 0 ? words.someQuantities(state.pane.count(blank), blank === 1) : undefined;
};

export const canSearch = ({ judged }: AssignState): boolean =>
  judged !== undefined && judged.byRow.size > 0 && judged.plan.sensors.size > 0;

/** What to respect; closed to changes while a search runs. */
export const assignForm = (state: AssignState): HTMLElement => {
  const { words, form } = state;
  return make(
    'fieldset',
    { class: 'cw-assign-form', disabled: state.running !== undefined },
    make('legend', {}, words.options),
    choice(state, 'scope', words.rows, form.scope, scopesOf(state), (scope) => (form.scope = scope)),
    number(state, 'spare', words.spareHint),
    choice(
      state,
      'mixing',
      words.mixing,
      form.mixing,
      (Object.keys(MIXING_CHOICES) as MixingChoice[]).map((key) => [key, words.mixings[key]]),
      (mixing) => (form.mixing = mixing),
    ),
    number(state, 'seconds'),
    ...SWITCHES.map((key) =>
      tick(`assign-${key}`, words.switches[key], form.switches[key], (on) =>
        state.ask(() => (form.switches[key] = on)),
      ),
    ),
    freeView(state),
  );
};

const scopesOf = (state: AssignState): readonly (readonly [AssignScope, string])[] => {
  const scopes: readonly AssignScope[] = state.pane.view?.results ? ['all', 'shown'] : ['all'];
  return scopes.map((scope) => [scope, state.words.scopes[scope](state.pane.count(state.rowsOf(scope).length))]);
};

const choice = <Key extends string>(
  state: AssignState,
  name: string,
  label: string,
  now: Key,
  options: readonly (readonly [Key, string])[],
  take: (key: Key) => void,
): HTMLElement =>
  make(
    'div',
    { class: 'cw-assign-line' },
    make('label', { for: `cw-assign-${name}` }, label),
    make(
      'select',
      {
        id: `cw-assign-${name}`,
        'data-key': `assign-${name}`,
        onchange: (event) => state.ask(() => take((event.target as HTMLSelectElement).value as Key)),
      },
      ...options.map(([key, text]) => make('option', { value: key, selected: key === now }, text)),
    ),
  );

const number = (state: AssignState, which: AssignNumber, hint?: string): HTMLElement => {
  const { form, words } = state;
  const id = `cw-assign-${which}`;
  return make(
    'div',
    { class: 'cw-assign-line' },
    make('label', { for: id }, words[which]),
    make('input', {
      id,
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      'data-key': `assign-${which}`,
      'aria-invalid': form.isValid(which) ? undefined : 'true',
      'aria-describedby': hint && `${id}-hint`,
      value: form.numbers[which],
      oninput: (event) => {
        const input = event.target as HTMLInputElement;
        form.numbers[which] = input.value;
        if (form.isValid(which)) input.removeAttribute('aria-invalid');
        state.typed();
      },
    }),
    hint ? make('span', { class: 'quiet hint', id: `${id}-hint` }, hint) : null,
  );
};

const tick = (key: string, text: string, checked: boolean, take: (on: boolean) => void): HTMLElement =>
  make(
    'label',
    { class: 'cw-assign-tick' },
    make('input', {
      type: 'checkbox',
      'data-key': key,
      checked,
      onchange: (event) => take((event.target as HTMLInputElement).checked),
    }),
    make('span', {}, text),
  );

const freeView = (state: AssignState): HTMLElement => {
  const { form, words } = state;
  const chosen = CHOOSE_PANE_WORDS[state.pane.language];
  const take = (part: (typeof PARTS)[number], on: boolean) =>
    state.ask(() => void (on ? form.free.add(part) : form.free.delete(part)));
  return make(
    'fieldset',
    { class: 'cw-assign-free', 'aria-describedby': 'cw-assign-blanks' },
    make('legend', {}, chosen.free),
    ...PARTS.map((part) =>
      tick(`assign-free-${part}`, chosen.parts[part], form.free.has(part), (on) => take(part, on)),
    ),
    make('p', { class: 'quiet', id: 'cw-assign-blanks' }, words.blanks),
  );
};
