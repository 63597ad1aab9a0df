import { HostProblem, type Change } from '../../workbook/port';
import { SETS, type OfficeHost } from './host';
import { missingSheet } from './read-sheet';
import { refuseTooLong } from './typed-text';

const sheetOf = (change: Change): string => (change.kind === 'sheet' ? change.name : change.sheet);

const refuseUnsupported = (host: OfficeHost, changes: readonly Change[]): void => {
  if (changes.some((change) => change.kind === 'note') && !host.supports(SETS.notes))
    throw new HostProblem('This version of Excel cannot set notes from an add-in. Nothing was changed.', 'unsupported');
};

const refuseProtected = (what: string, isProtected: boolean): void => {
  if (isProtected)
    throw new HostProblem(
      `${what} is protected. Remove the protection (Review tab), then try again. Nothing was changed.`,
      'protected',
    );
};

/** Sheets are compared as Excel does, without regard to case. */
export const sameName = (name: string): string => name.toLowerCase();

/**
 * Finds the sheets that the changes name and refuses before anything is written: a half-done action cannot be taken back
 * on every host.
 */
export const preflight = async (
  host: OfficeHost,
  context: Excel.RequestContext,
  changes: readonly Change[],
): Promise<Map<string, Excel.Worksheet>> => {
  for (const change of changes) if (change.kind === 'cells') refuseTooLong(change);
  refuseUnsupported(host, changes);

  const names = new Map(changes.map((change) => [sameName(sheetOf(change)), sheetOf(change)]));
  const asked = [...names].map(([key, name]) => ({
    key,
    name,
    sheet: context.workbook.worksheets.getItemOrNullObject(name),
  }));
  asked.forEach(({ sheet }) => sheet.load('name'));
  await context.sync();

  const found = asked.filter(({ sheet }) => !sheet.isNullObject);
  const absent = asked.filter(({ sheet }) => sheet.isNullObject);
  for (const { key, name } of absent) {
    const [first] = changes.filter((change) => sameName(sheetOf(change)) === key);
    if (first?.kind !== 'sheet') throw missingSheet(name);
  }
  found.forEach(({ sheet }) => sheet.protection.load('protected'));
  const sheets = new Map(found.map(({ key, sheet }) => [key, sheet]));
  const tables = changes.flatMap((change) => {
    const sheet = change.kind === 'extend-table' && sheets.get(sameName(change.sheet));
    return sheet ? [{ change, table: sheet.tables.getItemOrNullObject(change.table) }] : [];
  });
  tables.forEach(({ table }) => table.load('name'));
  context.workbook.protection.load('protected');
  await context.sync();
  for (const { change, table } of tables)
    if (table.isNullObject)
      throw new HostProblem(`The sheet “${change.sheet}” has no table “${change.table}”.`, 'not-found');
  // A sheet that is only asked for and is there already stays as it is.
  const touched = new Set(changes.filter(({ kind }) => kind !== 'sheet').map((change) => sameName(sheetOf(change))));
  for (const { key, name, sheet } of found)
    refuseProtected(`The sheet “${name}”`, touched.has(key) && sheet.protection.protected);
  refuseProtected('The structure of this workbook', absent.length > 0 && context.workbook.protection.protected);
  return sheets;
};
