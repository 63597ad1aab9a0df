import { strToU8, zipSync } from 'fflate';
import { nodeCodec } from '../../../src/adapters/xlsx/codec-node';
import { FileSpreadsheet } from '../../../src/adapters/xlsx/spreadsheet';
import { openWorkbook } from '../../../src/adapters/xlsx/workbook-file';
import { FUNCTIONS } from '../../../src/functions/index';
import { cellAddress, rangeAddress } from '../../../src/workbook/address';
import { describePort, type SeedSheet } from '../../workbook/port-contract';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';

const cellXml = (entry: number | string | boolean | null, at: string): string => {
  if (entry === null) return '';
  if (typeof entry === 'number') return `<c r="${at}"><v>${entry}</v></c>`;
  if (typeof entry === 'boolean') return `<c r="${at}" t="b"><v>${entry ? 1 : 0}</v></c>`;
  if (entry.startsWith('=')) return `<c r="${at}"><f>${entry.slice(1)}</f><v>52.5</v></c>`;
  return `<c r="${at}" t="inlineStr"><is><t>${entry}</t></is></c>`;
};

const sheetXml = ({ cells = [], merged, hiddenRow, table }: SeedSheet): string => {
  const rows = cells.map((row, r) => {
    const hidden = r === hiddenRow ? ' hidden="1"' : '';
    return `<row r="${r + 1}"${hidden}>${row.map((entry, c) => cellXml(entry, cellAddress(r, c))).join('')}</row>`;
  });
  const merges = merged ? `<mergeCells count="1"><mergeCell ref="${rangeAddress(merged)}"/></mergeCells>` : '';
  const parts = table ? '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>' : '';
  return `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheetData>${rows.join('')}</sheetData>${merges}${parts}</worksheet>`;
};

const tableXml = ({ table, cells }: SeedSheet): string => {
  if (!table) return '';
  const ref = rangeAddress(table.range);
  const names = (cells?.[table.range.row] ?? []).slice(table.range.column, table.range.column + table.range.columns);
  const columns = names.map((name, i) => `<tableColumn id="${i + 1}" name="${name}"/>`).join('');
  return `${HEAD}<table xmlns="${MAIN}" id="1" name="${table.name}" displayName="${table.name}" ref="${ref}"><autoFilter ref="${ref}"/><tableColumns count="${names.length}">${columns}</tableColumns></table>`;
};

const relationships = (targets: readonly (readonly [type: string, target: string])[]): string =>
  `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${targets
    .map(([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`)
    .join('')}</Relationships>`;

/** The smallest workbook (ECMA-376) that holds the sheets. */
const workbookOf = (sheets: readonly SeedSheet[]): Uint8Array => {
  const sml = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const parts: Record<string, string> = {
    '_rels/.rels': relationships([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets
      .map(({ name }, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`)
      .join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relationships(
      sheets.map((_sheet, i) => ['worksheet', `worksheets/sheet${i + 1}.xml`]),
    ),
  };
  const overrides = [['/xl/workbook.xml', `${sml}.sheet.main+xml`]];
  sheets.forEach((sheet, i) => {
    parts[`xl/worksheets/sheet${i + 1}.xml`] = sheetXml(sheet);
    overrides.push([`/xl/worksheets/sheet${i + 1}.xml`, `${sml}.worksheet+xml`]);
    if (!sheet.table) return;
    parts[`xl/worksheets/_rels/sheet${i + 1}.xml.rels`] = relationships([['table', '../tables/table1.xml']]);
    parts['xl/tables/table1.xml'] = tableXml(sheet);
    overrides.push(['/xl/tables/table1.xml', `${sml}.table+xml`]);
  });
  parts['[Content_Types].xml'] =
    `${HEAD}<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${overrides
      .map(([name, type]) => `<Override PartName="${name}" ContentType="${type}"/>`)
      .join('')}</Types>`;
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)])));
};

describePort('a workbook file', (sheets) =>
  Promise.resolve({
    spreadsheet: new FileSpreadsheet(
      openWorkbook(workbookOf(sheets), { codec: nodeCodec, functionNames: FUNCTIONS.map(({ name }) => name) }),
    ),
  }),
);
