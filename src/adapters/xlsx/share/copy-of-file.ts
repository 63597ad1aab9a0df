import type { Language } from '../../../core/language';
import { parseMapping } from '../../../workbook/mapping';
import { judgePlan } from '../../../workbook/plan-of';
import { NOTES_SETTING } from '../../../workbook/plan-notes/record';
import { personsNotes } from '../../../workbook/plan-notes/persons-notes';
import { HostProblem, type SheetContent } from '../../../workbook/port';
import { limitRowsOf } from '../../../workbook/limit-rows';
import { recognise } from '../../../workbook/recognise';
import { isNotesSheet, NO_NOTES } from '../../../workbook/report/plan-notes';
import { MAPPING_SETTING } from '../../../workbook/session';
import type { ShareChoices } from '../../../workbook/share/choices';
import { SESSION_WORDS } from '../../../workbook/words';
import { openWorkbook, type OpenOptions } from '../workbook-file';
import type { CustomerCopy } from './copy-request';
import { customerCopy } from './customer-copy';

/** The customer copy of a workbook as a program saves it, with nothing read before. */
export const copyOfFile = (
  bytes: Uint8Array,
  open: OpenOptions,
  choices: ShareChoices,
  toldIn: Language,
): CustomerCopy => {
  const file = openWorkbook(bytes, open);
  const contents = new Map<string, SheetContent>();
  const contentOf = (sheet: string): SheetContent => {
    const known = contents.get(sheet) ?? file.readSheet(sheet);
    contents.set(sheet, known);
    return known;
  };
  const found = recognise(
    file.sheets.map((info) => ({ info, content: contentOf(info.name) })),
    { mapping: parseMapping(file.getSetting(MAPPING_SETTING)) },
  );
  const { channels, limits } = found;
  if (!channels) throw new HostProblem(SESSION_WORDS[toldIn].noList, 'not-found');
  const notes = file.sheets.find(({ name }) => isNotesSheet(name) && !choices.leftOutSheets.includes(name));
  return customerCopy({
    bytes,
    open,
    tables: { ...found, channels, limitRows: limits && limitRowsOf(limits, contentOf(limits.sheet)) },
    contentOf,
    judged: judgePlan(found, contentOf, choices.language),
    notes: notes ? personsNotes(contentOf(notes.name), file.getSetting(NOTES_SETTING)) : NO_NOTES,
    choices,
    toldIn,
  });
};
