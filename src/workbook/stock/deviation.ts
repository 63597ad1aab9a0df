import { readQuantity } from '../../core/text/quantity';
import type { Cell } from '../../functions/define';
import type { SheetCells } from '../sheet-cells';

/** A column that holds the deviation at one temperature, told by its heading. */
export interface TemperatureColumn {
  readonly column: number;
  /** °C. */
  readonly at: number;
}

const AT = /(?:^|[\s(@])([-−–+]?\d+(?:[.,]\d+)?)\s*(?:°\s*([CF])|deg\s*([CF]))/giu;
const RANGE = /\d\s*(?:°\s*[CF])?\s*(?:\.\.+|…|to\b|bis\b|à)\s*[-−–+]?\d/iu;

/** Two or more headings that each name one temperature. */
export const temperatureColumns = (headings: ReadonlyMap<number, string>): readonly TemperatureColumn[] => {
  const found = [...headings].flatMap(([column, heading]) => {
    // The last one: a group above may name the temperature that the deviations refer to.
    const match = RANGE.test(heading) ? undefined : [...heading.matchAll(AT)].at(-1);
    if (!match) return [];
    const number = Number(match[1]!.replace(/[−–]/, '-').replace(',', '.'));
    const isFahrenheit = (match[2] ?? match[3])?.toUpperCase() === 'F';
    return [{ column, at: isFahrenheit ? (number - 32) / 1.8 : number }];
  });
  return found.length < 2 ? [] : found.sort((a, b) => a.at - b.at);
};

/** Fractions by °C, from cells that are % or say so; undefined when fewer than two can be read. */
export const curveOf = (
  columns: readonly TemperatureColumn[],
  cells: SheetCells,
  row: number,
): { readonly x: number[]; readonly y: number[] } | undefined => {
  const [x, y]: [number[], number[]] = [[], []];
  for (const { column, at } of columns) {
    const cell = cells.at(row, column);
    const read = typeof cell === 'number' ? cell / 100 : typeof cell === 'string' ? fractionOf(cell) : undefined;
    if (read === undefined || x.at(-1) === at) continue;
    x.push(at);
    y.push(read);
  }
  return x.length < 2 ? undefined : { x, y };
};

const fractionOf = (text: string): number | undefined => {
  const read = readQuantity(text, '%');
  return read.ok ? read.value.si : undefined;
};

export interface StatedDeviation {
  /** "±" was written, or no sign at all. */
  readonly isUnsigned: boolean;
  /** Fraction. */
  readonly deviation: number;
  /** °C. */
  readonly at: number;
}

const STATED =
  /(±|\+\/-|\+-|[-−–+])?\s*(\d+(?:[.,]\d+)?)\s*%\s*(?:at|bei|à|@|a)\s*([-−–+]?\d+(?:[.,]\d+)?)\s*°?\s*([CF])?/giu;

/** "±5 % at 50 °C", several with commas or semicolons; undefined when anything else stands there. */
export const statedDeviations = (cell: Cell): readonly StatedDeviation[] | undefined => {
  if (typeof cell !== 'string') return undefined;
  const number = (text: string): number => Number(text.replace(/[−–]/, '-').replace(',', '.'));
  const found = [...cell.matchAll(STATED)].map(([, sign = '', value, at, scale]): StatedDeviation => {
    const isUnsigned = sign === '' || sign === '±' || sign.length > 1;
    const size = number(value!) / 100;
    const temperature = number(at!);
    return {
      isUnsigned,
      deviation: !isUnsigned && sign !== '+' ? -size : size,
      at: scale?.toUpperCase() === 'F' ? (temperature - 32) / 1.8 : temperature,
    };
  });
  const rest = cell.replace(STATED, '').replace(/[\s,;]|and|und|et/giu, '');
  return found.length > 0 && rest === '' ? found : undefined;
};
