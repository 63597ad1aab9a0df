import { contentType, removeContentType, removeDefaultType, setContentType } from '../content-types';
import type { Package } from '../package';
import { relationsOf } from '../relations';
import { Splice } from '../splice';
import type { SheetEntry } from '../workbook-part';
import { childrenOf, child, parseTree } from '../xml-tree';
import { fromUtf8, utf8 } from '../xml-text';
import { dropRelations } from './sweep';
import { stripWorkbook } from './workbook-pass';

/** What a workbook has that reaches outside or runs programs. */
export interface Outside {
  readonly links: number;
  readonly connections: boolean;
  readonly macros: boolean;
}

const MACRO_SHEETS = /^(?:xlMacrosheet|xlIntlMacrosheet|dialogsheet)$/;

export const outsideOf = (pkg: Package, workbook: string): Outside => {
  const relations = relationsOf(pkg, workbook);
  return {
    links: relations.filter(({ kind }) => kind === 'externalLink').length,
    connections: relations.some(({ kind }) => kind === 'connections'),
    macros:
      relations.some(({ kind }) => kind === 'vbaProject' || MACRO_SHEETS.test(kind)) ||
      /macroEnabled/i.test(contentType(pkg, workbook) ?? ''),
  };
};

/** Links to other workbooks and connections to data; formulas over them are values already. */
export const cutLinks = (pkg: Package, workbook: string, sheets: readonly SheetEntry[]): void => {
  stripWorkbook(pkg, workbook, ({ local }) => local === 'externalReferences');
  dropRelations(pkg, workbook, ({ kind }) => kind === 'externalLink' || kind === 'connections');
  for (const { part } of sheets) {
    dropRelations(pkg, part, ({ kind }) => kind === 'queryTable');
    for (const { kind, target } of relationsOf(pkg, part)) {
      if (kind !== 'table' || !pkg.has(target)) continue;
      dropRelations(pkg, target, (relation) => relation.kind === 'queryTable');
      const bytes = pkg.read(target);
      const root = parseTree(bytes, target);
      if (root.attributes.get('tableType') !== 'queryTable') continue;
      const splice = new Splice(bytes);
      splice.setAttribute(root, 'tableType', undefined);
      splice.setAttribute(root, 'connectionId', undefined);
      for (const column of childrenOf(child(root, 'tableColumns'), 'tableColumn'))
        splice.setAttribute(column, 'queryTableFieldId', undefined);
      pkg.write(target, splice.apply());
    }
  }
};

export const isMacroSheet = (pkg: Package, workbook: string, id: string | undefined): boolean =>
  relationsOf(pkg, workbook).some((relation) => relation.id === id && MACRO_SHEETS.test(relation.kind));

/** Macros and the buttons' ties to them; the file becomes a plain workbook. */
export const cutMacros = (pkg: Package, workbook: string): void => {
  dropRelations(pkg, workbook, ({ kind }) => /^(?:vbaProject|attachedToolbars|wordVbaData)$/.test(kind));
  dropRelations(pkg, '', ({ kind }) => kind === 'extensibility');
  removeDefaultType(pkg, 'application/vnd.ms-office.vbaProject');
  const type = contentType(pkg, workbook) ?? '';
  if (/macroEnabled/i.test(type)) {
    removeContentType(pkg, workbook);
    const kind = /template/i.test(type) ? 'template' : 'sheet';
    setContentType(pkg, workbook, `application/vnd.openxmlformats-officedocument.spreadsheetml.${kind}.main+xml`);
  }
  for (const part of pkg.names()) {
    if (!/\.(?:xml|vml)$/i.test(part) || !/\/(?:drawings|worksheets|ctrlProps)\//i.test(part)) continue;
    const bytes = pkg.read(part);
    // Only parts that can name a macro are looked at as text.
    if (!bytesInclude(bytes, 'acro')) continue;
    const text = fromUtf8(bytes);
    const after = /\/drawings\//i.test(part)
      ? text.replace(/\smacro="[^"]+"/g, ' macro=""').replace(/<x:FmlaMacro>[^<]*<\/x:FmlaMacro>/g, '')
      : text.replace(/(<(?:\w+:)?(?:controlPr|formControlPr)\b[^>]*?)\smacro="[^"]*"/g, '$1');
    if (after !== text) pkg.write(part, utf8(after));
  }
};

export const bytesInclude = (bytes: Uint8Array, ascii: string): boolean => {
  const first = ascii.charCodeAt(0);
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    let n = 1;
    while (n < ascii.length && bytes[at + n] === ascii.charCodeAt(n)) n++;
    if (n === ascii.length) return true;
  }
  return false;
};
