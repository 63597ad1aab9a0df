import type { TableName } from '../plan/fields';
import type { FieldView } from '../workbook/plan-view';
import { make } from './dom';

const TABLE_TITLES: Readonly<Record<TableName, string>> = {
  channels: 'Channel list',
  sensors: 'Sensor list',
  mounts: 'Mount list',
  cables: 'Cable list',
  inputs: 'Input list',
  limits: 'Limits',
};

const NOBODY = '';

const fieldRow = (field: FieldView, correct: Correct): HTMLElement => {
  const id = `cw-field-${field.table}-${field.key}`;
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
    make('option', { value: NOBODY, selected: field.column === undefined }, 'not in this list'),
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

const rows = (label: string, fields: readonly FieldView[], correct: Correct): HTMLElement =>
  make('table', { class: 'cw-fields', 'aria-label': label }, ...fields.map((field) => fieldRow(field, correct)));

/** A field that nothing holds and nobody misses is only worth a line when asked for. */
const isIdle = ({ status, needed }: FieldView): boolean => status === 'absent' && !needed;

/** Which column was read as what, and the way to say otherwise. */
export const columnsView = (fields: readonly FieldView[], correct: Correct): readonly HTMLElement[] => {
  const tables = [...new Set(fields.map(({ table }) => table))];
  return tables.map((table) => {
    const all = fields.filter((field) => field.table === table);
    const idle = all.filter(isIdle);
    const title = TABLE_TITLES[table];
    return make(
      'div',
      { class: 'cw-table' },
      make('h3', {}, title),
      rows(
        `How the columns of the ${title.toLowerCase()} are read`,
        all.filter((field) => !isIdle(field)),
        correct,
      ),
      idle.length > 0
        ? make(
            'details',
            { class: 'cw-idle' },
            make('summary', {}, `${idle.length} more fields, not in this list`),
            rows(`Fields that the ${title.toLowerCase()} does not have`, idle, correct),
          )
        : null,
    );
  });
};
