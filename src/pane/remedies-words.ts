import type { InLanguages } from '../core/language';
import type { Staying } from '../workbook/remedies/freeze';
import type { Remainder } from '../workbook/remedies/rewrite';
import type { Stale } from '../workbook/remedies/state';
import { english } from './remedies-words-english';
import { french } from './remedies-words-french';
import { german } from './remedies-words-german';

/** What the part "Help and remedies" of the pane says. */
export interface RemediesWords {
  readonly title: string;
  readonly note: string;
  readonly hintsTitle: string;
  readonly hints: readonly [string, string, string];
  readonly dismiss: string;
  readonly showHints: string;
  readonly namesTitle: string;
  readonly namesText: string;
  readonly find: string;
  readonly noneFound: string;
  readonly found: (count: string, one: boolean) => string;
  readonly foundPerhaps: (count: string, one: boolean) => string;
  readonly foundText: (count: string, one: boolean) => string;
  readonly andMore: (count: string) => string;
  readonly writeAgain: (count: string) => string;
  readonly include: (count: string, one: boolean) => string;
  readonly rewritten: (working: string, count: string) => string;
  readonly failing: Readonly<Record<Remainder, string>>;
  readonly freezeTitle: string;
  readonly freezeText: string;
  readonly scope: string;
  readonly checkColumns: string;
  readonly everyFormula: string;
  readonly look: string;
  readonly freezeOffer: (count: string, one: boolean) => string;
  readonly freeze: string;
  readonly staying: (count: string, why: Staying) => string;
  readonly frozen: (count: string, one: boolean) => string;
  readonly cancel: string;
  readonly stateTitle: string;
  readonly stateText: string;
  readonly showState: string;
  readonly copy: string;
  readonly copied: string;
  readonly copyByHand: string;
  readonly reportLabel: string;
  readonly stale: (stale: Stale) => string;
  readonly state: {
    readonly version: string;
    readonly host: string;
    readonly functions: (known: string | undefined, total: string) => string;
    readonly runtime: string;
    readonly runtimes: Readonly<Record<'shared' | 'separate' | 'page' | 'none', string>>;
    readonly calculation: string;
    readonly separators: string;
    readonly formulas: string;
    readonly errors: string;
    readonly noErrors: string;
    readonly writtenBy: string;
    readonly has: string;
    readonly lacks: string;
    /** What each ability that a host may lack costs where it is missing. */
    readonly costs: Readonly<Record<string, string>>;
  };
}

export const REMEDIES_WORDS: InLanguages<RemediesWords> = { en: english, de: german, fr: french };
