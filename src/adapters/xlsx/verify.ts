import { cellAddress } from '../../workbook/address';
import { contentType } from './content-types';
import type { Package } from './package';
import { refuse } from './refuse';
import { relationsOf, relationsPart } from './relations';
import { sectionOf, SECTION_ORDER } from './sheet-sections';
import { walkSheet } from './sheet-walk';
import { Styles } from './styles';
import { readWorkbookPart } from './workbook-part';
import { END, XmlScanner } from './xml-scan';
import { readZip, sameBytes } from './zip-read';
import { descendants, parseTree, prefixed } from './xml-tree';

const wrong = (what: string): never =>
  refuse('host', `The result did not pass its own check, so nothing was changed: ${what}.`);

/** Checks every part that differs from the file that was opened, before anybody sees the change. */
export function verifyEdits(pkg: Package, workbook: string): void {
  const edited = pkg.edited();
  for (const part of edited) {
    // Worksheets are walked from end to end below.
    if (!/\.(xml|rels)$/i.test(part) || contentType(pkg, part)?.endsWith('worksheet+xml')) continue;
    const scanner = new XmlScanner(pkg.read(part), part);
    while (scanner.next() !== END);
  }
  const book = readWorkbookPart(pkg, workbook);
  const styles = book.styles === undefined ? undefined : new Styles(pkg, book.styles);
  const parts = new Map(edited.map((name) => [name.toLowerCase(), name]));
  for (const source of [workbook, ...book.sheets.map((sheet) => sheet.part)]) {
    if (!parts.has(relationsPart(source).toLowerCase())) continue;
    const gone = relationsOf(pkg, source).find((r) => !r.external && !pkg.has(r.target) && pkg.hadPart(r.target));
    if (gone) wrong(`${source} refers to ${gone.target}, which is gone`);
  }
  for (const { part, name } of book.sheets) {
    if (!parts.has(part.toLowerCase())) continue;
    const fault = sheetFault(pkg, part, pkg.read(part), styles);
    if (fault === undefined) continue;
    const before = pkg.readOriginal(part);
    if (before === undefined || sheetFault(pkg, part, before, styles) === undefined) wrong(`sheet ${name}: ${fault}`);
  }
}

/** The first thing in a worksheet part that would make a program complain. */
function sheetFault(pkg: Package, part: string, bytes: Uint8Array, styles: Styles | undefined): string | undefined {
  let fault: string | undefined;
  const note = (what: string): void => void (fault ??= what);
  const relations = new Set(relationsOf(pkg, part).map((relation) => relation.id));
  const cellStyles = styles?.count ?? 1;
  const looks = styles?.differentialCount ?? 0;
  const masters = new Set<string>();
  let row = -1;
  let column = -1;
  let rank = -1;
  const inOrder = (local: string): void => {
    const own = SECTION_ORDER.indexOf(local);
    if (own >= 0 && own < rank) note(`${local} is out of place`);
    rank = Math.max(rank, own);
  };
  walkSheet(bytes, part, {
    data: () => inOrder('sheetData'),
    row(record) {
      if (record.row <= row) note(`row ${record.row + 1} is out of order`);
      row = record.row;
      column = -1;
    },
    cell(cell) {
      if (cell.column <= column) note(`cell ${cellAddress(cell.row, cell.column)} is out of order`);
      column = cell.column;
      if (cell.style > 0 && cell.style >= cellStyles) note(`cell ${cellAddress(cell.row, cell.column)} has no format`);
      if (cell.formula?.type !== 'shared') return;
      if (cell.formula.text !== '') masters.add(cell.formula.shared ?? '');
      else if (!masters.has(cell.formula.shared ?? ''))
        note(`cell ${cellAddress(cell.row, cell.column)} lost its formula`);
    },
    section(local, start, end) {
      inOrder(sectionOf(bytes, part, local, start, end).local);
      if (!/^(conditionalFormatting|legacyDrawing|drawing|tableParts)$/.test(local)) return;
      const element = parseTree(bytes, part, start, end);
      for (const e of [element, ...descendants(element)]) {
        const id = prefixed(e, 'id');
        if (id !== undefined && /rawing$|tablePart$/.test(e.local) && !relations.has(id))
          note(`${e.local} leads nowhere`);
        if (e.local === 'cfRule' && Number(e.attributes.get('dxfId') ?? -1) >= looks) note('a rule has no look');
      }
    },
  });
  return fault;
}

/** Reads the written file back: every part is there, and what was not edited is the same byte for byte. */
export function verifyFile(pkg: Package, bytes: Uint8Array): void {
  const entries = readZip(bytes, { ...pkg.limits, fileBytes: Infinity });
  if (entries.length !== pkg.names().length) wrong('a part is missing');
  const untouched = pkg.untouched();
  for (const entry of entries) {
    const before = untouched.get(entry.name.toLowerCase());
    if (before && (before.crc !== entry.crc || !sameBytes(before.packed, entry.packed)))
      wrong(`${entry.name} is not the same as before`);
    if (!before) pkg.unpack(entry);
  }
}
