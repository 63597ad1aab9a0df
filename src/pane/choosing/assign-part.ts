import type { Assigner } from '../../plan/assign/assigner';
import type { Spreadsheet } from '../../workbook/port';
import { keepFrenchSpaces, keepingFocus, make, replaceContent } from '../dom';
import type { PaneState } from '../pane-state';
import { assignForm, canSearch, stockNote } from './assign-form';
import { assignProgress } from './assign-progress';
import { assignResult } from './assign-result';
import { AssignState } from './assign-state';
import './assign.css';

export interface AssignPart {
  readonly element: HTMLElement;
  /** Draws again what depends on the plan or on the rows shown. */
  follow(): void;
  reset(): void;
  dispose(): void;
}

/** The part of the pane that gives many rows sensors from stock at once. */
export const assignPart = (pane: PaneState, spreadsheet: Spreadsheet, assign: Assigner): AssignPart => {
  const state: AssignState = new AssignState(
    pane,
    spreadsheet,
    assign,
    () => draw(),
    () => progress.draw(state),
    () => drawAnswer(),
  );
  const { words } = state;
  const progress = assignProgress(words.title);
  const summary = make('summary', { 'data-key': 'assign' });
  const top = make('div');
  const trouble = make('div', { role: 'alert' });
  const bottom = make('div', { class: 'cw-assign-result' });
  const element = make(
    'details',
    { class: 'cw-assign' },
    summary,
    top,
    trouble,
    progress.spoken,
    progress.clock,
    bottom,
  );

  const drawAnswer = (): void => {
    const { running, found, isOpen, problem } = state;
    replaceContent(trouble, problem && isOpen ? make('p', { class: 'cw-message' }, problem) : null);
    replaceContent(bottom, ...(isOpen && found && !running ? assignResult(state, found) : []));
    progress.draw(state);
  };
  const draw = (): void => {
    const { running, isOpen } = state;
    element.open = isOpen;
    replaceContent(summary, words.title, make('span', { class: 'quiet' }, ` ${running ? words.busyNote : words.note}`));
    const hadFocus = element.contains(document.activeElement);
    keepingFocus(element, () => {
      replaceContent(top, ...(isOpen ? topViews(state, progress.bar) : []));
      drawAnswer();
    });
    // What was pressed may be gone: Cancel, or the button that wrote.
    if (hadFocus && !element.contains(document.activeElement))
      element.querySelector<HTMLElement>('[data-key=assign-start]')?.focus();
    if (pane.language === 'fr') keepFrenchSpaces(element);
  };
  element.addEventListener('toggle', () => {
    if (element.open === state.isOpen) return;
    state.isOpen = element.open;
    draw();
  });
  draw();
  return { element, follow: draw, reset: () => state.reset(), dispose: () => state.dispose() };
};

const press = (kind: string, key: string, text: string, isOff: boolean, onclick: () => void): HTMLElement =>
  make('button', { type: 'button', class: kind, 'data-key': key, 'aria-disabled': isOff ? 'true' : undefined, onclick }, text); // prettier-ignore

const topViews = (state: AssignState, bar: HTMLElement): readonly (HTMLElement | null)[] => {
  const { words, running, found } = state;
  const note = stockNote(state);
  const isOff = running !== undefined || !canSearch(state);
  return [
    make('p', { class: 'quiet' }, words.intro),
    note ? make('p', { class: 'cw-message note' }, note) : null,
    assignForm(state),
    make(
      'div',
      { class: 'cw-actions' },
      press('plain', 'assign-start', found ? words.again : words.start, isOff, () => void (isOff || state.search())),
      running ? press('plain', 'assign-cancel', words.cancel, false, () => state.cancel()) : null,
    ),
    running ? make('div', { class: 'cw-actions' }, bar) : null,
  ];
};
