/** What can be wrong with a value that a person typed. A closed set: every host and every text switch covers all of it. */
export type Problem =
  | { code: 'not-a-number'; given: string; unit: string }
  | { code: 'wrong-unit'; given: string; unit: string }
  | { code: 'ambiguous'; given: string; readings: readonly [string, string] }
  | { code: 'wrong-statistic'; given: string; expected: Statistic }
  | { code: 'bad-curve'; given: string; rule: string };

export type Statistic = 'rms' | 'peak' | 'peak-to-peak';

/** A problem tied to an argument, or a reason why a calculation has no answer. */
export type Issue =
  | (Problem & { arg: string })
  | { code: 'missing'; arg: string }
  | { code: 'out-of-range'; arg: string; given: number; unit: string; rule: string }
  | { code: 'unknown-choice'; arg: string; given: string; choices: readonly string[] }
  | { code: 'wrong-size'; arg: string; given: string; rule: string }
  | { code: 'cell-error'; arg: string; given: string }
  | { code: 'argument-count'; given: number; rule: string }
  | { code: 'beyond-data'; arg: string; given: number; unit: string; rule: string }
  | { code: 'no-result'; rule: string };

export type IssueCode = Issue['code'];

/** The result of reading a text. */
export type Read<T> = { ok: true; value: T } | { ok: false; problem: Problem };

/** The result of a calculation that can fail for a reason the user must see. */
export type Outcome<T> = { ok: true; value: T } | { ok: false; issue: Issue };

export const read = <T>(value: T): Read<T> => ({ ok: true, value });
export const unread = <T>(problem: Problem): Read<T> => ({ ok: false, problem });
export const outcome = <T>(value: T): Outcome<T> => ({ ok: true, value });
export const failure = <T = never>(issue: Issue): Outcome<T> => ({ ok: false, issue });
/** The same outcome with its value turned into another; an issue passes through. */
export const mapped = <T, U>(result: Outcome<T>, turn: (value: T) => U): Outcome<U> =>
  result.ok ? outcome(turn(result.value)) : result;
