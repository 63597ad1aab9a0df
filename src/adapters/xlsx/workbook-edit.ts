import { freePartName, removeContentType, setContentType } from './content-types';
import { SHEET_NAME } from './limits';
import type { Package } from './package';
import { refuse } from './refuse';
import { addRelation, relationsOf, removeRelation, STRICT } from './relations';
import { Splice } from './splice';
import { readWorkbookPart, type WorkbookPart } from './workbook-part';
import { escapeAttribute, utf8 } from './xml-text';
import { child, childrenOf, tagName } from './xml-tree';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const MAIN_STRICT = 'http://purl.oclc.org/ooxml/spreadsheetml/main';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const WORKSHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const STYLES_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml';
/** Children of workbook that may follow the calculation settings. */
const BEHIND_CALCULATION =
  'oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst'.split(
    ' ',
  );

const mainSpace = (book: WorkbookPart): string => (book.relationSpace === STRICT ? MAIN_STRICT : MAIN);

export function checkSheetName(name: string): void {
  if (name === '' || name.length > SHEET_NAME || /[[\]:*?/\\]|^'|'$/.test(name))
    refuse('unsupported', `A sheet cannot be named "${name.slice(0, 60)}".`);
}

/** Adds an empty worksheet behind all others, so that names bound to a sheet by its number stay right. */
export function addSheet(pkg: Package, book: WorkbookPart, name: string, isHidden = false): void {
  checkSheetName(name);
  if (book.protectedStructure)
    refuse('protected', `The structure of the workbook is protected, so the sheet ${name} cannot be added.`);
  if (book.allSheetNames.some((other) => other.toLowerCase() === name.toLowerCase()))
    refuse('occupied', `The workbook has a sheet ${name} that holds no cells.`);
  const part = freePartName(pkg, 'xl/worksheets/sheet', 'xml');
  pkg.write(part, utf8(`${DECLARATION}<worksheet xmlns="${mainSpace(book)}"><sheetData/></worksheet>`));
  setContentType(pkg, part, WORKSHEET_TYPE);
  const relation = addRelation(pkg, book.part, `${book.relationSpace}/worksheet`, part);
  const sheets = child(book.root, 'sheets') ?? refuse('unsupported', `${book.part} has no list of sheets.`);
  const ids = childrenOf(sheets, 'sheet').map((sheet) => Number(sheet.attributes.get('sheetId')) || 0);
  const tag = tagName(book.root, 'sheet');
  const splice = new Splice(book.bytes);
  splice.append(
    sheets,
    `<${tag} xmlns:r="${book.relationSpace}" name="${escapeAttribute(name)}" sheetId="${Math.max(0, ...ids) + 1}"${isHidden ? ' state="hidden"' : ''} r:id="${relation}"/>`,
  );
  pkg.write(book.part, splice.apply());
}

/** The workbook's styles part; one with the least that every program expects is made when there is none. */
export function stylesPart(pkg: Package, book: WorkbookPart): string {
  if (book.styles !== undefined) return book.styles;
  const name = pkg.has('xl/styles.xml') ? freePartName(pkg, 'xl/styles', 'xml') : 'xl/styles.xml';
  const xf = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"';
  pkg.write(
    name,
    utf8(
      `${DECLARATION}<styleSheet xmlns="${mainSpace(book)}">` +
        '<fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts>' +
        '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
        '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
        `<cellStyleXfs count="1">${xf}/></cellStyleXfs><cellXfs count="1">${xf} xfId="0"/></cellXfs>` +
        '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
    ),
  );
  setContentType(pkg, name, STYLES_TYPE);
  addRelation(pkg, book.part, `${book.relationSpace}/styles`, name);
  return name;
}

/** The saved order of calculation names every formula cell; without it a program makes a new one, with a stale one it complains. */
export function dropCalculationOrder(pkg: Package, workbook: string): void {
  for (const relation of relationsOf(pkg, workbook)) {
    if (relation.kind !== 'calcChain') continue;
    removeRelation(pkg, workbook, relation.id);
    removeContentType(pkg, relation.target);
    pkg.remove(relation.target);
  }
}

/** Asks the next program that opens the file to calculate everything. */
export function calculateOnOpen(pkg: Package, workbook: string): void {
  const book = readWorkbookPart(pkg, workbook);
  const splice = new Splice(book.bytes);
  const settings = child(book.root, 'calcPr');
  if (settings) splice.setAttribute(settings, 'fullCalcOnLoad', '1');
  else {
    const xml = `<${tagName(book.root, 'calcPr')} fullCalcOnLoad="1"/>`;
    const after = book.root.children.find((c) => BEHIND_CALCULATION.includes(c.local));
    if (after) splice.insert(after.start, xml);
    else splice.append(book.root, xml);
  }
  pkg.write(workbook, splice.apply());
}
