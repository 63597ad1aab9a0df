import type { FieldView } from '../workbook/plan-view';
import type { TableName } from '../plan/fields';
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

const fieldRow = (field: FieldView, correct: (field: FieldView, column: number | null) => void): HTMLElement => {
  const id = `cw-field-${field.table}-${field.key}`;
  const select = make(
    'select',
    {
      id,
      'data-key': id,
      'aria-describedby': `${id}-note`,
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
    make('td', {}, select, make('div', { class: 'note', id: `${id}-note` }, field.evidence)),
  );
};

/** Which column was read as what, and the way to say otherwise. */
export const columnsView = (
  fields: readonly FieldView[],
  correct: (field: FieldView, column: number | null) => void,
): readonly HTMLElement[] => {
  const tables = [...new Set(fields.map(({ table }) => table))];
  return tables.map((table) =>
    make(
      'div',
      {},
      make('p', { class: 'quiet', style: 'margin-top:8px' }, TABLE_TITLES[table]),
      make(
        'table',
        { class: 'cw-fields', 'aria-label': `How the columns of the ${TABLE_TITLES[table].toLowerCase()} are read` },
        ...fields.filter((field) => field.table === table).map((field) => fieldRow(field, correct)),
      ),
    ),
  );
};
