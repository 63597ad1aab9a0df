import { associateFunctions } from '../../../src/adapters/office/functions';
import { officeSpreadsheet } from '../../../src/adapters/office/spreadsheet';
import { FUNCTIONS } from '../../../src/functions/index';
import { readState, staleOf } from '../../../src/workbook/remedies/state';
import { compareVersions, rememberingWriter, WRITER_SETTING } from '../../../src/workbook/remedies/written-by';
import { FakeExcel, NEWEST, OLDEST } from '../../adapters/office/fake-excel';

const open = (version = NEWEST) => {
  const excel = new FakeExcel(version);
  return { excel, spreadsheet: officeSpreadsheet(excel) };
};
const IDS = FUNCTIONS.map(({ name }) => name);
const nothing = { running: '0.1.0', unknownNames: [] };

describe('the state of the add-in', () => {
  it('counts our formulas and their errors on all sheets, and names functions that this version lacks', async () => {
    const { excel, spreadsheet } = open();
    const { cells } = excel.sheet('Sheet1');
    cells['0,0'] = { value: 'Jo’s secret glider', type: 'String' };
    cells['1,0'] = { value: 1, formula: '=CHAN.MASS.SHIFT(0.02)', type: 'Double' };
    cells['2,0'] = { value: '#NAME?', formula: '=chan.headroom(1,2)', type: 'Error' };
    excel.addSheet('More').cells['0,0'] = { value: '#NAME?', formula: '=CHAN.NOT.YET(1)', type: 'Error' };
    excel.sheet('More').cells['1,0'] = { value: '#DIV/0!', formula: '=1/0', type: 'Error' };
    const before = structuredClone(excel.state);
    const state = await readState(spreadsheet, { version: '0.1.0' }, IDS);
    expect(state).toMatchObject({ formulas: 3, errors: { '#NAME?': 2 }, host: 'office' });
    expect(state.stale).toEqual([{ kind: 'unknown functions', names: ['NOT.YET'] }]);
    expect(JSON.stringify(state)).not.toMatch(/Jo|glider|Sheet1|More/);
    expect(excel.state).toEqual(before);
  });

  it('says what the host is able to do, and how many functions are tied to it', async () => {
    associateFunctions({ associate: () => undefined, error: () => ({}) }, FUNCTIONS);
    const newest = await readState(open().spreadsheet, { version: '0.1.0' });
    expect(newest.functions).toEqual({ total: IDS.length, known: IDS.length });
    expect(newest.facts).toMatchObject({ abilities: { notes: true, oneUndo: true }, separators: { decimal: ',' } });
    const oldest = await readState(open(OLDEST).spreadsheet, { version: '0.1.0' });
    expect(oldest.facts).toMatchObject({ abilities: { notes: false, oneUndo: false }, calculation: 'Automatic' });
    expect(oldest.facts?.separators).toBeUndefined();
  });
});

describe('an add-in that is out of date', () => {
  it('is one that an older version runs in than the workbook was written by', () => {
    expect(staleOf({ ...nothing, writtenBy: '0.2.0' })).toEqual([
      { kind: 'older than the workbook', writtenBy: '0.2.0' },
    ]);
    expect(staleOf({ ...nothing, writtenBy: '0.1.0' })).toEqual([]);
  });

  it('is one whose list of functions is another than its program', () => {
    expect(staleOf({ ...nothing, listed: IDS })).toEqual([]);
    expect(staleOf({ ...nothing, listed: IDS.slice(1) })).toMatchObject([{ listed: IDS.length - 1 }]);
    expect(staleOf({ ...nothing, listed: [...IDS.slice(1), 'OLD.NAME'] })).toHaveLength(1);
  });

  it('compares versions by number, not by letter', () => {
    expect(compareVersions('0.10.0', '0.9.3')).toBeGreaterThan(0);
    expect(compareVersions('1.0.0', '1.0.0')).toBe(0);
    expect(compareVersions('what', '1.0.0')).toBe(0);
  });

  it('is noticed because a write leaves the version in the workbook, never a lower one', async () => {
    const { excel, spreadsheet } = open();
    const write = (version: string) =>
      rememberingWriter(spreadsheet, version).apply(
        [{ kind: 'cells', sheet: 'Sheet1', row: 0, column: 0, cells: [[1]] }],
        {
          label: 'test',
        },
      );
    await write('0.2.0');
    await write('0.1.9');
    expect(excel.state.settings[WRITER_SETTING]).toBe('"0.2.0"');
    expect((await readState(spreadsheet, { version: '0.1.9' })).stale).toHaveLength(1);
    await write('0.3.0');
    expect(excel.state.settings[WRITER_SETTING]).toBe('"0.3.0"');
    expect(excel.undoStack).toHaveLength(3);
  });
});
