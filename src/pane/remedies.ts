import project from '../../package.json';
import type { Language } from '../core/language';
import type { Spreadsheet } from '../workbook/port';
import type { ListedIds, Running } from '../workbook/remedies/state';
import { keepingFocus, make, replaceContent } from './dom';
import { RemediesState } from './remedies-state';
import { freezeView, hintsView, namesView, stateView } from './remedies-views';

/** Mark of the sources, put in by the build; absent where nothing was built. */
declare const CHANNELWRIGHT_BUILT: string | undefined;

export const RUNNING: Running = {
  version: project.version,
  built: typeof CHANNELWRIGHT_BUILT === 'undefined' ? undefined : CHANNELWRIGHT_BUILT,
};

/** The list that lies beside this page: the program read the same file, perhaps an older copy of it. */
const listed = async (): Promise<ListedIds> => {
  const response = await fetch('functions.json', { cache: 'no-cache' });
  if (!response.ok) return undefined;
  const { functions } = (await response.json()) as { functions: readonly { id: string }[] };
  return functions.map(({ id }) => id);
};

export interface Remedies {
  /** First steps, while nobody has dismissed them. */
  readonly hints: HTMLElement;
  readonly element: HTMLElement;
  reset(): void;
}

/** The part of the pane that mends what goes wrong between a spreadsheet program and an add-in. */
export const remedies = (spreadsheet: Spreadsheet, language: Language, wrote: () => void): Remedies => {
  const hints = make('div', { class: 'cw-first' });
  const element = make('div', { class: 'cw-remedies' });
  const state: RemediesState = new RemediesState(spreadsheet, { running: RUNNING, listed, wrote }, language, () =>
    draw(),
  );

  const folded = (): HTMLElement => {
    const { words } = state;
    const part = make(
      'details',
      { open: state.isOpen },
      make('summary', { 'data-key': 'remedies' }, words.title, make('span', { class: 'quiet' }, ` ${words.note}`)),
      ...(state.isOpen
        ? [
            state.problem ? make('p', { class: 'cw-message', role: 'alert' }, state.problem) : null,
            ...[namesView, freezeView, stateView].map((view) => make('div', { class: 'cw-remedy' }, ...view(state))),
          ]
        : []),
    );
    part.addEventListener('toggle', () => {
      if (part.open === state.isOpen) return;
      state.isOpen = part.open;
      draw();
    });
    return part;
  };
  const draw = (): void => {
    keepingFocus(hints, () => replaceContent(hints, state.showsHints && hintsView(state)));
    keepingFocus(element, () => replaceContent(element, folded()));
  };
  draw();
  return { hints, element, reset: () => state.reset() };
};
