import { contentType } from './content-types';
import type { Package } from './package';
import { relationsOf, relationOf, STRICT, TRANSITIONAL } from './relations';
import { refuse } from './refuse';
import { fromUtf8 } from './xml-text';
import { child, childrenOf, onOff, parseTree, prefixed, textOf, type XmlElement } from './xml-tree';

export interface SheetEntry {
  readonly name: string;
  readonly part: string;
  readonly visible: boolean;
  readonly active: boolean;
}

export interface DefinedName {
  readonly name: string;
  readonly text: string;
  /** Name of the sheet for which alone it holds. */
  readonly sheet: string | undefined;
}

/** What workbook.xml says. Sheets that are no worksheets (charts, dialogs, old macros) are left out of `sheets`. */
export interface WorkbookPart {
  readonly part: string;
  readonly bytes: Uint8Array;
  readonly root: XmlElement;
  readonly relationSpace: string;
  readonly sheets: readonly SheetEntry[];
  readonly allSheetNames: readonly string[];
  readonly names: readonly DefinedName[];
  readonly from1904: boolean;
  readonly styles: string | undefined;
  readonly sharedStrings: string | undefined;
  readonly protectedStructure: boolean;
}

export function findWorkbookPart(pkg: Package): string {
  if (pkg.has('mimetype') && fromUtf8(pkg.read('mimetype')).startsWith('application/vnd.oasis.opendocument'))
    refuse('unsupported', 'The file is an OpenDocument file (.ods). Save it as .xlsx first.');
  const found = relationOf(pkg, '', 'officeDocument')?.target;
  if (found === undefined || !pkg.has(found)) return refuse('unsupported', 'The file is not a workbook.');
  const type = contentType(pkg, found) ?? '';
  if (/sheet\.binary/i.test(type) || /\.bin$/i.test(found))
    refuse('unsupported', 'The file is a binary .xlsb workbook. Save it as .xlsx first.');
  if (!/spreadsheetml|ms-excel/i.test(type)) refuse('unsupported', 'The file is not a workbook.');
  return found;
}

export function readWorkbookPart(pkg: Package, part: string): WorkbookPart {
  const bytes = pkg.read(part);
  const root = parseTree(bytes, part);
  if (root.local !== 'workbook') refuse('unsupported', `${part} is not a workbook part.`);
  const relations = new Map(relationsOf(pkg, part).map((relation) => [relation.id, relation]));
  const kinds = (kind: string) => [...relations.values()].find((r) => r.kind === kind && pkg.has(r.target))?.target;
  const view = child(child(root, 'bookViews'), 'workbookView');
  const activeTab = Number(view?.attributes.get('activeTab') ?? 0);
  const entries = childrenOf(child(root, 'sheets'), 'sheet');
  const allSheetNames = entries.map((entry) => entry.attributes.get('name') ?? '');
  const sheets: SheetEntry[] = [];
  entries.forEach((entry, n) => {
    const relation = relations.get(prefixed(entry, 'id') ?? '');
    if (relation?.kind !== 'worksheet' || !pkg.has(relation.target)) return;
    const visible = (entry.attributes.get('state') ?? 'visible') === 'visible';
    sheets.push({ name: allSheetNames[n]!, part: relation.target, visible, active: n === activeTab });
  });
  const protection = child(root, 'workbookProtection')?.attributes;
  return {
    part,
    bytes,
    root,
    relationSpace: [...relations.values()].some((r) => r.type.startsWith(STRICT)) ? STRICT : TRANSITIONAL,
    sheets,
    allSheetNames,
    names: childrenOf(child(root, 'definedNames'), 'definedName').map((name) => ({
      name: name.attributes.get('name') ?? '',
      text: textOf(bytes, name),
      sheet: allSheetNames[Number(name.attributes.get('localSheetId') ?? NaN)],
    })),
    from1904: onOff(child(root, 'workbookPr')?.attributes.get('date1904')),
    styles: kinds('styles'),
    sharedStrings: kinds('sharedStrings'),
    protectedStructure: onOff(protection?.get('lockStructure')),
  };
}
