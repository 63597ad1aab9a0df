import type { AddInState } from '../workbook/remedies/state';
import type { RemediesWords } from './remedies-words';

/** The state as lines of text, to be read, copied and sent. */
export const reportLines = (state: AddInState, words: RemediesWords, count: (n: number) => string): string[] => {
  const say = words.state;
  const { running, facts, functions, errors, formulas, writtenBy, stale } = state;
  const errorText = Object.entries(errors)
    .map(([error, n]) => `${error} ${count(n)}`)
    .join(', ');
  const separators = facts?.separators && [facts.separators.decimal, facts.separators.list].filter(Boolean).join(' ');
  return [
    `${say.version}: Channelwright ${running.version}${running.built ? ` (${running.built})` : ''}`,
    `${say.host}: ${facts?.program ?? state.host}`,
    say.functions(functions.known === undefined ? undefined : count(functions.known), count(functions.total)),
    ...(facts ? [`${say.runtime}: ${say.runtimes[facts.runtime]}`] : []),
    ...(facts?.calculation ? [`${say.calculation}: ${facts.calculation}`] : []),
    ...(separators ? [`${say.separators}: ${separators}`] : []),
    `${say.formulas}: ${count(formulas)}`,
    `${say.errors}: ${errorText || say.noErrors}`,
    ...(writtenBy ? [`${say.writtenBy}: ${writtenBy}`] : []),
    ...Object.entries(facts?.abilities ?? {}).map(([name, has]) =>
      has ? `${name}: ${say.has}` : `${name}: ${say.lacks} – ${say.costs[name] ?? ''}`,
    ),
    ...stale.map(words.stale),
  ];
};
