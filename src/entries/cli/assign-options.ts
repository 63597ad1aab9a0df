import { languageOf, type Language } from '../../core/language';
import { INPUT_MODES, type InputMode } from '../../plan/fields';
import type { AssignOptions, InputModule } from '../../plan/assign/options';
import { usageProblem } from './status';

/** What was typed after "assign", as texts. */
export interface AssignTyped {
  readonly spare?: string;
  readonly pinned?: string;
  readonly inputs?: string;
  readonly testEnd?: string;
  readonly time?: string;
  readonly language?: string;
  readonly allowWarn: boolean;
  readonly allowIncomplete: boolean;
  readonly roving: boolean;
}

const MOST_SECONDS = 60;

export const assignOptions = (typed: AssignTyped): AssignOptions & { readonly language: Language } => ({
  allowWarn: typed.allowWarn,
  allowIncomplete: typed.allowIncomplete,
  roving: typed.roving,
  spare: typed.spare === undefined ? 0 : fraction(typed.spare),
  pinned: typed.pinned === undefined ? [] : typed.pinned === 'filled' ? 'filled' : typed.pinned.split(',').map((name) => name.trim()), // prettier-ignore
  inputs: typed.inputs === undefined ? undefined : typed.inputs.split(',').map(inputModule),
  testEnd: typed.testEnd === undefined ? undefined : dayOf(typed.testEnd),
  timeLimit: typed.time === undefined ? MOST_SECONDS : seconds(typed.time),
  language: languageOf(typed.language),
});

/** "5%" or "0.05". */
const fraction = (text: string): number => {
  const match = /^(\d+(?:[.,]\d+)?)\s*(%?)$/.exec(text.trim());
  const value = match ? Number(match[1]!.replace(',', '.')) / (match[2] ? 100 : 1) : NaN;
  if (!(value >= 0 && value < 1)) throw usageProblem(`--spare ${text}: expected a share below 100 %, such as 5%.`);
  return value;
};

const seconds = (text: string): number => {
  const value = Number(text);
  if (!(value > 0)) throw usageProblem(`--time ${text}: expected seconds, such as 60.`);
  return value;
};

/** "IEPE 24" or "IEPE+voltage 16". */
const inputModule = (text: string): InputModule => {
  const match = /^\s*([A-Za-z+]+)\s+(\d+)\s*$/.exec(text);
  const modes = (match?.[1] ?? '')
    .split('+')
    .map((mode) => INPUT_MODES.find((known) => known.toLowerCase() === mode.toLowerCase()));
  if (!match || modes.some((mode) => mode === undefined))
    throw usageProblem(`--inputs ${text.trim()}: expected kinds and channels, such as "IEPE 24, charge 8, IEPE+voltage 16"; kinds are ${INPUT_MODES.join(', ')}.`); // prettier-ignore
  return { name: match[1]!, modes: modes as InputMode[], channels: Number(match[2]), count: 1 };
};

const DAY = 86_400_000;
/** Days since 1899-12-30, as spreadsheets count. */
const dayOf = (text: string): number => {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : NaN;
  if (Number.isNaN(time)) throw usageProblem(`--test-end ${text}: expected a date such as 2027-03-31.`);
  return (time - Date.UTC(1899, 11, 30)) / DAY;
};
