import type { InLanguages } from '../../core/language';
import { ENGLISH_ASSIGNING } from './assign-words-english';
import { FRENCH_ASSIGNING } from './assign-words-french';
import { GERMAN_ASSIGNING } from './assign-words-german';

/** How much it counts that a structure part has few types. */
export const MIXING_CHOICES = { any: 0, few: 4, fewest: 40 } as const;
export type MixingChoice = keyof typeof MIXING_CHOICES;
export type AssignScope = 'all' | 'shown';
/** Switches of the form. */
export type AssignSwitch = 'warn' | 'incomplete' | 'keep' | 'roving';
export type AssignStep = 'judging' | 'solving' | 'shortage';

export interface AssignPaneWords {
  readonly title: string;
  readonly note: string;
  readonly busyNote: string;
  readonly intro: string;
  readonly noList: string;
  readonly noSensors: string;
  readonly noQuantities: (column: string) => string;
  readonly someQuantities: (count: string, one: boolean) => string;
  readonly options: string;
  readonly rows: string;
  readonly scopes: Readonly<Record<AssignScope, (count: string) => string>>;
  readonly spare: string;
  readonly spareHint: string;
  readonly mixing: string;
  readonly mixings: Readonly<Record<MixingChoice, string>>;
  readonly seconds: string;
  readonly switches: Readonly<Record<AssignSwitch, string>>;
  readonly blanks: string;
  readonly badNumber: (label: string, least: string, most: string) => string;
  readonly start: string;
  readonly again: string;
  readonly cancel: string;
  readonly steps: Readonly<Record<AssignStep, string>>;
  readonly stepOf: (done: string, of: string) => string;
  readonly elapsed: (seconds: string) => string;
  readonly gap: (percent: string) => string;
  readonly broken: (reason: string) => string;
  readonly stale: string;
  readonly uses: string;
  readonly type: string;
  readonly used: string;
  readonly stock: string;
  readonly kept: string;
  readonly left: string;
  readonly noLimit: string;
  readonly usesNote: string;
  readonly idleTypes: (count: string, one: boolean) => string;
  readonly without: (count: string) => string;
  readonly withoutWhy: string;
  readonly unfitting: (count: string) => string;
  readonly unfittingHint: string;
  readonly overdrawn: (list: string) => string;
  readonly missing: string;
  readonly objective: string;
  readonly rowByRow: string;
  readonly piece: (piece: string, axis: number | undefined) => string;
  readonly numbered: (serial: string, axis: number | undefined) => string;
  readonly keeps: string;
  readonly asNow: string;
  readonly more: (count: string) => string;
  readonly write: (cells: string, one: boolean) => string;
  readonly nothingToWrite: string;
  readonly written: (cells: string, one: boolean) => string;
}

export const ASSIGN_PANE_WORDS: InLanguages<AssignPaneWords> = {
  en: ENGLISH_ASSIGNING,
  de: GERMAN_ASSIGNING,
  fr: FRENCH_ASSIGNING,
};
