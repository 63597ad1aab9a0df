import type { Verdict } from '../../core/verdict';

/** What the command tells the shell. 64 and 65 are the usual numbers for wrong usage and unreadable input (sysexits). */
export const STATUS = { good: 0, fail: 1, incomplete: 2, usage: 64, unreadable: 65, broken: 70 } as const;

/** Why the command cannot do what was asked, in a sentence for the person who typed it. */
export class CommandProblem extends Error {
  constructor(
    message: string,
    readonly status: number = STATUS.unreadable,
  ) {
    super(message);
    this.name = 'CommandProblem';
  }
}
export const usageProblem = (message: string): CommandProblem => new CommandProblem(message, STATUS.usage);

const OF_VERDICT: Readonly<Record<Verdict, number>> = {
  FAIL: STATUS.fail,
  INCOMPLETE: STATUS.incomplete,
  WARN: STATUS.good,
  PASS: STATUS.good,
};
export const statusOfVerdict = (verdict: Verdict): number => OF_VERDICT[verdict];
