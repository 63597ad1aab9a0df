import { LANGUAGES, type Language } from '../../core/language';
import { PAPERS, type Paper } from '../../workbook/report/html-style';
import { fileInput, make, plainButton } from '../dom';
import type { PapersState } from './papers-state';
import { LANGUAGE_NAMES } from './paper-words';

export const choice = <T extends string>(
  key: string,
  label: string,
  options: readonly (readonly [value: T, shown: string])[],
  chosen: T,
  choose: (value: T) => void,
): HTMLElement =>
  make(
    'label',
    {},
    make('span', { class: 'quiet' }, label),
    make(
      'select',
      { 'data-key': key, onchange: (event) => choose((event.target as HTMLSelectElement).value as T) },
      ...options.map(([value, shown]) => make('option', { value, selected: value === chosen }, shown)),
    ),
  );

/** What was done, said where it was asked. */
export const toldView = ({ told }: PapersState, at: NonNullable<PapersState['told']>['at']): HTMLElement | null =>
  told?.at === at ? make('p', { class: 'cw-message note', role: 'status' }, told.text) : null;

const reportReady = (state: PapersState): readonly (HTMLElement | null)[] => {
  const { report, words, surroundings } = state;
  if (!report) return [];
  return [
    make(
      'p',
      { class: 'cw-ready', role: 'status' },
      words.ready,
      ' ',
      make('a', { href: report.url, download: report.name, 'data-key': 'report-file' }, report.name),
    ),
    make(
      'div',
      { class: 'cw-actions' },
      plainButton('report-open', words.open, () => state.openReport()),
    ),
    surroundings.savesFiles === 'perhaps' ? make('p', { class: 'quiet' }, words.perhaps) : null,
  ];
};

/** Report and notes of the plan. */
export const papersView = (state: PapersState, hasPlan: boolean): readonly HTMLElement[] => {
  const { words, kind, paper, reportLanguage } = state;
  const kinds = [['page', words.kinds.page] as const, ['markdown', words.kinds.markdown] as const];
  const languages = LANGUAGES.map((language) => [language, LANGUAGE_NAMES[language]] as const);
  return [
    make(
      'div',
      { class: 'cw-paper' },
      make('h3', {}, words.report),
      make(
        'div',
        { class: 'cw-choices' },
        choice('report-kind', words.kind, kinds, kind, (value) => state.set({ kind: value })),
        choice<Language>('report-language', words.language, languages, reportLanguage, (value) =>
          state.set({ reportLanguage: value }),
        ),
        kind === 'page'
          ? choice<Paper>(
              'report-paper',
              words.paper,
              PAPERS.map((name) => [name, name] as const),
              paper,
              (value) => state.set({ paper: value }),
            )
          : null,
      ),
      make(
        'div',
        { class: 'cw-actions' },
        plainButton('report', words.makeReport, () => void state.makeReport(), !hasPlan),
      ),
      ...reportReady(state),
      toldView(state, 'report'),
    ),
    make(
      'div',
      { class: 'cw-paper' },
      make('h3', {}, words.summary),
      make('p', { class: 'quiet' }, words.summaryText),
      make(
        'div',
        { class: 'cw-actions' },
        plainButton('summary', words.makeSummary, () => void state.summarySheet(), !hasPlan),
      ),
      toldView(state, 'summary'),
    ),
    make(
      'div',
      { class: 'cw-paper' },
      make('h3', {}, words.notes),
      make('p', { class: 'quiet' }, words.notesText),
      make(
        'div',
        { class: 'cw-actions' },
        plainButton('notes', words.fillNotes, () => void state.fillNotes(), !hasPlan),
      ),
      toldView(state, 'notes'),
    ),
  ];
};

/** The action of an open row: a sheet with all that is known of its channel. */
export const channelSheetView = (state: PapersState, row: number): HTMLElement =>
  make(
    'div',
    {},
    make(
      'div',
      { class: 'cw-actions' },
      plainButton('channel-sheet', state.words.sheetOf, () => void state.channelSheet(row)),
    ),
    toldView(state, 'sheet'),
  );

/** Saves and loads what was corrected about columns. */
export const mappingView = (state: PapersState): HTMLElement => {
  const { words } = state;
  const input = fileInput(
    'mapping-file',
    words.loadMapping,
    '.json,application/json',
    (file) => void state.loadMapping(file),
  );
  return make(
    'div',
    { class: 'cw-table' },
    make('h3', {}, words.mapping),
    make('p', { class: 'quiet' }, words.mappingText),
    make(
      'div',
      { class: 'cw-actions' },
      plainButton('mapping-save', words.saveMapping, () => state.saveMapping()),
      plainButton('mapping-load', words.loadMapping, () => input.click()),
      input,
    ),
    toldView(state, 'mapping'),
  );
};
