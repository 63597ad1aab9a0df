import { notPrinted } from '../../../src/adapters/xlsx/print-area';

const ours = { row: 3, column: 8, rows: 20, columns: 4 }; // I4:L23
const printing = (text: string, sheet = 'Plan', name = '_xlnm.Print_Area') => [{ name, text, sheet }];

// Forms of the built-in name as ISO/IEC 29500-1, 18.2.5 stores them.
test.each([
  ['Plan!$A$1:$L$23'],
  ["'Plan'!$A$1:$C$9,'Plan'!$G$2:$M$40"],
  ['Plan!$A:$N'],
  ['Plan!$1:$40'],
  ['OFFSET(Plan!$A$1,0,0,9,9)'],
])('%s leaves nothing of ours off the paper', (text) => {
  expect(notPrinted(printing(text), 'Plan', ours)).toBeUndefined();
});

test.each([
  ['Plan!$A$1:$H$23', 'A1:H23'],
  ['Plan!$A$1:$L$22', 'A1:L22'],
  ["'Plan'!$A$1:$C$9,'Plan'!$M$2:$N$4", 'A1:C9, M2:N4'],
  ['Plan!$A:$J', 'A1:J1048576'],
])('%s leaves ours out and the user is told which cells', (text, said) => {
  const told = notPrinted(printing(text), 'plan', ours);
  expect(told).toContain(`prints ${said} only`);
  expect(told).toContain('I4:L23');
});

test('a sheet name with commas and quotes is no list of areas', () => {
  const named = printing("'Wing, left''s'!$A$1:$H$9", "Wing, left's");
  expect(notPrinted(named, "Wing, left's", ours)).toContain('prints A1:H9 only');
});

test('the print area of another sheet, or another name, says nothing', () => {
  expect(notPrinted(printing('Other!$A$1:$B$2', 'Other'), 'Plan', ours)).toBeUndefined();
  expect(notPrinted(printing('Plan!$1:$4', 'Plan', '_xlnm.Print_Titles'), 'Plan', ours)).toBeUndefined();
});
