import { complex, fromPolar, modulus, type Complex } from '../../core/mass/complex';
import {
  accelerance,
  RESPONSE_QUANTITIES,
  type FrequencyResponse,
  type ResponseQuantity,
} from '../../core/mass/frequency-response';
import { failure, outcome, type Outcome } from '../../core/issue';
import { readQuantity } from '../../core/text/quantity';
import { isCellError, type ArgSpecs, type Block, type Cell } from '../define';

export const RESPONSE_FORMS = ['real and imaginary', 'magnitude and phase', 'dB and phase', 'magnitude', 'dB'] as const;
export type ResponseForm = (typeof RESPONSE_FORMS)[number];

/** A pasted response and how to read its columns. */
export const RESPONSE = {
  response: {
    kind: 'block',
    text: 'Frequency in Hz and the measured response, two or three columns; a heading row is passed over.',
  },
} as const satisfies ArgSpecs;
export const RESPONSE_READING = {
  quantity: {
    kind: 'choice',
    choices: RESPONSE_QUANTITIES,
    default: 'accelerance',
    text: 'What was measured, in SI: (m/s²)/N, (m/s)/N, m/N, kg, N·s/m or N/m.',
  },
  form: {
    kind: 'choice',
    choices: RESPONSE_FORMS,
    default: 'real and imaginary',
    text: 'What the columns hold; dB re 1 SI unit, phase in degrees.',
  },
} as const satisfies ArgSpecs;

export const hasPhase = (form: ResponseForm): boolean => form !== 'magnitude' && form !== 'dB';

const DEGREE = Math.PI / 180;
const magnitudeOf = (first: number, form: ResponseForm): number => (form.startsWith('dB') ? 10 ** (first / 20) : first);

const toComplex = (first: number, second: number, form: ResponseForm): Complex =>
  form === 'real and imaginary' ? complex(first, second) : fromPolar(magnitudeOf(first, form), second * DEGREE);

/** The columns of a value, as RESPONSE_FORMS reads them. */
export const fromComplex = (value: Complex, form: ResponseForm): number[] => {
  if (form === 'real and imaginary') return [value.re, value.im];
  const size = form.startsWith('dB') ? 20 * Math.log10(modulus(value)) : modulus(value);
  return hasPhase(form) ? [size, Math.atan2(value.im, value.re) / DEGREE] : [size];
};

const numberOf = (cell: Cell | undefined, unit: 'Hz' | '1'): number | undefined => {
  if (typeof cell === 'number') return cell;
  const reading = typeof cell === 'string' ? readQuantity(cell, unit) : undefined;
  return reading?.ok ? reading.value.si : undefined;
};
const isBlankRow = (row: readonly Cell[]): boolean => row.every((cell) => cell === null || cell === '');

/** A pasted table as accelerances over rising frequencies, or the issue that names what is wrong with it. */
export const readResponse = (
  table: Block,
  quantity: ResponseQuantity,
  form: ResponseForm,
  arg: string,
): Outcome<FrequencyResponse> => {
  const rows = table.filter((row) => !isBlankRow(row));
  const error = rows.flat().find(isCellError);
  if (error) return failure({ code: 'cell-error', arg, given: error.error });
  if (rows.length === 0) return failure({ code: 'missing', arg });
  const lines = rows.map((row) => [numberOf(row[0], 'Hz'), numberOf(row[1], '1'), numberOf(row[2], '1')] as const);
  const body = lines[0]?.every((value) => value === undefined) ? lines.slice(1) : lines;
  const frequency: number[] = [];
  const values: Complex[] = [];
  for (const [line, first, second = hasPhase(form) ? undefined : 0] of body) {
    if (line === undefined || first === undefined || second === undefined) {
      const rule = `a number in each of ${hasPhase(form) ? 'three' : 'two'} columns (${form})`;
      return failure({ code: 'bad-curve', arg, given: `row ${frequency.length + 1}`, rule });
    }
    if (!(line > (frequency[frequency.length - 1] ?? 0))) {
      return failure({ code: 'bad-curve', arg, given: `${line} Hz`, rule: 'rising frequencies above 0 Hz' });
    }
    frequency.push(line);
    values.push(accelerance(toComplex(first, second, form), quantity, line));
  }
  return frequency.length === 0 ? failure({ code: 'missing', arg }) : outcome({ frequency, accelerance: values });
};

/** The issue of a band that reaches beyond the measured lines, if it does. */
export const bandWithin = (response: FrequencyResponse, low: number, high: number): Outcome<FrequencyResponse> => {
  if (high < low) {
    return failure({ code: 'out-of-range', arg: 'high', given: high, unit: 'Hz', rule: `≥ ${low}` });
  }
  const first = response.frequency[0] as number;
  const last = response.frequency[response.frequency.length - 1] as number;
  const rule = `${first} to ${last} Hz`;
  if (low < first) return failure({ code: 'beyond-data', arg: 'low', given: low, unit: 'Hz', rule });
  if (high > last) return failure({ code: 'beyond-data', arg: 'high', given: high, unit: 'Hz', rule });
  return outcome(response);
};
