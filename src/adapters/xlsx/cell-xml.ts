import { isCellError, type Cell } from '../../functions/define';
import { cellAddress, columnLetters, rangeAddress } from '../../workbook/address';
import type { ByteSink } from './byte-sink';
import type { FormulaShape } from './formula-shape';
import type { CellInput } from './sheet-effects';
import { escapeXml, writeCellText } from './xml-text';

export interface CellPlace {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  /** Namespace prefix of the part with its colon, or ''. */
  readonly prefix: string;
}

/** A whole cell as XML. `metadata` is asked for when a formula spills. */
export function cellXml(place: CellPlace, input: CellInput | null, metadata: () => string): string {
  const { row, column, style, prefix: p } = place;
  const open = `<${p}c r="${cellAddress(row, column)}"${style > 0 ? ` s="${style}"` : ''}`;
  const close = `</${p}c>`;
  if (input === null) return `${open}/>`;
  if (input.kind === 'constant') {
    if (typeof input.value === 'string')
      return `${open} t="inlineStr"><${p}is>${textXml(input.value, p)}</${p}is>${close}`;
    return `${open}${valueType(input.value)}>${valueXml(input.value, p)}${close}`;
  }
  const formula = (text: string | FormulaShape): string => escapeXml(typeof text === 'string' ? text : text.text(row));
  const cached = `${valueXml(input.value ?? null, p)}${close}`;
  const type = valueType(input.value ?? null);
  if (input.kind === 'spilled') return `${open}${type}>${cached}`;
  if (!input.spill) return `${open}${type}><${p}f>${formula(input.formula)}</${p}f>${cached}`;
  const ref = rangeAddress({ row, column, ...input.spill });
  return `${open}${type} cm="${metadata()}"><${p}f t="array" ref="${ref}">${formula(input.formula)}</${p}f>${cached}`;
}

/** The same as `cellXml` for a formula that many rows have, straight into the sink. */
export function writeShaped(sink: ByteSink, place: CellPlace, shape: FormulaShape, value: Cell): void {
  const { row, column, style, prefix: p } = place;
  sink.text(`<${p}c r="${columnLetters(column)}`);
  sink.number(row + 1);
  sink.text(`"${style > 0 ? ` s="${style}"` : ''}${valueType(value)}><${p}f>`);
  shape.write(sink, row);
  sink.text(`</${p}f>${valueXml(value, p)}</${p}c>`);
}

export function textXml(text: string, p: string): string {
  const written = writeCellText(text);
  const keep = /^\s|\s$|\n/.test(written) ? ' xml:space="preserve"' : '';
  return `<${p}t${keep}>${escapeXml(written)}</${p}t>`;
}

function valueType(value: Cell): string {
  if (typeof value === 'string') return ' t="str"';
  if (typeof value === 'boolean') return ' t="b"';
  return isCellError(value) || (typeof value === 'number' && !Number.isFinite(value)) ? ' t="e"' : '';
}

function valueXml(value: Cell, p: string): string {
  if (value === null) return '';
  return `<${p}v>${escapeXml(valueText(value))}</${p}v>`;
}

/** A cached value exactly as it is kept: the shortest decimal text that reads back as the same number. */
function valueText(value: number | string | boolean | { readonly error: string }): string {
  if (typeof value === 'string') return writeCellText(value);
  if (typeof value === 'boolean') return value ? '1' : '0';
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(value).replace('e+', 'E+').replace('e-', 'E-') : '#NUM!';
  return value.error;
}
