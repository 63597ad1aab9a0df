import { cellAddress } from '../../workbook/address';
import { isOwnNote, NOTE_AUTHOR, signedNote } from '../../workbook/own-note';
import type { RangeAddress } from '../../workbook/port';
import { holds, parseCell } from './cell-reference';
import { textXml } from './cell-xml';
import { freePartName, setContentType } from './content-types';
import { NoteBoxes } from './note-boxes';
import type { Package } from './package';
import { addRelation, relationsOf } from './relations';
import { refuse } from './refuse';
import { Splice } from './splice';
import { escapeXml, readCellText, utf8 } from './xml-text';
import { child, childrenOf, parseTree, tagName, textOf, type XmlElement } from './xml-tree';

/** The note that newer Excel keeps behind a conversation has an author of this form. */
const CONVERSATION = /^tc=\{/;
const CONTENT_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml';
const SPACES = {
  transitional: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
  strict: 'http://purl.oclc.org/ooxml/spreadsheetml/main',
};

export interface NoteEdits {
  /** By cell address; null removes a note of ours. */
  readonly texts: ReadonlyMap<string, string | null>;
  /** Cells whose new note is not ours. */
  readonly theirs: ReadonlySet<string>;
  /** Blocks in which our notes go away. */
  readonly cleared: readonly RangeAddress[];
}

interface SheetPlace {
  readonly sheet: string;
  readonly part: string;
  readonly relationSpace: string;
}

/** Sets and removes notes. Returns the relation id of the drawing with the note boxes when one had to be made. */
export function setNotes(
  pkg: Package,
  place: SheetPlace,
  edits: NoteEdits,
  drawing: string | undefined,
): string | undefined {
  const relations = relationsOf(pkg, place.part);
  const existing = relations.find((relation) => relation.kind === 'comments' && pkg.has(relation.target))?.target;
  const wanted = [...edits.texts].filter((entry): entry is [string, string] => entry[1] !== null);
  if (existing === undefined && wanted.length === 0) return undefined;
  const part = existing ?? addComments(pkg, place);
  const comments = new Comments(pkg, part);
  const added: string[] = [];
  const removed: string[] = [];
  for (const [cell, comment] of comments.byCell) {
    const at = parseCell(cell);
    const inCleared = at !== undefined && edits.cleared.some((range) => holds(range, at.row, at.column));
    const asked = edits.texts.get(cell);
    if (comments.isOwn(comment) && (asked === null || (inCleared && asked === undefined))) removed.push(cell);
  }
  for (const [cell, text] of wanted) {
    const comment = comments.byCell.get(cell);
    if (!comment) added.push(cell);
    else if (!comments.isOwn(comment))
      refuse(
        'occupied',
        `Cell ${cell} of sheet ${place.sheet} has ${comments.describe(comment)}; ours would replace it.`,
      );
    comments.set(cell, text, edits.theirs.has(cell) ? '' : NOTE_AUTHOR);
  }
  removed.forEach((cell) => comments.remove(cell));
  comments.write();
  const boxes = relations.find((relation) => relation.id === drawing && pkg.has(relation.target))?.target;
  if (drawing !== undefined && boxes === undefined)
    refuse('unsupported', `Sheet ${place.sheet} is damaged: the drawing of its notes is missing.`);
  if (added.length === 0 && (boxes === undefined || removed.length === 0)) return undefined;
  const target = boxes ?? NoteBoxes.create(pkg);
  const noteBoxes = new NoteBoxes(pkg, target);
  removed.forEach((cell) => noteBoxes.remove(cell));
  noteBoxes.add(added.map((cell) => ({ cell, text: edits.texts.get(cell) ?? '' })));
  noteBoxes.write();
  return boxes === undefined ? addRelation(pkg, place.part, `${place.relationSpace}/vmlDrawing`, target) : undefined;
}

function addComments(pkg: Package, { part, relationSpace }: SheetPlace): string {
  const name = freePartName(pkg, 'xl/comments', 'xml');
  const space = relationSpace.startsWith('http://purl') ? SPACES.strict : SPACES.transitional;
  const body = `<comments xmlns="${space}"><authors/><commentList/></comments>`;
  pkg.write(name, utf8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${body}`));
  setContentType(pkg, name, CONTENT_TYPE);
  addRelation(pkg, part, `${relationSpace}/comments`, name);
  return name;
}

/** One comments part. */
class Comments {
  readonly byCell = new Map<string, XmlElement>();
  private readonly bytes: Uint8Array;
  private readonly root: XmlElement;
  private readonly authors: readonly string[];
  private readonly splice: Splice;
  private readonly newAuthors: string[] = [];

  constructor(
    private readonly pkg: Package,
    private readonly part: string,
  ) {
    this.bytes = pkg.read(part);
    this.root = parseTree(this.bytes, part);
    this.splice = new Splice(this.bytes);
    this.authors = childrenOf(child(this.root, 'authors'), 'author').map((author) => textOf(this.bytes, author));
    for (const comment of childrenOf(child(this.root, 'commentList'), 'comment')) {
      const at = parseCell(comment.attributes.get('ref') ?? '');
      if (at) this.byCell.set(cellAddress(at.row, at.column), comment);
    }
  }

  isOwn(comment: XmlElement): boolean {
    return isOwnNote({ author: this.authorOf(comment), text: this.textOf(comment) });
  }

  describe(comment: XmlElement): string {
    return CONVERSATION.test(this.authorOf(comment)) ? 'a conversation of comments' : "somebody's note";
  }

  set(cell: string, text: string, author: string): void {
    const t = (local: string): string => tagName(this.root, local);
    const comment = this.byCell.get(cell);
    // A note that was set while a program ran us has its user's name for an author.
    const said = comment && this.authorOf(comment) !== NOTE_AUTHOR ? signedNote(text) : text;
    const body = `<${t('text')}>${textXml(said, this.root.prefix === '' ? '' : `${this.root.prefix}:`)}</${t('text')}>`;
    if (!comment) {
      const list = child(this.root, 'commentList') ?? refuse('unsupported', `${this.part} has no list of notes.`);
      const xml = `<${t('comment')} ref="${cell}" authorId="${this.authorId(author)}">${body}</${t('comment')}>`;
      return this.splice.append(list, xml);
    }
    const old = child(comment, 'text');
    if (this.textOf(comment) === said) return;
    if (old) this.splice.replace(old.start, old.end, body);
    else this.splice.append(comment, body);
  }

  remove(cell: string): void {
    this.splice.remove(this.byCell.get(cell)!);
  }

  write(): void {
    if (!this.splice.isEmpty) this.pkg.write(this.part, this.splice.apply());
  }

  private textOf(comment: XmlElement): string {
    return readCellText(textOf(this.bytes, child(comment, 'text')));
  }

  private authorOf(comment: XmlElement): string {
    return this.authors[Number(comment.attributes.get('authorId') ?? 0)] ?? '';
  }

  private authorId(author: string): number {
    const known = [...this.authors, ...this.newAuthors].indexOf(author);
    if (known >= 0) return known;
    const tag = tagName(this.root, 'author');
    const list = child(this.root, 'authors') ?? refuse('unsupported', `${this.part} has no list of authors.`);
    this.splice.append(list, `<${tag}>${escapeXml(author)}</${tag}>`);
    return this.authors.length + this.newAuthors.push(author) - 1;
  }
}
