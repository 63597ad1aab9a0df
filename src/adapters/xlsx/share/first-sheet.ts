import type { Package } from '../package';
import { sectionsNamed } from '../sheet-sections';
import { Splice } from '../splice';
import { readWorkbookPart } from '../workbook-part';
import { child, childrenOf, rawText } from '../xml-tree';
import { layoutOf } from './layout-of';

/** Puts a sheet in front of all others and lets the workbook open on it: the first thing that a reader sees, on screen and paper. */
export const openOnSheet = (pkg: Package, workbook: string, name: string): void => {
  const { root, bytes, sheets } = readWorkbookPart(pkg, workbook);
  const list = child(root, 'sheets');
  const entries = childrenOf(list, 'sheet');
  const from = entries.findIndex((entry) => entry.attributes.get('name') === name);
  const entry = entries[from];
  if (!entry) return;
  const splice = new Splice(bytes);
  if (from > 0) {
    splice.insert(entries[0]!.start, rawText(bytes, entry.start, entry.end));
    splice.remove(entry);
  }
  for (const defined of childrenOf(child(root, 'definedNames'), 'definedName')) {
    const scope = defined.attributes.get('localSheetId');
    if (scope === undefined || Number(scope) > from) continue;
    splice.setAttribute(defined, 'localSheetId', String(Number(scope) === from ? 0 : Number(scope) + 1));
  }
  for (const view of childrenOf(child(root, 'bookViews'), 'workbookView')) {
    splice.setAttribute(view, 'activeTab', '0');
    if (view.attributes.has('firstSheet')) splice.setAttribute(view, 'firstSheet', '0');
  }
  pkg.write(workbook, splice.apply());
  for (const sheet of sheets) selectTab(pkg, sheet.part, sheet.name === name);
};

const selectTab = (pkg: Package, part: string, isSelected: boolean): void => {
  const layout = layoutOf(pkg.read(part), part);
  const splice = new Splice(layout.bytes);
  for (const views of sectionsNamed(layout, 'sheetViews'))
    for (const view of childrenOf(views, 'sheetView'))
      if (isSelected || view.attributes.has('tabSelected'))
        splice.setAttribute(view, 'tabSelected', isSelected ? '1' : undefined);
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};
