import { cellAddress } from '../../../workbook/address';
import type { Package } from '../package';
import { readSharedStrings } from '../shared-strings';
import { walkSheet } from '../sheet-walk';
import type { WorkbookPart } from '../workbook-part';
import { readCellText, fromUtf8, resolveEntities } from '../xml-text';
import type { LeftOut } from './left-out';

/** Texts shorter than this say nothing by themselves and are met everywhere. */
const SHORTEST = 4;
/** Digits of a number that is not met by chance. */
const TELLING_DIGITS = 3;
const MOST = 20_000;
/** In a sheet these are numbers of texts and addresses of cells. */
const PLACE = /^(?:[A-Z]{1,3}\d{1,7}(?::[A-Z]{1,3}\d{1,7})?|[-+.\dEe]+)$/;

/** What stands in cells that are left out and in no cell that stays: it must not be found in the copy. */
export interface LeftOutContent {
  readonly texts: ReadonlySet<string>;
  readonly numbers: ReadonlySet<string>;
  /** Cells that stay and hold such a text as well. */
  readonly also: readonly string[];
}

const digitsOf = (number: string): number => number.replace(/e.*$/i, '').replace(/^[-0.]+|\D/g, '').replace(/0+$/, '').length; // prettier-ignore

/** A short single word is met by chance; a longer text or a number of a device is not. */
const isTelling = (text: string): boolean => text.length >= 12 || (text.length >= 6 && /[\d\s]/.test(text));

export const leftOutContent = (
  pkg: Package,
  book: WorkbookPart,
  leftOut: LeftOut,
  ownWords: ReadonlySet<string>,
): LeftOutContent => {
  const strings = readSharedStrings(pkg, book.sharedStrings);
  const gone = { texts: new Set<string>(), numbers: new Set<string>() };
  // Names of sheets that stay are no leak.
  const kept = new Map(book.allSheetNames.filter((name) => !leftOut.hasSheet(name)).map((name) => [name, name]));
  for (const { name, part } of book.sheets)
    walkSheet(pkg.read(part), part, {
      cell(cell) {
        if (cell.value === undefined || cell.type === 'b' || cell.type === 'e') return;
        const isNumber = cell.type === 'n';
        const text = (cell.type === 's' ? (strings[cell.number] ?? '') : isNumber ? cell.value : readCellText(cell.value)).trim(); // prettier-ignore
        if (!leftOut.hasSheet(name) && !leftOut.hasColumn(name, cell.column))
          kept.set(text, `${name}!${cellAddress(cell.row, cell.column)}`);
        else if (isNumber && digitsOf(text) >= TELLING_DIGITS) gone.numbers.add(text);
        else if (!isNumber && text.length >= SHORTEST) gone.texts.add(text);
      },
    });
  const rest = (found: ReadonlySet<string>): ReadonlySet<string> =>
    new Set([...found].filter((text) => !kept.has(text) && !ownWords.has(text)).slice(0, MOST));
  const also = [...gone.texts].flatMap((text) => (isTelling(text) && kept.get(text)) || []);
  return { texts: rest(gone.texts), numbers: rest(gone.numbers), also };
};

/** Parts that keep copies of cells; elsewhere a number is a place or a size. */
const DATA =
  /\/(?:pivotCache|externalLinks|queryTables|customXml|richData|model)\/|metadata\d*\.xml$|connections\.xml$/i;

/** Full of words of the file format, such as "none". */
const LOOKS = /\/(?:styles|theme\/theme\d*)\.xml$|\.vml$/i;

export interface Remaining {
  readonly text: string;
  readonly part: string;
}

/**
 * Which of it still stands somewhere in the package: as a whole text, attribute or number, and telling texts within
 * longer ones too. Cells that stay keep what they hold, so within sheets and their shared texts only whole texts count.
 */
export const stillThere = (pkg: Package, { texts, numbers }: LeftOutContent): readonly Remaining[] => {
  if (texts.size + numbers.size === 0) return [];
  const found: Remaining[] = [];
  const telling = [...texts].filter(isTelling);
  for (const part of pkg.names()) {
    if (!/\.(?:xml|rels|vml)$/i.test(part) || /^docProps\//i.test(part)) continue;
    const isSheet = /\/worksheets\/[^/]*$/i.test(part);
    const isChart = /\/charts\//i.test(part);
    const isData = DATA.test(part);
    const holdsCells = isSheet || /\/sharedStrings[^/]*$/i.test(part);
    const raw = fromUtf8(pkg.read(part));
    for (const [, inText, inAttribute] of raw.matchAll(/>([^<>]+)<|="([^"]*)"/g)) {
      const text = readCellText(resolveEntities(inText ?? inAttribute ?? '')).trim();
      const isOther = (isSheet && PLACE.test(text)) || (LOOKS.test(part) && !isTelling(text));
      if ((texts.has(text) && !isOther) || ((isData || (isChart && inText !== undefined)) && numbers.has(text)))
        found.push({ text, part });
    }
    if (holdsCells || found.at(-1)?.part === part) continue;
    const content = resolveEntities(raw);
    const within = telling.find((text) => content.includes(text));
    if (within !== undefined) found.push({ text: within, part });
  }
  return found;
};
