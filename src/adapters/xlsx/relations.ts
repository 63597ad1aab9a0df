import type { Package } from './package';
import { Splice } from './splice';
import { escapeAttribute, utf8 } from './xml-text';
import { childrenOf, parseTree, tagName, type XmlElement } from './xml-tree';

const RELATIONS_SPACE = 'http://schemas.openxmlformats.org/package/2006/relationships';
export const TRANSITIONAL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const STRICT = 'http://purl.oclc.org/ooxml/officeDocument/relationships';

export interface Relation {
  readonly id: string;
  readonly type: string;
  /** Last word of the type, which both namespaces of the format share: 'worksheet', 'comments' … */
  readonly kind: string;
  /** Part name as the package knows it when the target is one of its parts. */
  readonly target: string;
  readonly external: boolean;
  readonly element: XmlElement;
}

export const folderOf = (part: string): string => part.slice(0, part.lastIndexOf('/') + 1);

export function relationsPart(part: string): string {
  const folder = folderOf(part);
  return `${folder}_rels/${part.slice(folder.length)}.rels`;
}

export function relationsOf(pkg: Package, part: string): Relation[] {
  const name = relationsPart(part);
  if (!pkg.has(name)) return [];
  return childrenOf(parseTree(pkg.read(name), name), 'Relationship').map((element) => {
    const type = element.attributes.get('Type') ?? '';
    const target = element.attributes.get('Target') ?? '';
    const external = element.attributes.get('TargetMode') === 'External';
    return {
      id: element.attributes.get('Id') ?? '',
      type,
      kind: type.slice(type.lastIndexOf('/') + 1),
      target: external ? target : resolveTarget(pkg, folderOf(part), target),
      external,
      element,
    };
  });
}

export const relationOf = (pkg: Package, part: string, kind: string): Relation | undefined =>
  relationsOf(pkg, part).find((relation) => relation.kind === kind && !relation.external);

/** Targets are absolute or relative, sometimes with backslashes or percent signs. */
function resolveTarget(pkg: Package, folder: string, target: string): string {
  const path = target.replaceAll('\\', '/').replace(/[#?].*$/s, '');
  const steps: string[] = [];
  for (const step of (path.startsWith('/') ? path : folder + path).split('/'))
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  const name = steps.join('/');
  if (pkg.has(name) || !name.includes('%')) return name;
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}

/** Adds a relation from one part to another and returns its id. */
export function addRelation(pkg: Package, part: string, type: string, target: string): string {
  const name = relationsPart(part);
  const taken = new Set(relationsOf(pkg, part).map((relation) => relation.id));
  let n = taken.size + 1;
  while (taken.has(`rId${n}`)) n++;
  const entry = (tag: string): string =>
    `<${tag} Id="rId${n}" Type="${escapeAttribute(type)}" Target="/${escapeAttribute(target)}"/>`;
  if (!pkg.has(name)) {
    const body = `<Relationships xmlns="${RELATIONS_SPACE}">${entry('Relationship')}</Relationships>`;
    pkg.write(name, utf8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${body}`));
  } else {
    const bytes = pkg.read(name);
    const root = parseTree(bytes, name);
    const splice = new Splice(bytes);
    splice.append(root, entry(tagName(root, 'Relationship')));
    pkg.write(name, splice.apply());
  }
  return `rId${n}`;
}

export function removeRelation(pkg: Package, part: string, id: string): void {
  const name = relationsPart(part);
  const splice = new Splice(pkg.read(name));
  for (const relation of relationsOf(pkg, part)) if (relation.id === id) splice.remove(relation.element);
  pkg.write(name, splice.apply());
}
