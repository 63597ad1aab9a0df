import { unzipSync, zipSync } from 'fflate';
import { nodeCodec } from '../../../src/adapters/xlsx/codec-node';
import { openWorkbook, type WorkbookFile } from '../../../src/adapters/xlsx/workbook-file';

// Small packages written out by hand, zipped and unzipped by fflate: nothing here comes from the code under test.

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const STRICT_MAIN = 'http://purl.oclc.org/ooxml/spreadsheetml/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const STRICT_OFFICE = 'http://purl.oclc.org/ooxml/officeDocument/relationships';
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

export type Parts = Record<string, string | Uint8Array>;

export interface TinySheet {
  readonly name: string;
  /** What stands inside <sheetData>. */
  readonly rows?: string;
  /** Elements before and behind the cell data. */
  readonly before?: string;
  readonly behind?: string;
  /** The whole part, instead of all that. */
  readonly xml?: string;
  /** Relations of the sheet: id, kind, target. */
  readonly relations?: readonly (readonly [string, string, string])[];
}

export interface TinyWorkbook {
  readonly sheets: readonly TinySheet[];
  readonly styles?: string;
  readonly sharedStrings?: string;
  /** Elements of workbook.xml before and behind its list of sheets. */
  readonly workbookBefore?: string;
  readonly workbookBehind?: string;
  readonly main?: string;
  readonly office?: string;
  readonly macros?: boolean;
  /** More parts, with their content types where the extension does not tell. */
  readonly parts?: Parts;
  readonly types?: Readonly<Record<string, string>>;
  readonly workbookRelations?: readonly (readonly [string, string, string])[];
}

const relations = (list: readonly (readonly [string, string, string])[], office: string): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list
    .map(([id, kind, target]) => `<Relationship Id="${id}" Type="${office}/${kind}" Target="${target}"/>`)
    .join('')}</Relationships>`;

export const sheetXml = (sheet: TinySheet, main = MAIN, office = OFFICE): string =>
  sheet.xml ??
  `<worksheet xmlns="${main}" xmlns:r="${office}">${sheet.before ?? ''}<sheetData>${sheet.rows ?? ''}</sheetData>${sheet.behind ?? ''}</worksheet>`;

export const tinyParts = (book: TinyWorkbook): Parts => {
  const { main = MAIN, office = OFFICE } = book;
  const parts: Parts = {};
  const types: Record<string, string> = { ...book.types };
  const links: [string, string, string][] = [];
  book.sheets.forEach((sheet, n) => {
    const name = `xl/worksheets/sheet${n + 1}.xml`;
    parts[name] = sheetXml(sheet, main, office);
    types[name] = `${TYPES}.worksheet+xml`;
    links.push([`rId${n + 1}`, 'worksheet', `worksheets/sheet${n + 1}.xml`]);
    if (sheet.relations) parts[`xl/worksheets/_rels/sheet${n + 1}.xml.rels`] = relations(sheet.relations, office);
  });
  const add = (name: string, kind: string, type: string, xml: string | undefined): void => {
    if (xml === undefined) return;
    parts[`xl/${name}`] = xml;
    types[`xl/${name}`] = type;
    links.push([`rId${kind}`, kind, name]);
  };
  add('styles.xml', 'styles', `${TYPES}.styles+xml`, book.styles);
  add('sharedStrings.xml', 'sharedStrings', `${TYPES}.sharedStrings+xml`, book.sharedStrings);
  const sheets = book.sheets.map((s, n) => `<sheet name="${s.name}" sheetId="${n + 1}" r:id="rId${n + 1}"/>`).join('');
  parts['xl/workbook.xml'] =
    `<workbook xmlns="${main}" xmlns:r="${office}">${book.workbookBefore ?? ''}<sheets>${sheets}</sheets>${book.workbookBehind ?? ''}</workbook>`;
  types['xl/workbook.xml'] = book.macros
    ? 'application/vnd.ms-excel.sheet.macroEnabled.main+xml'
    : `${TYPES}.sheet.main+xml`;
  parts['xl/_rels/workbook.xml.rels'] = relations([...links, ...(book.workbookRelations ?? [])], office);
  parts['_rels/.rels'] = relations([['rId1', 'officeDocument', 'xl/workbook.xml']], office);
  Object.assign(parts, book.parts);
  const overrides = Object.entries(types).map(
    ([name, type]) => `<Override PartName="/${name}" ContentType="${type}"/>`,
  );
  const defaults = ['rels', 'xml'].map(
    (extension) =>
      `<Default Extension="${extension}" ContentType="application/${extension === 'xml' ? 'xml' : 'vnd.openxmlformats-package.relationships+xml'}"/>`,
  );
  return {
    '[Content_Types].xml': `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${defaults.join('')}${overrides.join('')}</Types>`,
    ...parts,
  };
};

export const zipParts = (parts: Parts): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, content]) => [
        name,
        // A plain copy: a Buffer of another realm is no Uint8Array to fflate.
        typeof content === 'string' ? Uint8Array.from(Buffer.from(content)) : Uint8Array.from(content),
      ]),
    ),
  );

export const unzipParts = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(
    Object.entries(unzipSync(Uint8Array.from(bytes))).map(([name, content]) => [name, Buffer.from(content).toString()]),
  );

export const FUNCTION_NAMES = ['MASS.RATIO', 'MASS.SHIFT', 'VERDICT.WORST', 'FREQUENCY.SPAN'];
export const openBytes = (bytes: Uint8Array): WorkbookFile =>
  openWorkbook(bytes, { codec: nodeCodec, functionNames: FUNCTION_NAMES });
export const openTiny = (book: TinyWorkbook): WorkbookFile => openBytes(zipParts(tinyParts(book)));
/** Every part of the file as it would be saved now, as text. */
export const saved = (book: WorkbookFile): Record<string, string> => unzipParts(book.save());
export const SHEET1 = 'xl/worksheets/sheet1.xml';
