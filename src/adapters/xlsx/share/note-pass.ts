import { parseCell } from '../cell-reference';
import { contentType } from '../content-types';
import type { Package } from '../package';
import { relationsOf } from '../relations';
import { Splice } from '../splice';
import { child, childrenOf, descendants, parseTree, textOf } from '../xml-tree';
import { escapeXml, fromUtf8, utf8 } from '../xml-text';

interface Sheet {
  readonly name: string;
  readonly part: string;
}

/** Removes notes, threads and note boxes of columns that are left out. */
export const dropNotes = (pkg: Package, { part }: Sheet, isGone: (column: number) => boolean): void => {
  for (const { kind, target, external } of relationsOf(pkg, part)) {
    if (external || !pkg.has(target)) continue;
    if (kind === 'comments' || kind === 'threadedComment') {
      const bytes = pkg.read(target);
      const root = parseTree(bytes, target);
      const list = kind === 'comments' ? child(root, 'commentList') : root;
      const splice = new Splice(bytes);
      for (const note of list?.children ?? []) {
        const at = parseCell(note.attributes.get('ref') ?? '');
        if (at && isGone(at.column)) splice.remove(note);
      }
      if (!splice.isEmpty) pkg.write(target, splice.apply());
    }
    if (kind === 'vmlDrawing') {
      const text = fromUtf8(pkg.read(target));
      const after = text.replace(/<v:shape\s[^]*?<\/v:shape>/g, (shape) => {
        const column = /ObjectType="Note"[^]*<x:Column>\s*(\d+)\s*<\/x:Column>/.exec(shape)?.[1];
        return column !== undefined && isGone(Number(column)) ? '' : shape;
      });
      if (after !== text) pkg.write(target, utf8(after));
    }
  }
};

/** Names of people who wrote notes become "Author 1"; a note often begins with the name as well. */
export const hidePeople = (
  pkg: Package,
  sheets: readonly Sheet[],
  workbook: string,
  nameOf: (n: number) => string,
): number => {
  const known = new Map<string, string>();
  const hidden = (name: string): string => {
    const made = known.get(name) ?? nameOf(known.size + 1);
    known.set(name, made);
    return made;
  };
  for (const { target, kind } of relationsOf(pkg, workbook)) {
    if (kind !== 'person' || !pkg.has(target)) continue;
    const bytes = pkg.read(target);
    const splice = new Splice(bytes);
    for (const person of childrenOf(parseTree(bytes, target), 'person')) {
      const name = hidden(person.attributes.get('displayName') ?? '');
      splice.setAttribute(person, 'displayName', name);
      splice.setAttribute(person, 'userId', name);
      splice.setAttribute(person, 'providerId', 'None');
    }
    if (!splice.isEmpty) pkg.write(target, splice.apply());
  }
  for (const { part } of sheets)
    for (const { kind, target } of relationsOf(pkg, part)) {
      if (kind !== 'comments' || !pkg.has(target)) continue;
      const bytes = pkg.read(target);
      const root = parseTree(bytes, target);
      const splice = new Splice(bytes);
      const authors = childrenOf(child(root, 'authors'), 'author').map((author) => ({
        author,
        name: textOf(bytes, author),
      }));
      for (const { author, name } of authors) {
        // Ours, and the mark of a thread, name nobody.
        if (name.trim() === '' || /^Channelwright\b/.test(name) || name.startsWith('tc=')) continue;
        const made = hidden(name);
        splice.replace(author.openEnd, author.closeStart, escapeXml(made));
        const first = escapeXml(`${name}:`);
        for (const text of [...descendants(root)].filter(({ local }) => local === 't')) {
          const said = escapeXml(textOf(bytes, text));
          if (!said.startsWith(first)) continue;
          splice.replace(text.openEnd, text.closeStart, escapeXml(`${made}:`) + said.slice(first.length));
        }
      }
      if (!splice.isEmpty) pkg.write(target, splice.apply());
    }
  return known.size;
};

export const isKind = (pkg: Package, part: string, end: RegExp): boolean => end.test(contentType(pkg, part) ?? '');
