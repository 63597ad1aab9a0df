import type { Package } from './package';
import { refuse } from './refuse';
import { Splice } from './splice';
import { escapeAttribute } from './xml-text';
import { childrenOf, parseTree, tagName } from './xml-tree';

const PART = '[Content_Types].xml';

const read = (pkg: Package) => {
  if (!pkg.has(PART)) refuse('unsupported', 'The file is not a workbook: it has no list of content types.');
  return parseTree(pkg.read(PART), PART);
};

const sameName = (a: string | undefined, part: string): boolean =>
  a?.replace(/^\//, '').toLowerCase() === part.toLowerCase();

export function contentType(pkg: Package, part: string): string | undefined {
  const root = read(pkg);
  const override = childrenOf(root, 'Override').find((o) => sameName(o.attributes.get('PartName'), part));
  const extension = part.slice(part.lastIndexOf('.') + 1).toLowerCase();
  const fallback = childrenOf(root, 'Default').find((d) => d.attributes.get('Extension')?.toLowerCase() === extension);
  return (override ?? fallback)?.attributes.get('ContentType');
}

export function setContentType(pkg: Package, part: string, type: string): void {
  if (contentType(pkg, part) === type) return;
  const root = read(pkg);
  const splice = new Splice(pkg.read(PART));
  const tag = tagName(root, 'Override');
  splice.append(root, `<${tag} PartName="/${escapeAttribute(part)}" ContentType="${escapeAttribute(type)}"/>`);
  pkg.write(PART, splice.apply());
}

export function removeContentType(pkg: Package, part: string): void {
  const splice = new Splice(pkg.read(PART));
  for (const override of childrenOf(read(pkg), 'Override'))
    if (sameName(override.attributes.get('PartName'), part)) splice.remove(override);
  if (!splice.isEmpty) pkg.write(PART, splice.apply());
}

/** No extension stands for this type any more. */
export function removeDefaultType(pkg: Package, type: string): void {
  const splice = new Splice(pkg.read(PART));
  for (const one of childrenOf(read(pkg), 'Default'))
    if (one.attributes.get('ContentType') === type) splice.remove(one);
  if (!splice.isEmpty) pkg.write(PART, splice.apply());
}

/** Content type of all parts with this extension that have none of their own. */
export function setDefaultType(pkg: Package, extension: string, type: string): void {
  const root = read(pkg);
  if (childrenOf(root, 'Default').some((d) => d.attributes.get('Extension')?.toLowerCase() === extension)) return;
  const splice = new Splice(pkg.read(PART));
  const xml = `<${tagName(root, 'Default')} Extension="${extension}" ContentType="${escapeAttribute(type)}"/>`;
  const first = root.children[0];
  if (first) splice.insert(first.start, xml);
  else splice.append(root, xml);
  pkg.write(PART, splice.apply());
}

/** A name like `xl/comments3.xml` that no part has, nor a part that is missing from a damaged file. */
export function freePartName(pkg: Package, stem: string, extension: string): string {
  const overrides = childrenOf(read(pkg), 'Override').map((o) => o.attributes.get('PartName'));
  for (let n = 1; ; n++) {
    const name = `${stem}${n}.${extension}`;
    if (!pkg.has(name) && !overrides.some((override) => sameName(override, name))) return name;
  }
}
