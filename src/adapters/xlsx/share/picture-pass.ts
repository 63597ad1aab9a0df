import type { Package } from '../package';
import { refuse } from '../refuse';
import { relationsOf } from '../relations';
import { Splice } from '../splice';
import { parseRange } from '../cell-reference';
import { readWorkbookPart, type SheetEntry } from '../workbook-part';
import { child, childrenOf, descendants, parseTree, prefixed, textOf } from '../xml-tree';
import { isKind } from './note-pass';
import type { LeftOut } from './left-out';
import { dropRelations } from './sweep';
import { stripWorkbook } from './workbook-pass';

/** Charts keep a copy of what they draw; where it is left out, the copy goes. Returns how many charts lost something. */
export const passCharts = (pkg: Package, leftOut: LeftOut): number => {
  let charts = 0;
  for (const part of pkg.names()) {
    if (!isKind(pkg, part, /drawingml\.chart\+xml|ms-office\.chartex\+xml/)) continue;
    const bytes = pkg.read(part);
    const root = parseTree(bytes, part);
    const splice = new Splice(bytes);
    for (const formula of [...descendants(root)].filter(({ local }) => local === 'f')) {
      const text = textOf(bytes, formula);
      if (text === '' || !leftOut.breaks(text, '')) continue;
      splice.replace(formula.openEnd, formula.closeStart, '#REF!');
      for (const beside of formula.parent?.children ?? [])
        if (/^(?:num|str|multiLvlStr)Cache$|^lvl$/.test(beside.local)) splice.remove(beside);
    }
    if (splice.isEmpty) continue;
    pkg.write(part, splice.apply());
    charts++;
  }
  return charts;
};

/** Summary tables over left-out data hold a copy of it: they go, the cells that they filled stay. Returns how many. */
export const passPivots = (
  pkg: Package,
  workbook: string,
  sheets: readonly SheetEntry[],
  leftOut: LeftOut,
  dropLinks: boolean,
): number => {
  const caches = relationsOf(pkg, workbook).filter(({ kind }) => kind === 'pivotCacheDefinition');
  const gone = caches.filter(({ target }) => {
    if (!pkg.has(target)) return false;
    const source = child(parseTree(pkg.read(target), target), 'cacheSource');
    if (source?.attributes.get('type') === 'external') return dropLinks;
    return childrenOf(source, 'worksheetSource').some(({ attributes, ...element }) => {
      const sheet = attributes.get('sheet') ?? '';
      const range = parseRange(attributes.get('ref') ?? '');
      const name = attributes.get('name');
      if (prefixed({ attributes, ...element }, 'id') !== undefined) return dropLinks;
      return name === undefined ? (range ? leftOut.touches(sheet, range) : leftOut.hasSheet(sheet)) : leftOut.breaks(`${name}[#All]`, sheet) || leftOut.breaks(name, sheet); // prettier-ignore
    });
  });
  if (gone.length === 0) return 0;
  if (relationsOf(pkg, workbook).some(({ kind }) => kind === 'slicerCache' || kind === 'timelineCache'))
    refuse(
      'unsupported',
      'A summary table with buttons to filter it reads what is to be left out. Remove its buttons first, or keep the data.',
    );
  const targets = new Set(gone.map(({ target }) => target.toLowerCase()));
  const ids = new Set(gone.map(({ id }) => id));
  let tables = 0;
  for (const { part } of sheets)
    tables += dropRelations(
      pkg,
      part,
      ({ kind, target }) =>
        kind === 'pivotTable' && relationsOf(pkg, target).some((r) => targets.has(r.target.toLowerCase())),
    ).length;
  stripWorkbook(pkg, workbook, (element) => {
    if (element.local === 'pivotCaches') return element.children.every((cache) => ids.has(prefixed(cache, 'id') ?? ''));
    return element.local === 'pivotCache' && ids.has(prefixed(element, 'id') ?? '');
  });
  dropRelations(pkg, workbook, ({ id, kind }) => kind === 'pivotCacheDefinition' && ids.has(id));
  return tables;
};

export const sheetsOf = (pkg: Package, workbook: string): readonly SheetEntry[] =>
  readWorkbookPart(pkg, workbook).sheets;
