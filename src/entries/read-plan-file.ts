import { browserCodec } from '../adapters/xlsx/codec-browser';
import { openWorkbook } from '../adapters/xlsx/workbook-file';
import type { ReadPlanFile } from '../pane/revisions/revisions-state';

/** Reads another workbook in the page; nothing of it is sent or kept. */
export const readPlanFile: ReadPlanFile = async (bytes) => {
  const file = openWorkbook(bytes, { codec: browserCodec, functionNames: [] });
  return {
    sheets: file.sheets.map((info) => ({ info, content: file.readSheet(info.name, { formulaTexts: false }) })),
    getSetting: (key) => file.getSetting(key),
    notesOn: (sheet) => file.notesOn(sheet),
  };
};
