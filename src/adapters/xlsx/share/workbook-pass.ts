import { cellAddress, rangeAddress, sheetPrefix } from '../../../workbook/address';
import type { RangeAddress } from '../../../workbook/port';
import { parseRange } from '../cell-reference';
import type { Package } from '../package';
import { refuse } from '../refuse';
import { removeRelation } from '../relations';
import { union } from '../sheet-sections';
import { Splice } from '../splice';
import { readWorkbookPart } from '../workbook-part';
import { child, childrenOf, descendants, prefixed, tagName, textOf, type XmlElement } from '../xml-tree';
import { escapeAttribute, escapeXml } from '../xml-text';
import type { LeftOut } from './left-out';

export interface WorkbookPass {
  readonly names: readonly string[];
}

/** Takes left-out sheets and names that read what is left out, out of the workbook part. */
export const passWorkbook = (
  pkg: Package,
  workbook: string,
  leftOut: LeftOut,
  isGone: (sheet: string, kind: string | undefined) => boolean,
): WorkbookPass => {
  const book = readWorkbookPart(pkg, workbook);
  const { root, bytes } = book;
  const splice = new Splice(bytes);
  const list = child(root, 'sheets') ?? refuse('unsupported', `${workbook} has no list of sheets.`);
  const entries = childrenOf(list, 'sheet');
  const gone = entries.map((entry) => isGone(entry.attributes.get('name') ?? '', prefixed(entry, 'id')));
  const isShown = (entry: XmlElement) => (entry.attributes.get('state') ?? 'visible') === 'visible';
  if (!entries.some((entry, i) => !gone[i] && isShown(entry)))
    refuse('unsupported', 'Then no sheet would be left to look at. Leave at least one.');
  const newIndex = entries.map((_, i) => gone.slice(0, i).filter((is) => !is).length);
  entries.forEach((entry, i) => {
    if (!gone[i]) return;
    splice.remove(entry);
    const id = prefixed(entry, 'id');
    if (id !== undefined) removeRelation(pkg, workbook, id);
  });
  const names = child(root, 'definedNames');
  const removed: string[] = [];
  const all = childrenOf(names, 'definedName');
  const keeps = all.map((name) => {
    const scope = name.attributes.get('localSheetId');
    if (scope !== undefined && gone[Number(scope)]) return false;
    const title = name.attributes.get('name') ?? '';
    const text = textOf(bytes, name);
    if (/^_xlnm\./i.test(title)) return !/#REF!/.test(text);
    if (!leftOut.hasName(title)) return true;
    removed.push(title);
    return false;
  });
  if (names && all.length > 0 && keeps.every((keep) => !keep)) splice.remove(names);
  else
    all.forEach((name, i) => {
      const scope = name.attributes.get('localSheetId');
      if (!keeps[i]) splice.remove(name);
      else if (scope !== undefined && String(newIndex[Number(scope)]) !== scope)
        splice.setAttribute(name, 'localSheetId', String(newIndex[Number(scope)]));
    });
  if (gone.includes(true))
    for (const view of childrenOf(child(root, 'bookViews'), 'workbookView'))
      for (const key of ['activeTab', 'firstSheet']) {
        const at = Number(view.attributes.get(key) ?? 0);
        const shown = entries.findIndex((entry, i) => !gone[i] && isShown(entry));
        const to = gone[at] ? newIndex[shown] : newIndex[at];
        if (view.attributes.has(key) || key === 'activeTab') splice.setAttribute(view, key, String(to ?? 0));
      }
  if (!splice.isEmpty) pkg.write(workbook, splice.apply());
  return { names: removed };
};

/** Removes elements of the workbook part: links, caches, paths, names of people. */
export const stripWorkbook = (pkg: Package, workbook: string, isGone: (element: XmlElement) => boolean): void => {
  const { root, bytes } = readWorkbookPart(pkg, workbook);
  const splice = new Splice(bytes);
  const visit = (element: XmlElement): void => {
    for (const c of element.children)
      if (isGone(c)) splice.remove(c);
      else visit(c);
  };
  visit(root);
  if (!splice.isEmpty) pkg.write(workbook, splice.apply());
};

export const isPath = (element: XmlElement): boolean =>
  element.local === 'absPath' ||
  (element.local === 'AlternateContent' && [...descendants(element)].some(({ local }) => local === 'absPath'));

/** Sets or replaces a name that belongs to one sheet. */
export const setSheetName = (
  pkg: Package,
  workbook: string,
  sheet: string,
  name: string,
  textFor: (before: string | undefined) => string | undefined,
): void => {
  const { root, bytes, allSheetNames } = readWorkbookPart(pkg, workbook);
  const index = allSheetNames.findIndex((other) => other.toLowerCase() === sheet.toLowerCase());
  const names = child(root, 'definedNames');
  const there = childrenOf(names, 'definedName').find(
    (n) => n.attributes.get('name') === name && n.attributes.get('localSheetId') === String(index),
  );
  const before = there && textOf(bytes, there);
  const text = textFor(before);
  if (text === undefined || text === before) return;
  const splice = new Splice(bytes);
  const tag = tagName(root, 'definedName');
  const xml = `<${tag} name="${escapeAttribute(name)}" localSheetId="${index}">${escapeXml(text)}</${tag}>`;
  if (there) splice.replace(there.start, there.end, xml);
  else if (names) {
    // Names stand in the order of the alphabet; those that begin with _xlnm come first.
    const after = names.children.find((n) => !(n.attributes.get('name') ?? '').startsWith('_xlnm'));
    if (after) splice.insert(after.start, xml);
    else splice.append(names, xml);
  } else {
    const list = tagName(root, 'definedNames');
    const behind = ['externalReferences', 'functionGroups', 'sheets'].flatMap((local) => child(root, local) ?? [])[0];
    splice.insert(behind!.end, `<${list}>${xml}</${list}>`);
  }
  pkg.write(workbook, splice.apply());
};

/** A print area widened so that it holds a block too. */
export const areaWith = (before: string | undefined, sheet: string, block: RangeAddress): string | undefined => {
  if (before === undefined || before.includes(',')) return undefined;
  const range = parseRange(before.slice(before.lastIndexOf('!') + 1));
  if (!range) return undefined;
  const [from, to] = rangeAddress(union(range, block)).split(':') as [string, string?];
  const fixed = (cell: string): string => cell.replace(/^([A-Z]+)(\d+)$/, '$$$1$$$2');
  return `${sheetPrefix(sheet)}${fixed(from)}:${fixed(to ?? from)}`;
};

/** "Sheet!$A:$A,Sheet!$4:$5": a header and the first column of a list, repeated on every printed page. */
export const titleRows = (sheet: string, row: number, rows: number, column: number): string => {
  const letters = cellAddress(0, column).replace(/\d+$/, '');
  const at = sheetPrefix(sheet);
  return `${at}$${letters}:$${letters},${at}$${row + 1}:$${row + rows}`;
};

/** What a user repeats on each page is kept; where it is rows only, the column with the names comes to it. Some programs write rows without their signs and then do not repeat them. */
export const titlesWith = (before: string | undefined, titles: string): string => {
  const rows = /^([^,]*!)\$?(\d+):\$?(\d+)$/.exec(before ?? '');
  if (rows) return `${titles.split(',')[0]},${rows[1]}$${rows[2]}:$${rows[3]}`;
  return before ?? titles;
};
