import type { Package } from './package';
import { refuse } from './refuse';
import { Splice } from './splice';
import { readWorkbookPart } from './workbook-part';
import { child, childrenOf, rawText } from './xml-tree';

/** The order of all sheets when those named come in their order; others stay behind the one they followed. */
export const orderOf = (present: readonly string[], wanted: readonly string[]): string[] => {
  const rank = new Map(wanted.map((name, n) => [name.toLowerCase(), n]));
  const groups: { readonly rank: number; readonly names: string[] }[] = [{ rank: -1, names: [] }];
  for (const name of present) {
    const at = rank.get(name.toLowerCase());
    if (at === undefined) groups.at(-1)!.names.push(name);
    else groups.push({ rank: at, names: [name] });
  }
  return groups.sort((a, b) => a.rank - b.rank).flatMap(({ names }) => names);
};

/** Brings the sheets into an order. Names that hold on one sheet and the sheet in view are told by number and move along. */
export const arrangeSheets = (pkg: Package, workbook: string, wanted: readonly string[]): boolean => {
  const { root, bytes, allSheetNames, protectedStructure } = readWorkbookPart(pkg, workbook);
  const order = orderOf(allSheetNames, wanted);
  if (order.every((name, n) => name === allSheetNames[n])) return false;
  if (protectedStructure)
    refuse('protected', 'The structure of the workbook is protected, so its sheets cannot be put in another order.');
  const from = order.map((name) => allSheetNames.indexOf(name));
  const entries = childrenOf(child(root, 'sheets'), 'sheet');
  const splice = new Splice(bytes);
  entries.forEach((entry, n) => {
    const other = entries[from[n]!]!;
    if (other !== entry) splice.replace(entry.start, entry.end, rawText(bytes, other.start, other.end));
  });
  const moved = (index: string | undefined): string | undefined => {
    const to = from.indexOf(Number(index));
    return index === undefined || to < 0 ? index : String(to);
  };
  for (const name of childrenOf(child(root, 'definedNames'), 'definedName')) {
    const scope = name.attributes.get('localSheetId');
    if (moved(scope) !== scope) splice.setAttribute(name, 'localSheetId', moved(scope));
  }
  for (const view of childrenOf(child(root, 'bookViews'), 'workbookView'))
    for (const key of ['activeTab', 'firstSheet']) {
      const at = view.attributes.get(key) ?? (key === 'activeTab' ? '0' : undefined);
      if (moved(at) !== at) splice.setAttribute(view, key, moved(at));
    }
  pkg.write(workbook, splice.apply());
  return true;
};
