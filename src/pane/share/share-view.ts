import { LANGUAGES } from '../../core/language';
import { SHARE_PAPERS } from '../../workbook/share/choices';
import { make } from '../dom';
import { LANGUAGE_NAMES } from '../papers/paper-words';
import { choice } from '../papers/papers-view';
import type { Leaving, ShareState } from './share-state';

const tick = (key: string, label: string, note: string, checked: boolean, set: (on: boolean) => void): HTMLElement =>
  make(
    'label',
    { class: 'cw-tick' },
    make('input', {
      type: 'checkbox',
      checked,
      'data-key': key,
      onchange: (event) => set((event.target as HTMLInputElement).checked),
    }),
    make('span', {}, label, note === '' ? null : make('span', { class: 'quiet' }, ` ${note}`)),
  );

const leavingView = (state: ShareState, { key, label, why }: Leaving): HTMLElement =>
  tick(`leave-${key}`, label, why ?? '', state.leftOut.has(key), (on) => state.leave(key, on));

const leavingsView = (state: ShareState): readonly HTMLElement[] => {
  const { words } = state;
  const all = state.leavings();
  const proposed = all.filter(({ why }) => why !== undefined);
  const others = all.filter(({ why }) => why === undefined);
  return [
    make('h3', {}, words.leaveOut),
    ...(proposed.length > 0
      ? proposed.map((leaving) => leavingView(state, leaving))
      : [make('p', { class: 'quiet' }, words.nothing)]),
    make(
      'details',
      { open: others.some(({ key }) => state.leftOut.has(key)) },
      make('summary', { 'data-key': 'leave-others' }, words.all),
      ...others.map((leaving) => leavingView(state, leaving)),
    ),
  ];
};

const SAID = ['title', 'revision', 'date', 'prepared', 'checked'] as const;

/** Head of the overview and properties of the file; what is left blank is taken from the notes of the plan. */
const saidView = (state: ShareState): HTMLElement =>
  make(
    'details',
    { class: 'cw-paper', open: Object.values(state.choices.properties).some(Boolean) },
    make('summary', { 'data-key': 'share-said' }, state.words.saidTitle),
    make(
      'div',
      { class: 'cw-choices' },
      ...SAID.map((key) =>
        make(
          'label',
          {},
          make('span', { class: 'quiet' }, state.words.said[key]),
          make('input', {
            type: key === 'date' ? 'date' : 'text',
            'data-key': `share-${key}`,
            value: state.choices.properties[key],
            onchange: (event) => state.say(key, (event.target as HTMLInputElement).value),
          }),
        ),
      ),
    ),
  );

/** The copy for a customer: check boxes, language, paper, and the file when it was made. */
export const shareView = (state: ShareState, hasPlan: boolean): readonly HTMLElement[] => {
  const { words, choices, file, told, surroundings } = state;
  const languages = LANGUAGES.map((language) => [language, LANGUAGE_NAMES[language]] as const);
  const papers = SHARE_PAPERS.map((paper) => [paper, paper] as const);
  return [
    make('p', { class: 'quiet' }, words.text),
    make(
      'div',
      { class: 'cw-choices' },
      choice('share-language', words.language, languages, choices.language, (language) => state.set({ language })),
      choice('share-paper', words.paper, papers, choices.paper, (paper) => state.set({ paper })),
    ),
    saidView(state),
    make('div', { class: 'cw-paper' }, ...(hasPlan ? leavingsView(state) : [])),
    make(
      'div',
      { class: 'cw-paper' },
      tick('share-notes', words.dropNotes, '', choices.dropNotes, (dropNotes) => state.set({ dropNotes })),
      tick('share-values', words.values, '', choices.freezeAll, (freezeAll) => state.set({ freezeAll })),
      tick('share-links', words.keepLinks, '', !choices.dropLinks, (on) => state.set({ dropLinks: !on })),
      tick('share-people', words.keepPeople, '', choices.keepPeople, (keepPeople) => state.set({ keepPeople })),
      tick('share-lock', words.protect, '', choices.protect, (protect) => state.set({ protect })),
    ),
    make(
      'div',
      { class: 'cw-actions' },
      make(
        'button',
        {
          type: 'button',
          class: 'plain',
          'data-key': 'make-share',
          disabled: !hasPlan,
          onclick: () => void state.make(),
        },
        words.make,
      ),
    ),
    ...(file
      ? [
          make(
            'p',
            { class: 'cw-ready', role: 'status' },
            words.ready,
            ' ',
            make('a', { href: file.url, download: file.name, 'data-key': 'share-file' }, file.name),
          ),
        ]
      : []),
    ...(file && surroundings.savesFiles === 'perhaps' ? [make('p', { class: 'quiet' }, words.perhaps)] : []),
    ...told.map((text) => make('p', { class: 'cw-message note', role: 'status' }, text)),
  ];
};
