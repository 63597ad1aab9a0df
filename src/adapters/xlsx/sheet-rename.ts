import type { Package } from './package';
import { refuse } from './refuse';
import { renamedFormula, type Renaming } from './renamed-formula';
import { Splice } from './splice';
import { checkSheetName } from './workbook-edit';
import { readWorkbookPart } from './workbook-part';
import { CLOSE, END, OPEN, XmlScanner } from './xml-scan';
import { decodeText, escapeAttribute, escapeXml, fromUtf8, utf8 } from './xml-text';
import { child, childrenOf } from './xml-tree';

/** Elements whose text is a formula or a reference: in worksheets, rules, tables, names and charts, and their extensions. */
const FORMULAS = new Set(
  'f formula formula1 formula2 definedName calculatedColumnFormula totalsRowFormula sqref'.split(' '),
);
/** Attributes that hold a reference: texts of shapes and cells of controls. */
const REFERENCES = 'textlink fmlaLink fmlaRange fmlaGroup fmlaTxbx linkedCell listFillRange'.split(' ');
/** Elements that name a sheet by an attribute of its own: sources of pivot tables and of consolidations. */
const SOURCES = new Set(['worksheetSource', 'rangeSet', 'dataRef']);
const NOT_LOOKED_AT = /(^|\/)(externalLinks|customXml|docProps|_xmlsignatures)\//i;

/** Gives sheets new names, and whatever in the workbook refers to them: formulas, names, rules, links, charts, pivots. */
export const renameSheets = (pkg: Package, workbook: string, names: ReadonlyMap<string, string>): void => {
  const book = readWorkbookPart(pkg, workbook);
  const byName = new Map([...names].map(([before, after]) => [before.toLowerCase(), after]));
  const newName: Renaming = (name) => byName.get(name.toLowerCase());
  const after = book.allSheetNames.map((name) => newName(name) ?? name);
  for (const name of names.values()) checkSheetName(name);
  if (new Set(after.map((name) => name.toLowerCase())).size < after.length)
    refuse('occupied', 'Two sheets of the workbook would have the same name.');
  if (book.protectedStructure)
    refuse('protected', 'The structure of the workbook is protected, so its sheets cannot be renamed.');
  const splice = new Splice(book.bytes);
  for (const sheet of childrenOf(child(book.root, 'sheets'), 'sheet')) {
    const name = newName(sheet.attributes.get('name') ?? '');
    if (name !== undefined) splice.setAttribute(sheet, 'name', name);
  }
  pkg.write(workbook, splice.apply());
  for (const part of pkg.names()) {
    if (!/\.(xml|rels|vml)$/i.test(part) || NOT_LOOKED_AT.test(part) || !mayName(pkg.read(part), names)) continue;
    if (/\.vml$/i.test(part)) renameInControls(pkg, part, newName);
    else renameIn(pkg, part, newName);
  }
};

/** Most parts of most workbooks need not be taken apart. A name that XML may write in several ways is looked for in all. */
const mayName = (bytes: Uint8Array, names: ReadonlyMap<string, string>): boolean => {
  const text = new TextDecoder().decode(bytes).toLowerCase();
  return [...names.keys()].some((name) => /[&<>"'%]/.test(name) || text.includes(name.toLowerCase()));
};

const renameIn = (pkg: Package, part: string, newName: Renaming): void => {
  const bytes = pkg.read(part);
  const splice = new Splice(bytes);
  const scanner = new XmlScanner(bytes, part);
  let inFormula = false;
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token === OPEN) {
      inFormula = !scanner.selfClosing && FORMULAS.has(scanner.local());
      renameAttributes(scanner, splice, newName);
    } else if (token === CLOSE) inFormula = false;
    else if (inFormula) {
      const formula = decodeText(bytes, scanner.start, scanner.end, scanner.literal);
      const renamed = renamedFormula(formula, newName);
      // Between CDATA marks nothing is an entity.
      if (renamed !== formula)
        splice.replace(scanner.start, scanner.end, scanner.literal ? renamed : escapeXml(renamed));
    }
  }
  if (!splice.isEmpty) pkg.write(part, splice.apply());
};

const renameAttributes = (scanner: XmlScanner, splice: Splice, newName: Renaming): void => {
  const { attributes } = scanner;
  const put = (name: string, rename: (value: string) => string | undefined): void => {
    const n = attributes.find(name);
    if (n < 0) return;
    const before = attributes.value(n);
    const after = rename(before);
    if (after === undefined || after === before) return;
    // Either kind of quote may stand around it.
    splice.replace(attributes.valueStart(n), attributes.valueEnd(n), escapeAttribute(after).replaceAll("'", '&apos;'));
  };
  for (const name of REFERENCES) put(name, (value) => renamedFormula(value, newName));
  const local = scanner.local();
  // A link with a target besides leads into another file.
  const isInside = local === 'hyperlink' && !attributes.all().some(([name]) => name.endsWith(':id'));
  if (isInside) put('location', (value) => renamedFormula(value, newName));
  if (local === 'Relationship')
    put('Target', (value) => (value.startsWith('#') ? `#${renamedFormula(value.slice(1), newName)}` : value));
  if (SOURCES.has(local) && !attributes.all().some(([name]) => name.endsWith(':id'))) put('sheet', newName);
};

/** Older drawings of controls are no strict XML. */
const renameInControls = (pkg: Package, part: string, newName: Renaming): void => {
  const text = fromUtf8(pkg.read(part));
  const renamed = text.replace(/(<x:Fmla\w+>)([^<]*)/g, (_, tag: string, formula: string) => {
    const plain = formula.replaceAll('&apos;', "'").replaceAll('&amp;', '&');
    return tag + escapeXml(renamedFormula(plain, newName));
  });
  if (renamed !== text) pkg.write(part, utf8(renamed));
};
