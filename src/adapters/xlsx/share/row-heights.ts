import { wrap } from '../../../core/wrap';
import type { Package } from '../package';
import { END, OPEN, XmlScanner } from '../xml-scan';
import { Splice } from '../splice';
import { LETTERS_PER_DIGIT, POINTS_PER_LINE } from '../fit-rows';
import { fromUtf8 } from '../xml-text';

/** A text of ours in a row, and how many characters stand beside each other there. */
export interface RowText {
  readonly text: string;
  readonly characters: number;
}

/** Makes rows as high as our texts in them need; a row is never made lower, and a hidden one stays as it is. */
export const raiseRows = (pkg: Package, part: string, texts: ReadonlyMap<number, RowText>): void => {
  const bytes = pkg.read(part);
  const scanner = new XmlScanner(bytes, part);
  const splice = new Splice(bytes);
  let row = -1;
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token !== OPEN || scanner.level !== 2 || !scanner.is('row')) continue;
    const tag = fromUtf8(bytes.subarray(scanner.start, scanner.end));
    row = Number(/\sr=["'](\d+)/.exec(tag)?.[1] ?? row + 2) - 1;
    const given = texts.get(row);
    if (!given || /\shidden=["'](?:1|true)/.test(tag)) continue;
    const lines = wrap(given.text, given.characters * LETTERS_PER_DIGIT).length;
    const height = Number(/\sht=["']([\d.]+)/.exec(tag)?.[1] ?? 0);
    const needed = lines * POINTS_PER_LINE + 2;
    if (lines < 2 || height >= needed) continue;
    const after = tag
      .replace(/\s(?:ht|customHeight)=(?:"[^"]*"|'[^']*')/g, '')
      .replace(/\s*(\/?)>$/, ` ht="${needed}" customHeight="1"$1>`);
    splice.replace(scanner.start, scanner.end, after);
  }
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};
