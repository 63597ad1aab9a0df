import { descendants, parseTree } from '../xml-tree';
import type { Package } from '../package';
import { relationOf } from '../relations';
import { walkSheet } from '../sheet-walk';
import { Splice } from '../splice';
import type { SheetEntry } from '../workbook-part';
import { fromUtf8, utf8 } from '../xml-text';
import { dropRelations } from './sweep';

const KINDS = /^(?:sheetMetadata|rdRichValue\w*|richValueRel|rdSupporting\w*|rdArray|RichStyles|rdRelationship\w*)$/i;

export const hasCubes = (pkg: Package, workbook: string): boolean => {
  const part = relationOf(pkg, workbook, 'sheetMetadata')?.target;
  return (
    part !== undefined &&
    pkg.has(part) &&
    [...descendants(parseTree(pkg.read(part), part))].some(({ local }) => local === 'mdxMetadata')
  );
};

/** Takes away what is kept behind the cells: texts of cubes, rich values. What the cells show stays. */
export const dropMetadata = (pkg: Package, workbook: string, sheets: readonly SheetEntry[]): void => {
  dropRelations(pkg, workbook, ({ kind }) => KINDS.test(kind));
  for (const { part } of sheets) {
    const bytes = pkg.read(part);
    const splice = new Splice(bytes);
    walkSheet(bytes, part, {
      cell({ start, openEnd }) {
        const tag = fromUtf8(bytes.subarray(start, openEnd));
        const after = tag.replace(/\s[cv]m=(?:"[^"]*"|'[^']*')/g, '');
        if (after !== tag) splice.replace(start, openEnd, after);
      },
    });
    if (!splice.isEmpty) pkg.write(part, splice.apply());
  }
};

/** Links to files on somebody's disk or server tell of names and paths. Returns how many went. */
export const dropPathLinks = (pkg: Package, { part }: SheetEntry): number => {
  const ids = dropRelations(
    pkg,
    part,
    ({ kind, external, target }) => kind === 'hyperlink' && external && /^(?:file:|[a-z]:[\\/]|\\\\|\/)/i.test(target),
  ).map(({ id }) => id);
  if (ids.length === 0) return 0;
  const text = fromUtf8(pkg.read(part));
  const isGone = (tag: string): boolean => ids.includes(/\s[\w.-]+:id=["']([^"']*)["']/.exec(tag)?.[1] ?? '');
  const after = text
    .replace(/<(?:[\w.-]+:)?hyperlink\s[^>]*\/>/g, (tag) => (isGone(tag) ? '' : tag))
    .replace(/<((?:[\w.-]+:)?)hyperlinks>\s*<\/\1hyperlinks>/, '');
  pkg.write(part, utf8(after));
  return ids.length;
};
