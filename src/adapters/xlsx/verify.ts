import { contentType } from './content-types';
import type { Package } from './package';
import { refuse } from './refuse';
import { relationsOf, relationsPart } from './relations';
import { SheetCheck, type AroundSheet } from './sheet-check';
import { Styles } from './styles';
import { readWorkbookPart } from './workbook-part';
import { END, XmlScanner } from './xml-scan';
import { readZip, sameBytes } from './zip-read';

const wrong = (what: string): never =>
  refuse('host', `The result did not pass its own check, so nothing was changed: ${what}.`);

/** Checks every part that differs from the file that was opened, before anybody sees the change; some sheets were `checked` as they were written. */
export function verifyEdits(pkg: Package, workbook: string, checked: ReadonlyMap<string, SheetCheck>): void {
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
    const around: AroundSheet = {
      relations: new Set(relationsOf(pkg, part).map((relation) => relation.id)),
      cellStyles: styles?.count ?? 1,
      looks: styles?.differentialCount ?? 0,
    };
    const check = checked.get(part) ?? new SheetCheck(part).whole(pkg.read(part));
    const fault = check.faultIn(around);
    if (fault === undefined) continue;
    const before = pkg.readOriginal(part);
    if (before === undefined || new SheetCheck(part).whole(before).faultIn(around) === undefined)
      wrong(`sheet ${name}: ${fault}`);
  }
}

/** Reads the written file back: every part is there, byte for byte as it was or as it was packed and proved. */
export function verifyFile(pkg: Package, bytes: Uint8Array): void {
  const entries = readZip(bytes, { ...pkg.limits, fileBytes: Infinity });
  const packed = new Map(pkg.packed().map((entry) => [entry.name.toLowerCase(), entry]));
  if (entries.length !== packed.size) wrong('a part is missing');
  for (const entry of entries) {
    const before = packed.get(entry.name.toLowerCase());
    const isSame = before?.crc === entry.crc && before.size === entry.size && before.method === entry.method;
    if (!before || !isSame || !sameBytes(before.packed, entry.packed)) wrong(`${entry.name} is not the same as before`);
  }
}
