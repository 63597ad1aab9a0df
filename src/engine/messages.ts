import type { Issue, IssueCode } from '../core/issue';

const quoted = (given: string): string => `“${given.length > 60 ? `${given.slice(0, 57)}…` : given}”`;
const inUnit = (unit: string): string => (unit === '' || unit === '1' ? 'a plain number' : `a number in ${unit}`);

type Texts = { [C in IssueCode]: (issue: Extract<Issue, { code: C }>) => string };

const TEXTS: Texts = {
  missing: ({ arg }) => `${arg} is missing.`,
  'not-a-number': ({ arg, given, unit }) => `${arg}: read ${quoted(given)}, expected ${inUnit(unit)}.`,
  'wrong-unit': ({ arg, given, unit }) =>
    `${arg}: read ${quoted(given)}, which is another quantity; expected ${inUnit(unit)} or a unit that converts to it.`,
  ambiguous: ({ arg, given, readings }) =>
    `${arg}: ${quoted(given)} can mean ${readings[0]} or ${readings[1]}; write one of them.`,
  'wrong-statistic': ({ arg, given, expected }) =>
    `${arg}: read ${quoted(given)}, expected a level stated as ${expected}.`,
  'bad-curve': ({ arg, given, rule }) => `${arg}: read ${quoted(given)}, expected ${rule}.`,
  'out-of-range': ({ arg, given, unit, rule }) =>
    `${arg} must be ${rule}${unit === '1' ? '' : ` ${unit}`}; got ${given}${unit === '1' ? '' : ` ${unit}`}.`,
  'unknown-choice': ({ arg, given, choices }) =>
    `${arg}: read ${quoted(given)}, expected one of ${choices.join(', ')}.`,
  'wrong-size': ({ arg, given, rule }) => `${arg}: got ${given}, expected ${rule}.`,
  'cell-error': ({ arg, given }) => `${arg}: the cell holds the error ${given}.`,
  'argument-count': ({ given, rule }) => `Got ${given} arguments, expected ${rule}.`,
  'beyond-data': ({ arg, given, unit, rule }) => `${arg}: ${given} ${unit} lies beyond the data, ${rule}.`,
  'no-result': ({ rule }) => `No result: ${rule}.`,
};

/** The one place where an issue becomes a sentence. */
export const describeIssue = <I extends Issue>(issue: I): string => (TEXTS[issue.code] as (i: Issue) => string)(issue);
