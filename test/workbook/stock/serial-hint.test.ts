import { judgePlan } from '../../../src/workbook/plan-of';
import type { SheetContent } from '../../../src/workbook/port';
import { recognise } from '../../../src/workbook/recognise';
import { caseSheets } from '../case-sheets';

/** The complete cases; their sensor list gets serial numbers, and the first row names one of them. */
const unreadOf = (typed: string, heading: string, language: 'en' | 'de' = 'en') => {
  const contents = caseSheets().map(({ name, cells }): SheetContent => {
    const values = cells.map((row) => [...row]) as (string | number | null)[][];
    const names = values[0]!.findIndex((cell) => String(cell).startsWith('Sensor type'));
    if (name === 'Channels') values[1]![names] = typed;
    else if (names >= 0) values.forEach((row, i) => row.push(i === 0 ? heading : `SN-${i}01, SN-${i}02`));
    return { sheet: name, row: 0, column: 0, values, formulas: values.map((row) => row.map(() => '')), tables: [], merged: [], hiddenRows: [] }; // prettier-ignore
  });
  const tables = recognise(contents.map((content, i) => ({ info: { name: content.sheet, active: i === 0, visible: true }, content }))); // prettier-ignore
  const contentOf = (sheet: string) => contents.find((content) => content.sheet === sheet)!;
  const second = contentOf(tables.sensors!.sheet).values[2]![tables.sensors!.columns.get('sensor')!.column];
  return {
    text: judgePlan(tables, contentOf, language)
      .unread.map((notice) => notice.text)
      .join('\n'),
    second,
  };
};

describe('a row that names a piece instead of its type', () => {
  it.each(['Serial numbers', 'Serial no.', 'Seriennummern'])('is told the type by the column “%s”', (heading) => {
    const { text, second } = unreadOf('sn-202', heading);
    expect(text).toContain(`“sn-202” is a serial number of “${String(second)}”`);
  });

  it('is told in the language of the pane', () => {
    const { text, second } = unreadOf('SN-201', 'Seriennummer', 'de');
    expect(text).toContain(`„SN-201“ ist eine Seriennummer von „${String(second)}“`);
  });

  it('is told nothing where no piece has that number', () => {
    expect(unreadOf('SN-2', 'Serial number').text).not.toContain('serial number of');
    expect(unreadOf('SN-201', 'Remarks').text).not.toContain('serial number of');
  });
});
