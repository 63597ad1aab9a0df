import { isOwnNote, type CellNote } from '../../workbook/own-note';
import { parseCell } from './cell-reference';
import type { Package } from './package';
import { relationsOf } from './relations';
import { child, childrenOf, parseTree, textOf } from './xml-tree';
import { readCellText } from './xml-text';

/** What newer Excel writes for older programs before the text of a conversation. */
const FOR_OLDER = /^\[[^\]]*\][^]*?(?:\n\s*\n|\n)[^\n:]*:\n?\s*/;

/** Notes of people on the cells of a sheet; ours are left aside. */
export const notesOn = (pkg: Package, part: string): readonly CellNote[] =>
  relationsOf(pkg, part).flatMap(({ kind, target, external }) => {
    if (kind !== 'comments' || external || !pkg.has(target)) return [];
    const bytes = pkg.read(target);
    const root = parseTree(bytes, target);
    const authors = childrenOf(child(root, 'authors'), 'author').map((author) => textOf(bytes, author));
    return childrenOf(child(root, 'commentList'), 'comment').flatMap((comment): CellNote[] => {
      const at = parseCell(comment.attributes.get('ref') ?? '');
      const author = authors[Number(comment.attributes.get('authorId') ?? 0)] ?? '';
      const text = readCellText(textOf(bytes, child(comment, 'text')));
      if (!at || isOwnNote({ author, text })) return [];
      const said = author.startsWith('tc=') ? text.replace(FOR_OLDER, '') : text;
      return said.trim() === '' ? [] : [{ row: at.row, column: at.column, text: said.trim() }];
    });
  });
