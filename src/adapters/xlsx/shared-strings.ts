import type { Package } from './package';
import { richText } from './sheet-walk';
import { END, OPEN, XmlScanner } from './xml-scan';
import { readCellText } from './xml-text';

/** The plain text of every entry of the shared string part. */
export function readSharedStrings(pkg: Package, part: string | undefined): readonly string[] {
  if (part === undefined || !pkg.has(part)) return [];
  const strings: string[] = [];
  const scanner = new XmlScanner(pkg.read(part), part);
  for (let token = scanner.next(); token !== END; token = scanner.next())
    if (token === OPEN && scanner.level === 1) {
      if (scanner.is('si')) strings.push(readCellText(richText(scanner)));
      else scanner.skip();
    }
  return strings;
}
