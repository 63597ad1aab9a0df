import { packedReference } from './cell-reference';
import { LAST_COLUMN, LAST_ROW } from './limits';
import { CLOSE, END, OPEN, TEXT, XmlScanner } from './xml-scan';
import { shortNumber, smallNumber } from './short-number';
import { decodeText, sameAscii } from './xml-text';

export type CellType = 'n' | 's' | 'str' | 'b' | 'e' | 'inlineStr' | 'd';
const LETTER_V = 118;
const TYPES: readonly CellType[] = ['s', 'str', 'n', 'b', 'e', 'inlineStr', 'd'];

/** A formula where it lies; its text is made only when it is asked for. */
export class StoredFormula {
  private made: string | undefined;

  constructor(
    readonly type: string,
    readonly ref: string | undefined,
    readonly shared: string | undefined,
    readonly bytes: Uint8Array,
    /** Where the text lies when it is one plain piece, which is nearly always. */
    readonly from: number,
    readonly to: number,
    text?: string,
  ) {
    this.made = text;
  }

  get text(): string {
    return (this.made ??= decodeText(this.bytes, this.from, this.to));
  }
}

/** One cell while the walk stands on it; the same object is used for every cell. */
export class CellRecord {
  row = 0;
  column = -1;
  start = 0;
  openEnd = 0;
  end = 0;
  selfClosing = false;
  hasReference = false;
  style = 0;
  type: CellType = 'n';
  formula: StoredFormula | undefined;
  /** Index into the workbook's cell metadata: a formula that spills. */
  metadata: string | undefined;
  hasValue = false;
  /** Where the value lies when it is one plain piece of text, which is nearly always; otherwise `text` has it. */
  private from = 0;
  private to = 0;
  private text: string | undefined;

  constructor(private readonly bytes: Uint8Array) {}

  /** Text of the value, or of an inline string; decoded only when it is asked for. */
  get value(): string | undefined {
    return this.hasValue ? (this.text ?? decodeText(this.bytes, this.from, this.to)) : undefined;
  }

  /** The value as a number; NaN when it is none. */
  get number(): number {
    const short = this.text === undefined ? shortNumber(this.bytes, this.from, this.to) : NaN;
    return Number.isNaN(short) ? Number(this.value) : short;
  }

  setSpan(from: number, to: number): void {
    this.hasValue = true;
    this.text = undefined;
    this.from = from;
    this.to = to;
  }

  setText(text: string): void {
    this.hasValue = true;
    this.text = text;
  }
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
  const cell = new CellRecord(scanner.bytes);
  for (let token = scanner.next(); token !== CLOSE; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (!scanner.is('row')) {
      scanner.skip();
      continue;
    }
    const r = scanner.attributes.find('r');
    row.hasReference = r >= 0;
    row.row = r >= 0 ? Number(scanner.attributes.value(r)) - 1 : row.row + 1;
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

function readCell(scanner: XmlScanner, row: number, cell: CellRecord): void {
  const { bytes } = scanner;
  const r = scanner.attributes.find('r');
  cell.row = row;
  cell.hasReference = r >= 0;
  if (r >= 0) {
    const packed = packedReference(bytes, scanner.attributes.valueStart(r), scanner.attributes.valueEnd(r));
    if (packed < 0) scanner.fail('there is no such cell');
    cell.column = packed % (LAST_COLUMN + 1);
  } else if (++cell.column > LAST_COLUMN) scanner.fail('there is no such column');
  const s = scanner.attributes.find('s');
  cell.style = s < 0 ? 0 : smallNumber(bytes, scanner.attributes.valueStart(s), scanner.attributes.valueEnd(s));
  const t = scanner.attributes.find('t');
  cell.type =
    t < 0
      ? 'n'
      : (TYPES.find((type) =>
          sameAscii(bytes, scanner.attributes.valueStart(t), scanner.attributes.valueEnd(t), type),
        ) ?? 'n');
  cell.metadata = scanner.attributes.get('cm');
  cell.start = scanner.start;
  cell.openEnd = cell.end = scanner.end;
  cell.selfClosing = scanner.selfClosing;
  cell.hasValue = false;
  cell.formula = undefined;
  if (scanner.selfClosing) return;
  if (scanner.onlyChild(LETTER_V)) {
    cell.setSpan(scanner.start, scanner.childEnd);
    cell.end = scanner.end;
    return;
  }
  for (let token = scanner.next(); token !== CLOSE; token = scanner.next()) {
    if (token !== OPEN) continue;
    if (scanner.is('v')) readValue(scanner, cell);
    else if (scanner.is('f')) cell.formula = readFormula(scanner);
    else if (scanner.is('is')) cell.setText(richText(scanner));
    else scanner.skip();
  }
  cell.end = scanner.end;
}

function readValue(scanner: XmlScanner, cell: CellRecord): void {
  if (scanner.selfClosing) return cell.setText('');
  const { level } = scanner;
  if (scanner.next() === TEXT && !scanner.literal) {
    const { start, end } = scanner;
    if (scanner.next() === CLOSE && scanner.level === level) return cell.setSpan(start, end);
    return cell.setText(decodeText(scanner.bytes, start, end) + restOfText(scanner, level));
  }
  cell.setText(restOfText(scanner, level));
}

/** Text from the present token to the end of the element at this level. */
function restOfText(scanner: XmlScanner, level: number): string {
  let text = '';
  for (; scanner.token !== CLOSE || scanner.level !== level; scanner.next())
    if (scanner.token === TEXT) text += scanner.textValue();
  return text;
}

function readFormula(scanner: XmlScanner): StoredFormula {
  const type = scanner.attributes.get('t') ?? '';
  const ref = scanner.attributes.get('ref');
  const shared = scanner.attributes.get('si');
  const { bytes } = scanner;
  if (scanner.selfClosing) return new StoredFormula(type, ref, shared, bytes, 0, 0, '');
  const { level } = scanner;
  if (scanner.next() === TEXT && !scanner.literal) {
    const { start, end } = scanner;
    if (scanner.next() === CLOSE && scanner.level === level)
      return new StoredFormula(type, ref, shared, bytes, start, end);
    const text = decodeText(bytes, start, end) + restOfText(scanner, level);
    return new StoredFormula(type, ref, shared, bytes, 0, 0, text);
  }
  return new StoredFormula(type, ref, shared, bytes, 0, 0, restOfText(scanner, level));
}

/** All text of the present element; leaves the scanner on its CLOSE. */
function plainText(scanner: XmlScanner): string {
  if (scanner.selfClosing) return '';
  const { level } = scanner;
  scanner.next();
  return restOfText(scanner, level);
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
