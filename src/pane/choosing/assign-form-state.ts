import type { AssignOptions } from '../../plan/assign/options';
import type { Part } from '../../plan/choosing/candidate';
import {
  MIXING_CHOICES,
  type AssignPaneWords,
  type AssignScope,
  type AssignSwitch,
  type MixingChoice,
} from './assign-words';

/** What is typed into the form, as it stands there. */
export type AssignNumber = 'spare' | 'seconds';
const RANGES: Readonly<Record<AssignNumber, { readonly least: number; readonly most: number }>> = {
  spare: { least: 0, most: 99 },
  seconds: { least: 1, most: 3600 },
};

/** "5", "2,5" or "5 %". */
const numberIn = (text: string): number => {
  const match = /^(\d+(?:[.,]\d+)?)\s*%?$/.exec(text.trim());
  return match ? Number(match[1]!.replace(',', '.')) : NaN;
};

/** What a person asked for before the search. */
export class AssignForm {
  scope: AssignScope = 'all';
  mixing: MixingChoice = 'few';
  readonly numbers: Record<AssignNumber, string> = { spare: '0', seconds: '60' };
  readonly switches: Record<AssignSwitch, boolean> = { warn: true, incomplete: false, keep: false, roving: false };
  /** A mount is not among them at first: one housing with several axes stands on one mount. */
  readonly free = new Set<Part>(['cable', 'input']);

  isValid(which: AssignNumber): boolean {
    const { least, most } = RANGES[which];
    const value = numberIn(this.numbers[which]);
    return value >= least && value <= most;
  }

  /** What is wrong with the numbers, in a sentence. */
  complaint(words: AssignPaneWords): string | undefined {
    const wrong = (['spare', 'seconds'] as const).find((which) => !this.isValid(which));
    if (!wrong) return undefined;
    const { least, most } = RANGES[wrong];
    return words.badNumber(words[wrong], String(least), String(most));
  }

  get options(): AssignOptions {
    const { warn, incomplete, keep, roving } = this.switches;
    return {
      allowWarn: warn,
      allowIncomplete: incomplete,
      pinned: keep ? 'filled' : undefined,
      roving,
      spare: numberIn(this.numbers.spare) / 100,
      timeLimit: numberIn(this.numbers.seconds),
      weights: { mixing: MIXING_CHOICES[this.mixing] },
      free: [...this.free],
    };
  }
}
