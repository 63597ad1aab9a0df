import { cellAddress } from '../workbook/address';
import type { Staying } from '../workbook/remedies/freeze';
import type { BrokenFormula, Remainder } from '../workbook/remedies/rewrite';
import { make } from './dom';
import { reportLines } from './remedies-report';
import type { RemediesState } from './remedies-state';

type Parts = readonly (HTMLElement | null)[];
/** A longer list helps nobody; the count says how many there are. */
const MOST_SHOWN = 8;

const button = (
  state: RemediesState,
  kind: 'plain' | 'primary',
  key: string,
  text: string,
  onclick: () => void,
): HTMLElement =>
  make(
    'button',
    {
      type: 'button',
      class: kind,
      'data-key': `remedy-${key}`,
      'aria-disabled': state.isBusy ? 'true' : undefined,
      onclick,
    },
    text,
  );
const said = (text: string): HTMLElement => make('p', { class: 'cw-message note', role: 'status' }, text);

export const hintsView = (state: RemediesState): HTMLElement => {
  const { words } = state;
  return make(
    'section',
    { 'aria-label': words.hintsTitle, class: 'cw-hints' },
    make('h2', {}, words.hintsTitle),
    make('ol', {}, ...words.hints.map((hint) => make('li', {}, hint))),
    button(state, 'plain', 'dismiss', words.dismiss, () => state.showHints(false)),
  );
};

const places = (state: RemediesState, cells: readonly (BrokenFormula & { readonly why?: Remainder })[]): HTMLElement =>
  make(
    'ul',
    { class: 'cw-findings' },
    ...cells.slice(0, MOST_SHOWN).map((cell) => {
      const at = `${cell.sheet}!${cellAddress(cell.row, cell.column)}`;
      return make(
        'li',
        {},
        make(
          'button',
          { type: 'button', class: 'link', 'data-key': `remedy-at-${at}`, onclick: () => state.go(cell) },
          at,
        ),
        ' ',
        cell.why ? state.words.failing[cell.why] : make('code', {}, cell.before),
      );
    }),
    cells.length > MOST_SHOWN ? make('li', {}, state.words.andMore(state.count(cells.length - MOST_SHOWN))) : null,
  );

const offered = (state: RemediesState, suspicion: 'perhaps' | 'text'): Parts => {
  const { words } = state;
  const cells = state.broken?.filter((cell) => cell.suspicion === suspicion) ?? [];
  if (cells.length === 0) return [];
  const [count, one] = [state.count(cells.length), cells.length === 1];
  const box = make('input', {
    type: 'checkbox',
    'data-key': `remedy-take-${suspicion}`,
    checked: state.takes.has(suspicion),
  });
  box.addEventListener('change', () => state.take(suspicion, box.checked));
  return [
    make('p', {}, suspicion === 'text' ? words.foundText(count, one) : words.foundPerhaps(count, one)),
    places(state, cells),
    make('label', { class: 'cw-take' }, box, ` ${words.include(count, one)}`),
  ];
};

export const namesView = (state: RemediesState): Parts => {
  const { words, broken, rewritten, chosen } = state;
  const sure = broken?.filter(({ suspicion }) => suspicion === 'broken') ?? [];
  return [
    make('h3', {}, words.namesTitle),
    make('p', { class: 'quiet' }, words.namesText),
    ...(broken?.length === 0 ? [said(words.noneFound)] : []),
    ...(sure.length > 0
      ? [make('p', {}, words.found(state.count(sure.length), sure.length === 1)), places(state, sure)]
      : []),
    ...offered(state, 'perhaps'),
    ...offered(state, 'text'),
    ...(rewritten ? [said(words.rewritten(state.count(rewritten.working), state.count(rewritten.count)))] : []),
    ...(rewritten && rewritten.failing.length > 0 ? [places(state, rewritten.failing)] : []),
    make(
      'div',
      { class: 'cw-actions' },
      button(state, 'plain', 'find', words.find, () => void state.find()),
      chosen.length > 0
        ? button(state, 'primary', 'rewrite', words.writeAgain(state.count(chosen.length)), () => void state.rewrite())
        : null,
    ),
  ];
};

const WHYS: readonly Staying[] = ['error', 'fills cells', 'reads as a formula'];

const planView = (state: RemediesState): Parts => {
  const { words, plan } = state;
  if (!plan) return [];
  return [
    said(words.freezeOffer(state.count(plan.values.length), plan.values.length === 1)),
    ...WHYS.map((why) => {
      const n = plan.staying.filter((cell) => cell.why === why).length;
      return n > 0 ? make('p', {}, words.staying(state.count(n), why)) : null;
    }),
  ];
};

export const freezeView = (state: RemediesState): Parts => {
  const { words, plan, frozen } = state;
  const select = make(
    'select',
    { 'data-key': 'remedy-scope' },
    make('option', { value: 'check columns', selected: state.scope === 'check columns' }, words.checkColumns),
    make('option', { value: 'every formula', selected: state.scope === 'every formula' }, words.everyFormula),
  );
  select.addEventListener('change', () =>
    state.choose(select.value === 'every formula' ? 'every formula' : 'check columns'),
  );
  return [
    make('h3', {}, words.freezeTitle),
    make('p', { class: 'quiet' }, words.freezeText),
    make('label', { class: 'cw-choice' }, `${words.scope}: `, select),
    ...planView(state),
    ...(frozen === undefined ? [] : [said(words.frozen(state.count(frozen), frozen === 1))]),
    make(
      'div',
      { class: 'cw-actions' },
      button(state, 'plain', 'look', words.look, () => void state.look()),
      plan && plan.values.length > 0
        ? button(state, 'primary', 'freeze', words.freeze, () => void state.freeze())
        : null,
      plan ? button(state, 'plain', 'cancel', words.cancel, () => state.forget()) : null,
    ),
  ];
};

export const stateView = (state: RemediesState): Parts => {
  const { words } = state;
  const text = state.state && reportLines(state.state, words, state.count).join('\n');
  const report =
    text === undefined
      ? null
      : make('textarea', {
          class: 'cw-report',
          readonly: true,
          rows: text.split('\n').length + 1,
          'aria-label': words.reportLabel,
          'data-key': 'remedy-report',
        });
  if (report && text !== undefined) report.value = text;
  if (report && state.copied === 'by hand') queueMicrotask(() => (report.focus(), report.select()));
  return [
    make('h3', {}, words.stateTitle),
    make('p', { class: 'quiet' }, words.stateText),
    ...(state.state?.stale.map((stale) => make('p', { class: 'cw-message', role: 'alert' }, words.stale(stale))) ?? []),
    report,
    ...(state.copied ? [said(state.copied === 'copied' ? words.copied : words.copyByHand)] : []),
    make(
      'div',
      { class: 'cw-actions' },
      button(state, 'plain', 'state', words.showState, () => void state.showState()),
      text === undefined ? null : button(state, 'plain', 'copy', words.copy, () => void state.copy(text)),
      state.showsHints ? null : button(state, 'plain', 'hints', words.showHints, () => state.showHints(true)),
    ),
  ];
};
