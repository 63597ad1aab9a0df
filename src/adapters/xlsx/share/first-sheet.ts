import type { Package } from '../package';
import { arrangeSheets } from '../sheet-order';
import { sectionsNamed } from '../sheet-sections';
import { Splice } from '../splice';
import { readWorkbookPart } from '../workbook-part';
import { child, childrenOf } from '../xml-tree';
import { layoutOf } from './layout-of';

/** Puts a sheet in front of all others and lets the workbook open on it: the first thing that a reader sees, on screen and paper. */
export const openOnSheet = (pkg: Package, workbook: string, name: string): void => {
  const { allSheetNames } = readWorkbookPart(pkg, workbook);
  arrangeSheets(pkg, workbook, [name, ...allSheetNames.filter((other) => other !== name)]);
  const { root, bytes, sheets } = readWorkbookPart(pkg, workbook);
  const splice = new Splice(bytes);
  for (const view of childrenOf(child(root, 'bookViews'), 'workbookView')) {
    splice.setAttribute(view, 'activeTab', '0');
    if (view.attributes.has('firstSheet')) splice.setAttribute(view, 'firstSheet', '0');
  }
  if (!splice.isEmpty) pkg.write(workbook, splice.apply());
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
