import type { FieldView } from '../workbook/plan-view';
import { make } from './dom';
import type { PaneWords } from './words';

const NOBODY = '';

const fieldRow = (field: FieldView, words: PaneWords, correct: Correct): HTMLElement => {
  const id = ['cw-field', field.table, field.key, ...(field.sheet === undefined ? [] : [field.sheet])].join('-');
  const select = make(
    'select',
    {
      id,
      'data-key': id,
      'aria-describedby': field.evidence ? `${id}-note` : undefined,
      onchange: (event) => {
        const { value } = event.target as HTMLSelectElement;
        correct(field, value === NOBODY ? null : Number(value));
      },
    },
    make('option', { value: NOBODY, selected: field.column === undefined }, words.notInList),
    ...field.choices.map(({ column, label }) =>
      make('option', { value: column, selected: column === field.column }, label),
    ),
  );
  return make(
    'tr',
    { class: field.status === 'ask' || (field.status === 'absent' && field.needed) ? 'ask' : '' },
    make('th', { scope: 'row' }, make('label', { for: id }, field.title, field.unit ? ` (${field.unit})` : '')),
    make('td', {}, select, field.evidence ? make('div', { class: 'note', id: `${id}-note` }, field.evidence) : null),
  );
};

type Correct = (field: FieldView, column: number | null) => void;

const rows = (label: string, fields: readonly FieldView[], words: PaneWords, correct: Correct): HTMLElement =>
  make('table', { class: 'cw-fields', 'aria-label': label }, ...fields.map((field) => fieldRow(field, words, correct)));

/** A field that nothing holds and nobody misses is only worth a line when asked for. */
const isIdle = ({ status, needed }: FieldView): boolean => status === 'absent' && !needed;

/** Which column was read as what, and the way to say otherwise. */
export const columnsView = (
  fields: readonly FieldView[],
  words: PaneWords,
  correct: Correct,
): readonly HTMLElement[] => {
  const groups = new Map<string, FieldView[]>();
  for (const field of fields) {
    const key = JSON.stringify([field.table, field.sheet]);
    groups.set(key, [...(groups.get(key) ?? []), field]);
  }
  return [...groups.values()].map((all) => {
    const { table, sheet } = all[0]!;
    const idle = all.filter(isIdle);
    const title = words.tables[table] + (sheet === undefined ? '' : ` – ${sheet}`);
    return make(
      'div',
      { class: 'cw-table' },
      make('h3', {}, title),
      rows(
        words.columnsOf(title),
        all.filter((field) => !isIdle(field)),
        words,
        correct,
      ),
      idle.length > 0
        ? make(
            'details',
            { class: 'cw-idle' },
            make('summary', {}, words.moreFields(String(idle.length))),
            rows(words.fieldsNotIn(title), idle, words, correct),
          )
        : null,
    );
  });
};
