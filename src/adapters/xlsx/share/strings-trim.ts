import type { Package } from '../package';
import { Splice } from '../splice';
import { walkSheet } from '../sheet-walk';
import type { WorkbookPart } from '../workbook-part';
import { END, OPEN, XmlScanner } from '../xml-scan';

/** Blanks the shared texts that no cell uses any more, so that nothing left out stays in the file. Numbers of the others stay right. */
export const trimStrings = (pkg: Package, { sharedStrings, sheets }: WorkbookPart): void => {
  if (sharedStrings === undefined || !pkg.has(sharedStrings)) return;
  const used = new Set<number>();
  for (const { part } of sheets)
    walkSheet(pkg.read(part), part, {
      cell(cell) {
        if (cell.type === 's') used.add(cell.number);
      },
    });
  const bytes = pkg.read(sharedStrings);
  const splice = new Splice(bytes);
  const scanner = new XmlScanner(bytes, sharedStrings);
  let n = 0;
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token !== OPEN || scanner.level !== 1) continue;
    const isItem = scanner.is('si');
    const { start } = scanner;
    const prefix = scanner.prefix() === '' ? '' : `${scanner.prefix()}:`;
    const end = scanner.skip();
    if (!isItem) continue;
    if (!used.has(n++)) splice.replace(start, end, `<${prefix}si><${prefix}t/></${prefix}si>`);
  }
  if (!splice.isEmpty) pkg.write(sharedStrings, splice.apply());
};
