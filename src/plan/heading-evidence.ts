import { isAbsentText, isDittoText } from '../core/text/absent';
import { readQuantity } from '../core/text/quantity';
import { readRange } from '../core/text/range';
import { fromSi } from '../core/units';
import type { Field } from './fields';
import { isPlausible } from './words/plausible';

/** A cell as any host hands it over. */
export type CellValue = number | string | boolean | null | { readonly error: string };

/** Enough different values to tell a frequency from a mass; a list repeats most of its cells. */
const SAMPLE = 40;
const samples = new WeakMap<readonly CellValue[], readonly (number | string)[]>();

/** Different cells that say something: not blank, not "n/a", no errors; spread over the column. */
export const sampleOf = (cells: readonly CellValue[]): readonly (number | string)[] => {
  let sample = samples.get(cells);
  if (!sample) {
    const told = new Set(
      cells.filter(
        (cell): cell is number | string =>
          typeof cell === 'number' || (typeof cell === 'string' && !isAbsentText(cell) && !isDittoText(cell)),
      ),
    );
    const step = Math.max(1, Math.ceil(told.size / SAMPLE));
    sample = [...told].filter((_, index) => index % step === 0);
    samples.set(cells, sample);
  }
  return sample;
};

const share = <T>(items: readonly T[], holds: (item: T) => boolean): number =>
  items.length === 0 ? 0 : items.filter(holds).length / items.length;

/** Two readings of "1 - 0.4 kHz" are for the user to settle; the column is still one of ranges. */
const isRangeText = (text: string, field: Field): boolean => {
  if (field.unit === undefined || !/\d.*\d/.test(text)) return false;
  const range = readRange(text, field.unit);
  return range.ok || (range.problem.code === 'ambiguous' && !readQuantity(text, field.unit).ok);
};

/** Most cells are ranges such as "15..135 °C". */
export const holdsRanges = (sample: readonly (number | string)[], field: Field): boolean =>
  share(sample, (cell) => typeof cell === 'string' && isRangeText(cell, field)) >= 0.6;

/** Most cells carry a unit that fits, each its own. */
export const cellsNameUnit = (sample: readonly (number | string)[], field: Field): boolean => {
  const { unit } = field;
  if (unit === undefined || unit === '1' || field.kind !== 'quantity') return false;
  return (
    share(sample, (cell) => {
      const read = typeof cell === 'string' && /\d\s*\D/.test(cell) ? readQuantity(cell, unit) : undefined;
      return read?.ok === true && read.value.unitText !== undefined;
    }) >= 0.75
  );
};

/** Numbers that run on, as far as there are any: 1, 2, 3 or M1, M2, M3. */
export const countsRows = (sample: readonly (number | string)[]): boolean => {
  const numbers = sample.map((cell) => Number(String(cell).replace(/^[^\d]{0,4}0*(?=\d)/, '')));
  if (numbers.some((number) => !Number.isInteger(number))) return false;
  return Math.max(...numbers) - Math.min(...numbers) <= 2 * numbers.length;
};

const quantityFit = (sample: readonly (number | string)[], field: Field, unitText: string | undefined): number => {
  const { unit } = field;
  if (unit === undefined) return 1;
  const fits = (text: string, statedUnit?: string): boolean => {
    if (!/\d/.test(text)) return false;
    const read = readQuantity(statedUnit === undefined ? text : `${text} ${statedUnit}`, unit);
    // Two readings of "1,250" are for the user to settle; the column is still one of numbers.
    if (!read.ok) return read.problem.code === 'ambiguous';
    return isPlausible(fromSi(read.value.si, unit), `${field.table}.${field.key}`, unit);
  };
  return share(sample, (cell) =>
    typeof cell === 'number'
      ? fits(String(cell), unitText)
      : fits(cell) || (unitText !== undefined && fits(cell, unitText)) || isRangeText(cell, field),
  );
};

const looksLikeDate = (cell: number | string): boolean =>
  typeof cell === 'number'
    ? cell > 20_000 && cell < 80_000
    : /\d{1,4}[-/. ]+(\d{1,2}|(de )?\p{L}{3,10}\.?( de)?)[-/. ]+\d{2,4}|^\p{L}{3,10}\.? \d{1,2},? \d{4}/iu.test(cell);

const CHOICE_WORD = /^[\p{L}][\p{L}\d ()/.\-–]{0,30}$/u;

/**
 * How well the cells agree with the field: 1 fully, 0 not at all. Undefined without cells to judge by.
 */
export const evidenceFor = (
  sample: readonly (number | string)[],
  field: Field,
  unitText: string | undefined,
): number | undefined => {
  if (sample.length === 0) return undefined;
  switch (field.kind) {
    case 'quantity':
      return quantityFit(sample, field, unitText);
    case 'choice':
      return share(sample, (cell) => typeof cell === 'string' && CHOICE_WORD.test(cell.trim()));
    case 'date':
      return share(sample, looksLikeDate);
    case 'curve':
    case 'list':
      return share(sample, (cell) => typeof cell === 'number' || /\d|none/i.test(cell));
    case 'text':
      // Names may be whole numbers; fractions are a quantity under a name's heading.
      return share(sample, (cell) => typeof cell === 'string' || Number.isInteger(cell));
  }
};
