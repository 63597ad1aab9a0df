import { LocaleType, type IWorkbookData, type IWorksheetData } from '@univerjs/core';
import { DecryptionError, EncryptedFileError, HucreError, readXlsx, type Workbook } from 'hucre';
import { Breath } from '../breath';
import { FileProblem, recogniseFile } from './file-kind';
import { resourcesFromFile } from './resources';
import { worksheetFromFile } from './sheets';
import { colorReader, StyleTable, withFallback } from './styles';

const parse = async (bytes: Uint8Array): Promise<Workbook> => {
  try {
    return await readXlsx(bytes, { readStyles: true });
  } catch (error) {
    if (error instanceof EncryptedFileError || error instanceof DecryptionError) throw new FileProblem('encrypted');
    if (error instanceof HucreError) throw new FileProblem('broken');
    throw new FileProblem('broken');
  }
};

let opened = 0;

/**
 * Reads an .xlsx file for display. Rejects with a FileProblem that says what was expected.
 * Nothing that leaves our hands is written from this reading.
 */
export const workbookFromFile = async (bytes: Uint8Array, name: string): Promise<IWorkbookData> => {
  recogniseFile(bytes);
  const workbook = await parse(bytes);
  if (workbook.sheets.length === 0) throw new FileProblem('broken');
  const color = colorReader(workbook.themeColors);
  const styles = new StyleTable(color);
  const ids = new Map(workbook.sheets.map((sheet, i) => [sheet.name, `sheet-${i + 1}`]));
  const sheets: Partial<IWorksheetData>[] = [];
  const breath = new Breath();
  for (const [i, sheet] of workbook.sheets.entries()) {
    if (breath.due()) await breath.take();
    sheets.push(worksheetFromFile(sheet, `sheet-${i + 1}`, styles, color));
  }
  if (sheets.every((sheet) => sheet.hidden) && sheets[0]) sheets[0].hidden = 0;
  const font = workbook.defaultFont;
  return {
    id: `workbook-${++opened}`,
    name,
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    defaultStyle: { ff: withFallback(font?.name ?? 'Calibri'), fs: font?.size ?? 11, vt: 3 },
    styles: styles.styles,
    sheetOrder: sheets.map((sheet) => sheet.id ?? ''),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
    resources: resourcesFromFile(workbook, ids, color),
    custom: { activeSheet: ids.get(workbook.sheets[workbook.activeSheet ?? 0]?.name ?? '') },
  };
};
