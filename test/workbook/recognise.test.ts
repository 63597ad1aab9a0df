import fc from 'fast-check';
import type { Cell } from '../../src/functions/define';
import { recognise, type SheetToRead } from '../../src/workbook/recognise';
import { limitRowsOf } from '../../src/workbook/limit-rows';
import { mappingJson, parseMapping } from '../../src/workbook/mapping';
import type { RangeAddress, SheetContent } from '../../src/workbook/port';
import type { Mapping, RecognisedTable } from '../../src/workbook/tables';

type Rows = readonly (readonly Cell[])[];
const sheet = (
  name: string,
  values: Rows,
  more: Partial<SheetContent> & { active?: boolean; visible?: boolean } = {},
): SheetToRead => {
  const { active = false, visible = true, ...content } = more;
  return {
    info: { name, active, visible },
    content: {
      sheet: name,
      row: 0,
      column: 0,
      values,
      formulas: values.map((row) => row.map(() => '')),
      tables: [],
      merged: [],
      hiddenRows: [],
      ...content,
    },
  };
};
const HEADINGS = [
  'Channel',
  'Point',
  'Direction',
  'Lowest level [g rms]',
  'Highest level [g pk]',
  'Band low [Hz]',
  'Band high [Hz]',
  'Sensor type',
];
const row = (name: string): Cell[] => [name, 12, '+Z', 0.02, 14, 5, 800, 'Ce-50 light'];
const DATA = [row('W1'), row('W2'), row('W3')];
const fieldsAt = (table: RecognisedTable | undefined): Record<string, number> =>
  Object.fromEntries([...(table?.columns ?? [])].map(([key, { column }]) => [key, column]));
const IN_ORDER = { channel: 0, point: 1, direction: 2, levelLow: 3, levelHigh: 4, bandLow: 5, bandHigh: 6, sensor: 7 };
const channelsOf = (...sheets: SheetToRead[]) => recognise(sheets).channels;

describe('the ways in which a channel list stands on a sheet', () => {
  it('header in the first row', () => {
    const found = channelsOf(sheet('List', [HEADINGS, ...DATA]));
    expect(found).toMatchObject({
      headerRow: 0,
      headerRows: 1,
      firstRow: 1,
      lastRow: 3,
      firstColumn: 0,
      lastColumn: 7,
    });
    expect(fieldsAt(found)).toEqual(IN_ORDER);
  });

  it('below title rows with a merged title', () => {
    const titles: Rows = [['Wing test, channel list', null], ['Revision B', null, null, 'checked: no'], []];
    const merged: RangeAddress[] = [{ row: 0, column: 0, rows: 1, columns: 8 }];
    const found = channelsOf(sheet('List', [...titles, HEADINGS, ...DATA], { merged }));
    expect(found).toMatchObject({ headerRow: 3, headerRows: 1, firstRow: 4, lastRow: 6 });
  });

  it('with a row of units under the names', () => {
    const names = [
      'Channel',
      'Point',
      'Direction',
      'Lowest level',
      'Highest level',
      'Band low',
      'Band high',
      'Sensor type',
    ];
    const units = [null, '-', null, 'mg rms', 'g pk', 'Hz', 'kHz', null];
    const found = channelsOf(sheet('List', [names, units, ...DATA]));
    expect(found).toMatchObject({ headerRow: 0, headerRows: 2, firstRow: 2, lastRow: 4 });
    expect(found?.columns.get('levelLow')).toMatchObject({ unitText: 'mg', statistic: 'rms' });
    expect(found?.columns.get('bandHigh')).toMatchObject({ unitText: 'kHz' });
  });

  it('with group headings merged over their columns', () => {
    const groups = ['Channel', 'Point', 'Direction', 'Level', null, 'Frequency', null, 'Sensor type'];
    const names = [null, null, null, 'min [g rms]', 'max [g pk]', 'min [Hz]', 'max [Hz]', null];
    const merged: RangeAddress[] = [
      { row: 0, column: 3, rows: 1, columns: 2 },
      { row: 0, column: 5, rows: 1, columns: 2 },
      { row: 0, column: 0, rows: 2, columns: 1 },
    ];
    const found = channelsOf(sheet('List', [groups, names, ...DATA], { merged }));
    expect(found).toMatchObject({ headerRow: 0, headerRows: 2, firstRow: 2 });
    expect(fieldsAt(found)).toEqual(IN_ORDER);
  });

  it('as a table object of the program, not at the corner', () => {
    const pad = (cells: readonly Cell[]): Cell[] => [null, null, ...cells];
    const tables = [{ name: 'Plan', range: { row: 2, column: 2, rows: 4, columns: 8 } }];
    const found = channelsOf(
      sheet('List', [[], ['note to self'], pad(HEADINGS), ...DATA.map(pad), [], pad(['see above'])], { tables }),
    );
    expect(found).toMatchObject({
      listObject: 'Plan',
      headerRow: 2,
      firstRow: 3,
      lastRow: 5,
      firstColumn: 2,
      lastColumn: 9,
    });
  });

  it('with captions, blank separators, a repeated header and subtotals between', () => {
    const values: Rows = [
      HEADINGS,
      ['Left wing'],
      row('W1'),
      row('W2'),
      ['Subtotal', null, null, null, 14],
      [],
      ['Right wing'],
      HEADINGS,
      row('W3'),
      ['Total', null, null, null, 28],
    ];
    const found = channelsOf(sheet('List', values));
    expect(found).toMatchObject({ firstRow: 1, lastRow: 8, skippedRows: [1, 4, 5, 6, 7] });
  });

  it('ends at two blank rows; what stands below is not data', () => {
    const found = channelsOf(sheet('List', [HEADINGS, ...DATA, [], [], row('old'), row('old')]));
    expect(found?.lastRow).toBe(3);
  });

  it('ends before signatures below one blank row', () => {
    const found = channelsOf(
      sheet('List', [HEADINGS, ...DATA, [], ['Prepared', 'planner'], ['Checked', 'second planner']]),
    );
    expect(found?.lastRow).toBe(3);
  });

  it('beside another table, parted by a blank column', () => {
    const mounts: Rows = [['Mount', 'Mass [g]', 'Stiffness [N/m]'], ['Wax', 0.05, 5e7], ['Stud', 0.6, null], []];
    const values = [HEADINGS, ...DATA].map((cells, i) => [...cells, null, ...(mounts[i] ?? [])]);
    const found = recognise([sheet('All', values)]);
    expect(found.channels).toMatchObject({ firstColumn: 0, lastColumn: 7, lastRow: 3 });
    expect(found.mounts).toMatchObject({ firstColumn: 9, lastColumn: 11, firstRow: 1, lastRow: 2 });
  });

  it('above another table on the same sheet', () => {
    const sensors: Rows = [
      ['Sensor type', 'Sensitivity [mV/g]', 'Mass [g]'],
      ['Ce-50 light', 50, 2.1],
    ];
    const found = recognise([sheet('All', [HEADINGS, ...DATA, [], ['Sensors'], ...sensors])]);
    expect(found.channels?.lastRow).toBe(3);
    expect(found.sensors).toMatchObject({ headerRow: 6, firstRow: 7, lastRow: 7 });
    expect(fieldsAt(found.sensors)).toEqual({ sensor: 0, sensitivity: 1, mass: 2 });
  });

  it('on one of several sheets: the active one first, a hidden one last', () => {
    const old = sheet('Old', [HEADINGS, ...DATA, row('W4'), row('W5')]);
    const now = sheet('Now', [HEADINGS, ...DATA]);
    const hidden = sheet('Spare', [HEADINGS, ...DATA], { visible: false, active: true });
    const active = { ...now, info: { ...now.info, active: true } };
    expect(channelsOf(old, active)?.sheet).toBe('Now');
    expect(recognise([sheet('Notes', [['a', 'b']], { active: true }), old]).channels?.sheet).toBe('Old');
    expect(channelsOf({ ...hidden, info: { ...hidden.info, active: false } }, old)?.sheet).toBe('Old');
  });

  it('one part of the structure per sheet: the others are named, and are no lists of mounts', () => {
    const headings = [...HEADINGS, 'Mount', 'Temperature min [°C]', 'Temperature max [°C]'];
    const rows = DATA.map((cells) => [...cells, 'Wax', -20, 60]);
    const found = recognise(['Wing', 'Boom', 'Tail'].map((name) => sheet(name, [headings, ...rows])));
    expect(Object.keys(found)).toEqual(['channels']);
    expect(found.channels?.further).toEqual([
      { sheet: 'Boom', headerRow: 0, column: 0, because: 'same channels' },
      { sheet: 'Tail', headerRow: 0, column: 0, because: 'same channels' },
    ]);
    const chosen = recognise(
      ['Wing', 'Boom'].map((name) => sheet(name, [headings, ...rows])),
      { mapping: { channels: { sheet: 'Boom' } } },
    );
    expect(chosen.channels?.sheet).toBe('Boom');
    expect(chosen.mounts).toBeUndefined();
  });

  it('read from somewhere else than A1', () => {
    const found = channelsOf(sheet('List', [HEADINGS, ...DATA], { row: 10, column: 3 }));
    expect(found).toMatchObject({ headerRow: 10, firstRow: 11, lastRow: 13, firstColumn: 3 });
    expect(found?.columns.get('sensor')?.column).toBe(10);
  });
});

describe('what is not the user’s data', () => {
  it('columns of ours are left out', () => {
    const values = [[...HEADINGS, 'Channel verdict', 'Mass ratio'], ...DATA.map((cells) => [...cells, 'PASS', 0.03])];
    const found = channelsOf(sheet('List', values));
    expect(found).toMatchObject({ lastColumn: 7 });
    expect([...(found?.headings.values() ?? [])]).toEqual(HEADINGS);
  });
  it('a sheet of something else gives no table', () => {
    const invoice: Rows = [
      ['Item', 'Name', 'Price [EUR]', 'Mass [kg]'],
      [1, 'Screw', 0.2, 0.01],
      [2, 'Nut', 0.1, 0.01],
    ];
    expect(recognise([sheet('Invoice', invoice, { active: true })])).toEqual({});
  });
  it('two columns with a general name are not a mount list, unless the sheet says so', () => {
    const values: Rows = [
      ['Name', 'Mass [g]', 'Temp min', 'Temp max'],
      ['Wax', 0.05, 0, 40],
    ];
    expect(recognise([sheet('Tabelle1', values)]).mounts).toBeUndefined();
    expect(recognise([sheet('Mounts', values)]).mounts).toMatchObject({ firstRow: 1, lastRow: 1 });
  });
});

describe('what the user corrected', () => {
  const values = [[...HEADINGS, 'Weight below'], ...DATA.map((cells) => [...cells, 20])];
  const withMapping = (mapping: Mapping) => recognise([sheet('List', values)], { mapping }).channels;
  it('wins over what was found', () => {
    const found = withMapping({
      channels: {
        fields: {
          localMass: { column: { heading: 'Weight below', column: 8 }, unitText: 'kg' },
          direction: { column: null },
          levelHigh: { statistic: 'rms' },
        },
      },
    });
    expect(found?.columns.get('localMass')).toMatchObject({ column: 8, unitText: 'kg', unit: 'kg', confidence: 1 });
    expect(found?.columns.has('direction')).toBe(false);
    expect(found?.columns.get('levelHigh')).toMatchObject({ statistic: 'rms' });
  });
  it('takes the column from the field that had it', () => {
    const found = withMapping({ channels: { fields: { panel: { column: { heading: 'Point', column: 1 } } } } });
    expect(found?.columns.get('panel')?.column).toBe(1);
    expect(found?.columns.has('point')).toBe(false);
  });
  it('follows a heading that has moved', () => {
    const found = withMapping({
      channels: { fields: { localMass: { column: { heading: 'Weight below', column: 2 } } } },
    });
    expect(found?.columns.get('localMass')?.column).toBe(8);
  });
  it('survives being kept as text, and nonsense in the text is left out', () => {
    const mapping: Mapping = {
      channels: { sheet: 'List', headerRow: 0, fields: { panel: { column: null }, levelHigh: { statistic: 'rms' } } },
    };
    expect(parseMapping(mappingJson(mapping))).toEqual(mapping);
    expect(parseMapping('{"channels":{"fields":{"panel":7,"__proto__":{"column":null}}},"x":1}')).toEqual({
      channels: { fields: {} },
    });
    expect(parseMapping('no json')).toEqual({});
  });
  it('may name the sheet and the header row of a list that we do not know', () => {
    const odd: Rows = [['x'], ['Kennung', 'Wert'], ['a', 1], ['b', 2]];
    const found = recognise([sheet('Odd', odd)], {
      mapping: {
        mounts: { sheet: 'Odd', headerRow: 1, fields: { mount: { column: { heading: 'Kennung', column: 0 } } } },
      },
    }).mounts;
    expect(found).toMatchObject({ headerRow: 1, firstRow: 2, lastRow: 3 });
  });
});

describe('properties', () => {
  it('the order of the columns does not matter', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6, 7], { minLength: 8 }), (order) => {
        const values = [HEADINGS, ...DATA].map((cells) => order.map((i) => cells[i] ?? null));
        const expected = Object.fromEntries(Object.entries(IN_ORDER).map(([key, i]) => [key, order.indexOf(i)]));
        expect(fieldsAt(channelsOf(sheet('List', values)))).toEqual(expected);
      }),
      { numRuns: 25 },
    );
  });
  it('no sheet makes it throw, and every table found lies on its sheet', () => {
    const cell = fc.oneof(
      fc.constantFrom(...HEADINGS, 'Total', 'Mass [g]', 'Mount', 'Range [V]', ''),
      fc.string({ maxLength: 8 }),
      fc.double(),
      fc.constant(null),
      fc.constant({ error: '#REF!' }),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 12 }), (values) => {
        for (const table of Object.values(recognise([sheet('Any', values)]))) {
          expect(table.firstRow).toBe(table.headerRow + table.headerRows);
          expect(table.lastRow).toBeLessThan(values.length);
          expect(table.skippedRows.every((r) => r >= table.firstRow && r < table.lastRow)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });
});

it('limits are found by their names', () => {
  const limits = sheet('Limits', [
    ['Limit', 'Pass', 'Warn', 'Unit', 'Origin'],
    ['Signal to noise', 20, 10, 'dB', 'this test'],
    ['Headroom ', 3.5, 0, 'dB', 'default'],
  ]);
  const table = recognise([limits]).limits;
  expect(table && limitRowsOf(table, limits.content).map(({ row, limit }) => [row, limit])).toEqual([
    [1, 'signalToNoise'],
    [2, 'headroom'],
  ]);
});
