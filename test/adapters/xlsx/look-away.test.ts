import { openTiny, saved } from './tiny-workbook';

const STYLES =
  '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="14"/><color theme="4"/><name val="Georgia"/></font></fonts>' +
  '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>' +
  '<fill><patternFill patternType="solid"><fgColor rgb="FFFFEEDD"/></patternFill></fill></fills>' +
  '<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border><left style="thin"/><right/><top/><bottom/><diagonal/></border></borders>' +
  '<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>' +
  '<xf numFmtId="2" fontId="1" fillId="2" borderId="1" applyAlignment="1"><alignment horizontal="right" textRotation="45"/></xf></cellXfs></styleSheet>';
const at = { row: 0, column: 0, rows: 1, columns: 1 };

it('a part of a look that goes leaves the others as the file has them', () => {
  const file = openTiny({
    styles: STYLES,
    sheets: [{ name: 'Plan', rows: '<row r="1"><c r="A1" s="1"><v>4</v></c></row>' }],
  });
  const look = { bold: false, ink: null, ground: null, align: null, borders: {}, numberFormat: 'General' };
  file.edit([{ kind: 'look', sheet: 'Plan', range: at, look }]);
  const parts = saved(file);
  expect(parts['xl/worksheets/sheet1.xml']).toContain('<c s="2" r="A1">');
  expect(parts['xl/styles.xml']).toContain('<font><sz val="14"/><name val="Georgia"/></font>');
  const [, , xf] = [...parts['xl/styles.xml']!.matchAll(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/g)].map(([text]) => text);
  expect(xf).toMatch(/numFmtId="0" fontId="2" fillId="0" borderId="0"/);
  expect(xf).toContain('<alignment textRotation="45"/>');
});
