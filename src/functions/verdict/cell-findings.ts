import { worstDeviation, halfBand } from '../../core/thermal/band';
import { spanVerdict, verdictAtLeast, verdictAtMost, VERDICTS, type Verdict } from '../../core/verdict';
import type { Finding } from '../../plan/finding';
import { isCellError, type Block, type Cell } from '../define';

/** A row's verdicts and numbers as its cells give them, in SI. */
export interface RowCells {
  readonly levelVerdict?: Cell;
  readonly signalToNoise?: number;
  readonly headroom?: number;
  readonly massVerdict?: Cell;
  readonly massRatio?: number;
  readonly massAllowed?: number;
  readonly thermalVerdict?: Cell;
  readonly thermalLow?: number;
  readonly thermalHigh?: number;
  readonly frequencyVerdict?: Cell;
  readonly spanLow?: number;
  readonly spanHigh?: number;
  readonly bandLow?: number;
  readonly bandHigh?: number;
  readonly signalToNoisePass: number;
  readonly headroomPass: number;
  readonly massPass: number;
  readonly tolerance: number;
  readonly missing?: readonly Block[];
}

/** What stands where a text is asked for and there is none: some spreadsheet programs take an empty one for unknown. */
export const NO_TEXT = '–';

/** A verdict, and the cause that may follow it. Blanks, errors and other texts are no verdict, and so INCOMPLETE. */
const judgedIn = (cell: Cell | undefined): { readonly verdict: Verdict; readonly cause: string } => {
  const [word = '', ...rest] = typeof cell === 'string' ? cell.trim().split(/\s+/) : [];
  const verdict = VERDICTS.find((known) => known === word.toUpperCase());
  const cause = rest.join(' ');
  return { verdict: verdict ?? 'INCOMPLETE', cause: cause === NO_TEXT ? '' : cause };
};
const verdictIn = (cell: Cell | undefined): Verdict => judgedIn(cell).verdict;

/** What the cells say against a PASS; a failure that no number shows is told as such. */
export const cellFindings = (row: RowCells): readonly Finding[] => {
  const told = [levelIn(row), massIn(row), thermalIn(row), frequencyIn(row)];
  const unknown = told.flatMap(({ unknown }) => unknown);
  const named = (row.missing ?? []).flat(2).filter(isNamed).map(String);
  const what = named.length > 0 ? named : unknown;
  const isIncomplete = told.some(({ verdict }) => verdict === 'INCOMPLETE');
  return [
    ...told.flatMap(({ findings }) => findings),
    ...(isIncomplete && what.length > 0 ? [{ check: 'not known', verdict: 'INCOMPLETE', what } as const] : []),
  ];
};

const isNamed = (cell: Cell): boolean => !isCellError(cell) && cell !== null && String(cell).trim() !== '';

interface Told {
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  readonly unknown: readonly string[];
}
type Headline = Extract<Finding, { check: 'unexplained' }>['headline'];

/** A number inside its limit explains nothing, and an INCOMPLETE headline is explained by what is not known. */
const told = (
  headline: Headline,
  cell: Cell | undefined,
  findings: readonly (Finding | false | undefined)[],
  numbers: Readonly<Record<string, number | undefined>>,
): Told => {
  const { verdict, cause } = judgedIn(cell);
  if (verdict === 'PASS') return { verdict, findings: [], unknown: [] };
  if (verdict === 'INCOMPLETE') {
    const unknown = Object.keys(numbers).filter((name) => numbers[name] === undefined);
    return { verdict, findings: [], unknown: unknown.length > 0 ? unknown : [`${headline} verdict`] };
  }
  const found = [
    ...(cause === '' ? [] : [{ check: 'explained', verdict, text: cause } as const]),
    ...findings.filter((finding) => finding !== undefined && finding !== false),
  ];
  return { verdict, findings: found.length > 0 ? found : [{ check: 'unexplained', headline, verdict }], unknown: [] };
};

const levelIn = ({ levelVerdict, signalToNoise, headroom, signalToNoisePass, headroomPass }: RowCells): Told => {
  const verdict = verdictIn(levelVerdict);
  return told(
    'level',
    levelVerdict,
    [
      signalToNoise !== undefined &&
        verdictAtLeast(signalToNoise, signalToNoisePass) === 'FAIL' && {
          check: 'signal to noise',
          verdict,
          number: signalToNoise,
          limit: signalToNoisePass,
        },
      headroom !== undefined &&
        verdictAtLeast(headroom, headroomPass) === 'FAIL' && {
          check: 'headroom',
          verdict,
          number: headroom,
          limit: headroomPass,
        },
    ],
    { 'signal to noise': signalToNoise, headroom },
  );
};

const massIn = ({ massVerdict, massRatio, massAllowed, massPass }: RowCells): Told =>
  told(
    'mass',
    massVerdict,
    [
      massRatio !== undefined &&
        verdictAtMost(massRatio, massPass) === 'FAIL' && {
          check: 'mass ratio',
          verdict: verdictIn(massVerdict),
          number: massRatio,
          limit: massPass,
          allowed: massAllowed,
        },
    ],
    { 'mass ratio': massRatio },
  );

const thermalIn = ({ thermalVerdict, thermalLow: low, thermalHigh: high, tolerance }: RowCells): Told => {
  const band = low === undefined || high === undefined ? undefined : { low, high };
  return told(
    'thermal',
    thermalVerdict,
    [
      band &&
        verdictAtMost(worstDeviation(band), tolerance) === 'FAIL' && {
          check: 'thermal deviation',
          verdict: verdictIn(thermalVerdict),
          ...band,
          limit: tolerance,
          halfBand: halfBand(band),
        },
    ],
    { 'thermal deviation': band?.low },
  );
};

const frequencyIn = ({ frequencyVerdict, spanLow: low, spanHigh: high, bandLow, bandHigh }: RowCells): Told => {
  const verdict = verdictIn(frequencyVerdict);
  const isOutside = (band: { low: number; high: number }) =>
    low !== undefined && high !== undefined && spanVerdict(band, { low, high }, { low, high }) === 'FAIL';
  return told(
    'frequency',
    frequencyVerdict,
    [
      low === undefined && high === undefined && { check: 'empty span', verdict },
      low !== undefined &&
        high !== undefined &&
        bandLow !== undefined &&
        isOutside({ low: bandLow, high }) && { check: 'span low', verdict, number: low, limit: bandLow },
      low !== undefined &&
        high !== undefined &&
        bandHigh !== undefined &&
        isOutside({ low, high: bandHigh }) && { check: 'span high', verdict, number: high, limit: bandHigh },
    ],
    { span: low, 'needed band': bandLow === undefined ? undefined : bandHigh },
  );
};
