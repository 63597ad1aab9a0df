import { callFunction } from '../../engine/call';
import { describeIssue } from '../../engine/messages';
import { isCellError, type Block, type Cell } from '../../functions/define';
import { functionByName, NAMESPACE } from '../../functions/index';
import { outermostCall } from './formula-parts';
import { STATUS, usageProblem } from './status';
import type { Io } from './terminal';

type Result =
  { readonly value: Cell } | { readonly spill: Block } | { readonly error: string; readonly message?: string };

const HOST_ERRORS: Readonly<Record<string, string>> = {
  '#NAME?': 'A name in the formula is not known.',
  '#DIV/0!': 'Something is divided by zero.',
  '#REF!': 'The formula refers to cells that do not exist.',
  '#SPILL!': 'The result does not fit on a sheet.',
};
const NO_FORMULA = 'This is not a formula: a bracket, a quote or a value is missing or too many.';

const typed = (text: string): string => (text.trim().startsWith('=') ? text.trim() : `=${text.trim()}`);

/** Loads the calculation engine only when a formula asks for it. */
const evaluate = async (formulas: readonly string[]) => (await import('./engine')).evaluateAll(formulas);

/** Why a call of ours has no value: its arguments are worked out alone and the function is called with them again. */
const messages = async (formulas: readonly string[]): Promise<(string | undefined)[]> => {
  const prefix = `${NAMESPACE}.`;
  const calls = formulas.map((formula) => {
    const call = outermostCall(formula);
    const fn = call?.name.toUpperCase().startsWith(prefix) ? functionByName(call.name.slice(prefix.length)) : undefined;
    return call && fn ? { fn, args: call.args } : undefined;
  });
  const args = calls.flatMap((call) => (call ? call.args.filter((arg) => arg.trim() !== '') : []));
  const blocks = args.length === 0 ? [] : await evaluate(args.map(typed));
  let next = 0;
  return calls.map((call) => {
    if (!call) return undefined;
    const given = call.args.map((arg) => {
      const block = arg.trim() === '' ? [[null]] : (blocks[next++]?.block ?? [[null]]);
      return block.length === 1 && block[0]?.length === 1 ? (block[0][0] ?? null) : block;
    });
    const called = callFunction(call.fn, given);
    return called.ok ? undefined : describeIssue(called.issue);
  });
};

const evaluated = async (formulas: readonly string[]): Promise<Result[]> => {
  const found = (await evaluate(formulas)).map(({ block }): Result => {
    if (!block) return { error: '#VALUE!', message: NO_FORMULA };
    if (block.length > 1 || (block[0]?.length ?? 0) > 1) return { spill: block };
    const value = block[0]?.[0] ?? null;
    return value !== null && isCellError(value) ? { error: value.error } : { value };
  });
  const wrong = found.flatMap((result, i) => ('error' in result && result.message === undefined ? [i] : []));
  const said = await messages(wrong.map((i) => formulas[i]!));
  wrong.forEach((i, n) => {
    const result = found[i] as { error: string };
    const message = said[n] ?? HOST_ERRORS[result.error];
    if (message) found[i] = { ...result, message };
  });
  return found;
};

const shown = (cell: Cell): string => {
  if (cell === null) return '';
  return isCellError(cell) ? cell.error : typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
};

const plain = (result: Result): string => {
  if ('value' in result) return shown(result.value);
  if ('spill' in result) return result.spill.map((row) => row.map(shown).join('\t')).join('\n');
  return result.message ? `${result.error}  ${result.message}` : result.error;
};

/** Formulas from the command line, or one per line of the input. */
export const evalCommand = async (given: readonly string[], json: boolean, io: Io): Promise<number> => {
  const lines = given.length > 0 ? given : (await io.input()).split(/\r?\n/);
  const formulas = lines.filter((line) => line.trim() !== '').map(typed);
  if (formulas.length === 0) throw usageProblem('eval: expected a formula, such as "CHAN.MASS.SHIFT(0.1)".');
  const results = await evaluated(formulas);
  for (const result of results) io.out(`${json ? JSON.stringify(result) : plain(result)}\n`);
  return results.some((result) => 'error' in result && result.message === NO_FORMULA) ? STATUS.unreadable : STATUS.good;
};
