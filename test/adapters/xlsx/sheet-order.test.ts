import { orderOf } from '../../../src/adapters/xlsx/sheet-order';
import { openTiny, saved } from './tiny-workbook';

const workbook = (behind: string, before = '') =>
  openTiny({
    sheets: ['Plan', 'Sensors', 'Totals'].map((name) => ({ name })),
    workbookBefore: before,
    workbookBehind: behind,
  });
const NAMES =
  '<definedNames><definedName name="All">Plan!$A$1</definedName>' +
  '<definedName name="_xlnm.Print_Titles" localSheetId="0">Plan!$1:$1</definedName>' +
  '<definedName name="Local" localSheetId="2">Totals!$B$2</definedName></definedNames>';

it('sheets that are not named stay behind the one they followed', () => {
  expect(orderOf(['A', 'chart of A', 'B', 'C'], ['C', 'A', 'B'])).toEqual(['C', 'A', 'chart of A', 'B']);
  expect(orderOf(['cover', 'A', 'B'], ['b', 'a'])).toEqual(['cover', 'B', 'A']);
});

it('names that hold on one sheet and the sheet in view move along with their sheets', () => {
  const file = workbook(NAMES, '<bookViews><workbookView activeTab="2" firstSheet="0"/></bookViews>');
  expect(file.arrange(['Totals', 'Plan', 'Sensors'])).toBe(true);
  const xml = saved(file)['xl/workbook.xml']!;
  expect(file.sheets.map(({ name, active }) => [name, active])).toEqual([
    ['Totals', true],
    ['Plan', false],
    ['Sensors', false],
  ]);
  expect(xml).toMatch(/firstSheet="1"/);
  expect(xml).toMatch(/<definedName[^>]* localSheetId="1"[^>]*>Plan!\$1:\$1/);
  expect(xml).toMatch(/<definedName[^>]* localSheetId="0"[^>]*>Totals!\$B\$2/);
  expect(xml).toContain('<definedName name="All">Plan!$A$1');
  // Each keeps its own number and part.
  expect(xml).toMatch(/name="Totals" sheetId="3" r:id="rId3"\/><sheet name="Plan" sheetId="1" r:id="rId1"/);
});

it('a workbook in this order already stays byte for byte', () => {
  const file = workbook(NAMES);
  const before = saved(file)['xl/workbook.xml'];
  expect(file.arrange(['Plan', 'Sensors', 'Totals'])).toBe(false);
  expect(saved(file)['xl/workbook.xml']).toBe(before);
});

it('a workbook whose structure is protected is refused, as nobody may move its sheets', () => {
  const file = workbook('', '<workbookProtection lockStructure="1"/>');
  expect(() => file.arrange(['Totals', 'Plan', 'Sensors'])).toThrow(/structure of the workbook is protected/);
});
