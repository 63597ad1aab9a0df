import { renamedFormula } from '../../../src/adapters/xlsx/renamed-formula';
import { openTiny, saved } from './tiny-workbook';

const newName = (name: string) => (/^plan$/i.test(name) ? "Jo's plan" : name === 'Totals' ? 'Sums' : undefined);

it.each([
  ['Plan!A1*2', "'Jo''s plan'!A1*2"],
  ["SUM('Plan'!$A$1:B2,plan!C3)", "SUM('Jo''s plan'!$A$1:B2,'Jo''s plan'!C3)"],
  ['Totals!B2+PlanB!A1', 'Sums!B2+PlanB!A1'],
  // Three dimensions: from one sheet to another.
  ['SUM(Totals:Last!A1)', 'SUM(Sums:Last!A1)'],
  ["SUM('First:Plan'!A1)", "SUM('First:Jo''s plan'!A1)"],
  // Texts, names and other workbooks are none of it.
  ['INDIRECT("Plan!A1")&Plan', 'INDIRECT("Plan!A1")&Plan'],
  [
    "[1]Plan!A1+'[Other.xlsx]Plan'!A1+'C:\\x\\[b.xlsx]Plan'!A1",
    "[1]Plan!A1+'[Other.xlsx]Plan'!A1+'C:\\x\\[b.xlsx]Plan'!A1",
  ],
  ['IF(A1!=2,Plan!#REF!,"")', "IF(A1!=2,'Jo''s plan'!#REF!,\"\")"],
])('%s follows the new names', (formula, expected) => expect(renamedFormula(formula, newName)).toBe(expected));

const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const workbook = () =>
  openTiny({
    sheets: [
      {
        name: 'Plan',
        rows: '<row r="1"><c r="A1"><f>Totals!A1+1</f><v>3</v></c></row>',
        behind:
          '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>Totals!$A$1&gt;1</formula></cfRule></conditionalFormatting>' +
          '<dataValidations count="1"><dataValidation type="list" sqref="A2"><formula1>Plan!$A$1:$A$3</formula1></dataValidation></dataValidations>' +
          '<hyperlinks><hyperlink ref="A1" location="\'Plan\'!B2"/><hyperlink ref="A2" r:id="rId9" location="Plan!B2"/></hyperlinks>',
        relations: [['rId9', 'hyperlink', 'other.xlsx']],
      },
      {
        name: 'Totals',
        rows: '<row r="1"><c r="A1"><f>Plan!B1</f><v>2</v></c><c r="B1" t="str"><v>Plan!A1</v></c></row>',
      },
    ],
    workbookBehind:
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Plan!$A$1:$B$2</definedName></definedNames>',
    parts: {
      'xl/charts/chart1.xml': `<c:chartSpace xmlns:c="${CHART}"><c:f>Plan!$A$1:$A$3</c:f><c:v>Plan</c:v></c:chartSpace>`,
      'xl/pivotCache/pivotCacheDefinition1.xml':
        '<p><cacheSource><worksheetSource ref="A1:B3" sheet="Plan"/></cacheSource></p>',
      'xl/drawings/vmlDrawing1.vml': '<xml><x:FmlaLink>Plan!$A$1</x:FmlaLink><br></xml>',
    },
  });

it('everything in a workbook that refers to a sheet knows its new name, and nothing else changes', () => {
  const file = workbook();
  file.rename(new Map([['Plan', "Jo's plan"]]));
  expect(file.sheets.map(({ name }) => name)).toEqual(["Jo's plan", 'Totals']);
  const [before, after] = [saved(workbook()), saved(file)];
  const lines = (parts: Record<string, string>) => Object.values(parts).join('\n').replaceAll('&apos;', "'");
  const expected = lines(before)
    .replace('name="Plan"', 'name="Jo\'s plan"')
    .replace('<f>Plan!B1', "<f>'Jo''s plan'!B1")
    .replace('>Plan!$A$1:$B$2', ">'Jo''s plan'!$A$1:$B$2")
    .replace('<formula1>Plan!', "<formula1>'Jo''s plan'!")
    .replace('location="\'Plan\'!B2"', "location=\"'Jo''s plan'!B2\"")
    .replace('<c:f>Plan!', "<c:f>'Jo''s plan'!")
    .replace('sheet="Plan"', 'sheet="Jo\'s plan"')
    .replace('<x:FmlaLink>Plan!', "<x:FmlaLink>'Jo''s plan'!");
  expect(lines(after).split('\n').sort()).toEqual(expected.split('\n').sort());
});

it('two sheets may exchange their names, but not share one', () => {
  const file = workbook();
  file.rename(new Map([['Plan', 'Totals'], ['Totals', 'Plan']])); // prettier-ignore
  expect(file.sheets.map(({ name }) => name)).toEqual(['Totals', 'Plan']);
  expect(saved(file)['xl/worksheets/sheet1.xml']).toContain('<f>Plan!A1+1</f>');
  expect(() => file.rename(new Map([['Plan', 'TOTALS']]))).toThrow(/same name/);
  expect(() => file.rename(new Map([['Plan', 'a/b']]))).toThrow(/cannot be named/);
});
