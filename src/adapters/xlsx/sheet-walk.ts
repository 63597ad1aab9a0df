import { packedReference } from './cell-reference';
import { LAST_COLUMN, LAST_ROW } from './limits';
import { CLOSE, END, OPEN, TEXT, XmlScanner } from './xml-scan';
import { decodeText } from './xml-text';

export type CellType = 'n' | 's' | 'str' | 'b' | 'e' | 'inlineStr' | 'd';
const TYPES: readonly CellType[] = ['s', 'str', 'n', 'b', 'e', 'inlineStr', 'd'];

export interface StoredFormula {
  readonly type: string;
  readonly ref: string | undefined;
  readonly shared: string | undefined;
  readonly text: string;
}

/** One cell while the walk stands on it; the same object is used for every cell. */
export interface CellRecord {
  row: number;
  column: number;
  start: number;
  openEnd: number;
  end: number;
  selfClosing: boolean;
  hasReference: boolean;
  style: number;
  type: CellType;
  /** Text of the value, or of an inline string. */
  value: string | undefined;
  formula: StoredFormula | undefined;
  /** Index into the workbook's cell metadata: a formula that spills. */
  metadata: string | undefined;
}

export interface RowRecord {
  row: number;
  start: number;
  openEnd: number;
  closeStart: number;
  end: number;
  selfClosing: boolean;
  hasReference: boolean;
}

export interface SheetVisitor {
  /** At the start tag of the root, and of the cell data. */
  root?(scanner: XmlScanner): void;
  data?(start: number, openEnd: number, selfClosing: boolean): void;
  /** At the start tag of a row: its attributes can still be asked of the scanner. */
  row?(row: RowRecord, scanner: XmlScanner): void;
  cell?(cell: CellRecord): void;
  rowEnd?(row: RowRecord): void;
  dataEnd?(closeStart: number): void;
  /** Every other child of the root, as a span. */
  section?(local: string, start: number, end: number): void;
  rootEnd?(closeStart: number): void;
}

/** Goes once through a worksheet part, from first to last byte. */
export function walkSheet(bytes: Uint8Array, part: string, visitor: SheetVisitor): void {
  const scanner = new XmlScanner(bytes, part);
  let hadData = false;
  for (let token = scanner.next(); token !== END; token = scanner.next()) {
    if (token === CLOSE) visitor.rootEnd?.(scanner.start);
    if (token !== OPEN) continue;
    if (scanner.level === 0) {
      if (!scanner.is('worksheet')) scanner.fail('it is no worksheet');
      if (scanner.selfClosing) scanner.fail('it has no cell data');
      visitor.root?.(scanner);
    } else if (scanner.is('sheetData')) {
      if (hadData) scanner.fail('it has two blocks of cell data');
      hadData = true;
      walkData(scanner, visitor);
    } else {
      const { start } = scanner;
      const local = scanner.local();
      visitor.section?.(local, start, scanner.skip());
    }
  }
  if (!hadData) scanner.fail('it has no cell data');
}

function walkData(scanner: XmlScanner, visitor: SheetVisitor): void {
  visitor.data?.(scanner.start, scanner.end, scanner.selfClosing);
  if (scanner.selfClosing) return visitor.dataEnd?.(scanner.end);
  const row: RowRecord = {
    row: -1,
    start: 0,
    openEnd: 0,
    closeStart: 0,
    end: 0,
    selfClosing: false,
    hasReference: false,
  };
  const cell = blankCell();
  for (let token = scanner.next(); token !== CLOSE; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (!scanner.is('row')) {
      scanner.skip();
      continue;
    }
    const r = scanner.attributeAt('r');
    row.hasReference = r >= 0;
    row.row = r >= 0 ? Number(scanner.attributeValue(r)) - 1 : row.row + 1;
    if (!(Number.isInteger(row.row) && row.row >= 0 && row.row <= LAST_ROW)) scanner.fail('there is no such row');
    row.start = scanner.start;
    row.openEnd = row.closeStart = row.end = scanner.end;
    row.selfClosing = scanner.selfClosing;
    visitor.row?.(row, scanner);
    if (!row.selfClosing) walkRow(scanner, row, cell, visitor);
    visitor.rowEnd?.(row);
  }
  visitor.dataEnd?.(scanner.start);
}

function walkRow(scanner: XmlScanner, row: RowRecord, cell: CellRecord, visitor: SheetVisitor): void {
  cell.column = -1;
  for (let token = scanner.next(); token !== CLOSE; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (!scanner.is('c')) {
      scanner.skip();
      continue;
    }
    readCell(scanner, row.row, cell);
    visitor.cell?.(cell);
  }
  row.closeStart = scanner.start;
  row.end = scanner.end;
}

const blankCell = (): CellRecord => ({
  row: 0,
  column: -1,
  start: 0,
  openEnd: 0,
  end: 0,
  selfClosing: false,
  hasReference: false,
  style: 0,
  type: 'n',
  value: undefined,
  formula: undefined,
  metadata: undefined,
});

function readCell(scanner: XmlScanner, row: number, cell: CellRecord): void {
  const { bytes } = scanner;
  const r = scanner.attributeAt('r');
  cell.row = row;
  cell.hasReference = r >= 0;
  if (r >= 0) {
    const packed = packedReference(bytes, scanner.valueStart(r), scanner.valueEnd(r));
    if (packed < 0) scanner.fail('there is no such cell');
    cell.column = packed % (LAST_COLUMN + 1);
  } else if (++cell.column > LAST_COLUMN) scanner.fail('there is no such column');
  const s = scanner.attributeAt('s');
  cell.style = s < 0 ? 0 : Number(decodeText(bytes, scanner.valueStart(s), scanner.valueEnd(s))) || 0;
  const t = scanner.attributeAt('t');
  cell.type = t < 0 ? 'n' : (TYPES.find((type) => type === scanner.attributeValue(t)) ?? 'n');
  cell.metadata = scanner.attribute('cm');
  cell.start = scanner.start;
  cell.openEnd = cell.end = scanner.end;
  cell.selfClosing = scanner.selfClosing;
  cell.value = undefined;
  cell.formula = undefined;
  if (scanner.selfClosing) return;
  for (let token = scanner.next(); token !== CLOSE; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (scanner.is('v')) cell.value = plainText(scanner);
    else if (scanner.is('f')) cell.formula = readFormula(scanner);
    else if (scanner.is('is')) cell.value = richText(scanner);
    else scanner.skip();
  }
  cell.end = scanner.end;
}

function readFormula(scanner: XmlScanner): StoredFormula {
  const type = scanner.attribute('t') ?? '';
  const ref = scanner.attribute('ref');
  const shared = scanner.attribute('si');
  return { type, ref, shared, text: plainText(scanner) };
}

/** All text of the present element; leaves the scanner on its CLOSE. */
function plainText(scanner: XmlScanner): string {
  if (scanner.selfClosing) return '';
  const { level } = scanner;
  let text = '';
  for (let token = scanner.next(); token !== CLOSE || scanner.level !== level; token = scanner.next())
    if (token === TEXT) text += scanner.textValue();
  return text;
}

/** Text of a string item: all runs, without the phonetic reading that East Asian texts carry. */
export function richText(scanner: XmlScanner): string {
  if (scanner.selfClosing) return '';
  const { level } = scanner;
  let text = '';
  for (let token = scanner.next(); token !== CLOSE || scanner.level !== level; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (scanner.is('t')) text += plainText(scanner);
    else if (scanner.is('rPh')) scanner.skip();
  }
  return text;
}
