import { nodeCodec } from '../../src/adapters/xlsx/codec-node';
import { FILE_LIMITS } from '../../src/adapters/xlsx/limits';
import { Package } from '../../src/adapters/xlsx/package';
import { fromUtf8, utf8 } from '../../src/adapters/xlsx/xml-text';
import { demoPlan } from '../../src/generate/demo-plan';
import { columnLetters } from '../../src/workbook/address';

const SHEET = 'xl/worksheets/sheet1.xml';
const STRINGS = 'xl/sharedStrings.xml';
export const COLUMNS = 40;
/** Rows of the demo plan that repeat, with names, panels and numbers of their own. */
const PATTERN_ROWS = 200;
const LEVELS = new Set(['I', 'J', 'P']);

/** The demo plan with many more rows, and further columns of the user's up to forty, as spreadsheet programs write it. */
export const longList = async (root: string, rows: number): Promise<Uint8Array> => {
  const pkg = new Package(await demoPlan(root, PATTERN_ROWS), nodeCodec, FILE_LIMITS);
  const sheet = fromUtf8(pkg.read(SHEET));
  const strings = fromUtf8(pkg.read(STRINGS));
  const pattern = [...sheet.matchAll(/<row r="(\d+)"[^>]*>.*?<\/row>/g)];
  const heading = pattern.findIndex(([, row]) => row === '5');
  const first = pattern[heading + 1]!;
  const items = pattern
    .slice(heading + 1)
    .map(([xml]) => [...xml.matchAll(/<c r="([A-Z]+)\d+"(.*?)(?:\/>|>(.*?)<\/c>)/g)]);
  const known = [...strings.matchAll(/<si>/g)].length;
  const added: string[] = [];
  const shared = (text: string): string => {
    added.push(`<si><t>${text}</t></si>`);
    return `<v>${known + added.length - 1}</v>`;
  };
  const firstFree = 24;
  const free = Array.from({ length: COLUMNS - firstFree }, (_, i) => columnLetters(firstFree + i));
  const headings = free.map((letters, i) => `<c r="${letters}5" t="s" s="3">${shared(`Own ${i + 1}`)}</c>`);
  const words = ['flap', 'spar', 'rib', 'boom'].map((word) => shared(word));
  const body: string[] = [];
  let panel = '';
  for (let n = 0; n < rows; n++) {
    const r = 6 + n;
    if (n % 4 === 0) panel = shared(`P-${n / 4 + 1}`);
    const cells = items[n % items.length]!.map(([, letters, attributes, inside]) => {
      const style = /s="\d+"/.exec(attributes!)?.[0] ?? '';
      if (letters === 'A') return `<c r="A${r}" t="s" ${style}>${shared(`CH-${n + 1}`)}</c>`;
      if (letters === 'F') return `<c r="F${r}" t="s" ${style}>${panel}</c>`;
      if (inside === undefined) return `<c r="${letters}${r}" ${style}/>`;
      const number = LEVELS.has(letters!) && !attributes!.includes('t=') ? Number(inside.slice(3, -4)) : NaN;
      const value = Number.isNaN(number) ? inside : `<v>${number * (1 + (n % 97) / 970)}</v>`;
      return `<c r="${letters}${r}"${attributes}>${value}</c>`;
    });
    const own = free.map((letters, i) =>
      i % 4 === 0
        ? `<c r="${letters}${r}" t="s" s="5">${words[(n + i) % words.length]!}</c>`
        : `<c r="${letters}${r}" s="6"><v>${((n * 31 + i * 17) % 10_007) / 100}</v></c>`,
    );
    body.push(`<row r="${r}">${cells.join('')}${own.join('')}</row>`);
  }
  const end = sheet.indexOf('</sheetData>');
  const before = sheet.slice(0, first.index).replace(/<\/row>$/, `${headings.join('')}</row>`);
  pkg.write(SHEET, utf8(before.replace(/<dimension[^>]*>/, '') + body.join('') + sheet.slice(end)));
  const all = strings.replace(/ (?:count|uniqueCount)="\d+"/g, '').replace('</sst>', `${added.join('')}</sst>`);
  pkg.write(STRINGS, utf8(all));
  return pkg.save();
};
