import type { AnyFunction, ArgSpec } from '../define';

/** Every text of a declaration that people read while they type: summary, arguments, results. */
export const textsOf = (fn: AnyFunction): string[] => [
  fn.summary,
  ...Object.values(fn.args as Record<string, ArgSpec>).map(({ text }) => text),
  ...(fn.result.kind === 'row' ? fn.result.columns.map(({ text }) => text) : [fn.result.text]),
];
