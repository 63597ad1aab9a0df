import type { AnyFunction, ArgSpec, Example } from '../functions/define';
import { QUESTIONS } from '../functions/questions';
import {
  blankOf,
  exampleFormula,
  limitsOf,
  resultUnitOf,
  signatureOf,
  sourceText,
  unitOf,
} from '../functions/describe';

export const START = '<!-- function reference: made by npm run generate -->';
export const END = '<!-- end of function reference -->';

const html = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('|', '&#124;')
    .replaceAll('*', '&#42;');
const code = (text: string): string => `<code>${html(text)}</code>`;

const kindOf = (spec: ArgSpec): string =>
  ({ list: ' (list)', curve: ' (curve)', block: ' (range)', cell: ' (cell)', text: '', choice: '', quantity: '' })[
    spec.kind ?? 'quantity'
  ];

const argumentRow = ([key, spec]: [string, ArgSpec]): string => {
  const blank = blankOf(spec) || 'needed';
  return `| ${code(key)} | ${html(spec.text)}${kindOf(spec)} | ${html(unitOf(spec))} | ${html(limitsOf(spec))} | ${html(blank)} |`;
};

const resultText = ({ result }: AnyFunction): string => {
  if (result.kind !== 'row') return result.text;
  return result.columns.map(({ title, text }) => `${title}: ${text}`).join(' ');
};

export const shown = (result: Example['result']): string => {
  if (!Array.isArray(result)) return String(result);
  return (result as readonly (readonly (number | string)[])[]).map((row) => row.join(' · ')).join(' ⏎ ');
};

/** More are run as tests; two show how a call looks. */
const EXAMPLES_SHOWN = 2;

const entry = (namespace: string) => (fn: AnyFunction) => {
  const name = `${namespace}.${fn.name}`;
  const rows = Object.entries(fn.args as Record<string, ArgSpec>).map(argumentRow);
  const examples = fn.examples
    .slice(0, EXAMPLES_SHOWN)
    .map(
      (example) =>
        `- ${code(`=${exampleFormula(name, example)}`)} → ${html(shown(example.result))} (${html(example.from)})`,
    );
  return [
    `<details><summary>${code(`${name}(${signatureOf(fn)})`)} → ${html(resultUnitOf(fn))}<br>${html(fn.summary)}</summary>`,
    '',
    `${code(fn.equation)}<br>Result: ${html(resultText(fn))}<br>Valid: ${html(fn.validity)}<br>Source: ${html(sourceText(fn.source))}.`,
    '',
    ...(rows.length > 0
      ? ['| argument | meaning | unit | limits | if blank |', '|---|---|---|---|---|', ...rows, '']
      : []),
    ...examples,
    '</details>',
  ].join('\n');
};

/** Quantity, forward and inverse functions, source and how many outside numbers hold them. */
const questionTable = (functions: readonly AnyFunction[]): string => {
  const byName = new Map(functions.map((fn) => [fn.name, fn]));
  const rows = QUESTIONS.map(({ quantity, forward, inverse }) => {
    const asked = [...forward, ...inverse].flatMap((name) => byName.get(name) ?? []);
    const source = byName.get(forward[0] ?? '')?.source;
    const checks = asked.reduce((count, fn) => count + fn.examples.length, 0);
    const names = (list: readonly string[]) => list.map(code).join(' ') || '–';
    return `| ${quantity} | ${names(forward)} | ${names(inverse)} | ${source ? html(sourceText(source)) : '–'} | ${checks} worked examples |`;
  });
  return [
    '### Questions forward and back',
    '',
    '| quantity | what do I get | what may I use | source of the first | held by |',
    '|---|---|---|---|---|',
    ...rows,
  ].join('\n');
};

/** The function reference, one heading per family, one folded block per function. */
export const functionReference = (functions: readonly AnyFunction[], namespace: string): string => {
  const families = [...new Set(functions.map((fn) => fn.family))];
  const parts = families.map((family) => {
    const members = functions.filter((fn) => fn.family === family);
    return `### ${family[0]?.toUpperCase()}${family.slice(1)}\n\n${members.map(entry(namespace)).join('\n')}`;
  });
  return [questionTable(functions), ...parts].join('\n\n');
};

/** The page with its reference replaced; undefined when the two marks are not there, in order. */
export const withReference = (page: string, reference: string): string | undefined => {
  const start = page.indexOf(START);
  const end = page.indexOf(END, start);
  if (start < 0 || end < 0) return undefined;
  return `${page.slice(0, start + START.length)}\n\n${reference}\n\n${page.slice(end)}`;
};
