import { UNITS } from '../core/units';
import type { AnyFunction, ArgSpec } from '../functions/define';
import { blankOf, exampleFormula, limitsOf, resultUnitOf, signatureOf, unitOf } from '../functions/describe';
import type { Wording } from '../functions/words/wording';
import { HELP_WORDS, type HelpWords } from './help-words';
import { sourceText } from '../functions/describe';
import { shown } from './reference';
import { code, html, linked, paragraphs, points, staticPage, steps } from './static-page';

const EXAMPLES_SHOWN = 2;

const section = (heading: string, body: string): string => `<h2>${html(heading)}</h2>\n${body}`;

/** In a narrow pane each cell carries its heading. */
const table = (columns: readonly string[], rows: readonly (readonly string[])[], kind = ''): string => {
  const head = columns.map((column) => `<th scope="col">${html(column)}</th>`).join('');
  const line = (row: readonly string[]) =>
    row.map((cell, c) => `<td${c > 0 ? ` data-heading="${html(columns[c] ?? '')}"` : ''}>${html(cell)}</td>`).join('');
  const body = rows.map((row) => `<tr>${line(row)}</tr>`).join('\n');
  return `<table${kind}>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${body}\n</tbody>\n</table>`;
};

/** Each quantity with the unit in which the worksheet functions take and give it. */
const unitRows = (functions: readonly AnyFunction[]): string[][] => {
  const used = new Set<string>();
  for (const fn of functions) {
    for (const spec of Object.values(fn.args as Record<string, ArgSpec>)) {
      if (spec.kind === 'curve') [spec.x, spec.y].forEach((unit) => used.add(unit));
      else if ('unit' in spec) used.add(spec.unit);
    }
    if (fn.result.kind === 'row') fn.result.columns.forEach(({ unit }) => used.add(unit));
    else if ('unit' in fn.result) used.add(fn.result.unit);
  }
  const rows = new Map<string, string[]>();
  for (const [unit, { quantity, label }] of Object.entries(UNITS))
    if (used.has(unit) && label !== '') rows.set(quantity, [...(rows.get(quantity) ?? []), label]);
  return [...rows].map(([quantity, labels]) => [quantity, labels.join(', ')]);
};

const argumentItem = ([key, spec]: [string, ArgSpec], words: HelpWords['functions'], { say }: Wording): string => {
  const facts = [unitOf(spec), limitsOf(spec), `${words.ifBlank}: ${blankOf(spec) || words.needed}`].filter(Boolean);
  return `<dt>${code(key)}</dt>\n<dd>${html(say(spec.text))} <span class="soft">(${html(facts.join('; '))})</span></dd>`;
};

const resultText = ({ result }: AnyFunction, { say }: Wording): string =>
  result.kind === 'row'
    ? result.columns.map(({ title, text }) => `${title}: ${say(text)}`).join(' ')
    : say(result.text);

/** What is asked for by name stands inside the folded part, so that a browser unfolds it. */
const functionItem = (fn: AnyFunction, namespace: string, words: HelpWords['functions'], wording: Wording): string => {
  const name = `${namespace}.${fn.name}`;
  const args = Object.entries(fn.args as Record<string, ArgSpec>).map((arg) => argumentItem(arg, words, wording));
  const examples = fn.examples
    .slice(0, EXAMPLES_SHOWN)
    .map(
      (example) =>
        `<li>${code(`=${exampleFormula(name, example)}`)} → ${html(shown(example.result))} <span class="soft" lang="en">(${html(example.from)})</span></li>`,
    );
  return [
    `<details><summary>${code(`${name}(${signatureOf(fn)})`)} → ${html(resultUnitOf(fn))}<span>${html(wording.say(fn.summary))}</span></summary>`,
    `<div class="function" id="${fn.name}">`,
    `<p>${code(fn.equation)}</p>`,
    ...(args.length > 0 ? [`<dl>\n${args.join('\n')}\n</dl>`] : []),
    `<p>${words.result}: ${html(resultText(fn, wording))}</p>`,
    `<p>${words.valid}: <span lang="en">${html(fn.validity)}</span></p>`,
    `<p>${words.source}: <span lang="en">${html(sourceText(fn.source))}.</span></p>`,
    `<p>${words.examples}:</p>\n<ul>\n${examples.join('\n')}\n</ul>`,
    '</div></details>',
  ].join('\n');
};

const functionReference = (
  functions: readonly AnyFunction[],
  namespace: string,
  words: HelpWords['functions'],
  wording: Wording,
): string => {
  const index = functions.map(({ name }) => `<li><a href="#${name}">${html(`${namespace}.${name}`)}</a></li>`);
  const families = [...new Set(functions.map(({ family }) => family))].map((family) => {
    const members = functions.filter((fn) => fn.family === family);
    const items = members.map((fn) => functionItem(fn, namespace, words, wording));
    return `<h3>${html(words.families[family])}</h3>\n${items.join('\n')}`;
  });
  return [
    paragraphs(words.text),
    `<details><summary>${html(words.index)}</summary>\n<ul class="index">\n${index.join('\n')}\n</ul></details>`,
    ...families,
  ].join('\n');
};

/** What a person may want to look up, in one page that needs no script. */
export const helpPage = (functions: readonly AnyFunction[], namespace: string, wording: Wording): string => {
  const { language } = wording;
  const words = HELP_WORDS[language];
  const body = [
    paragraphs(words.lead),
    section(words.start.heading, steps(words.start.steps)),
    section(
      words.verdicts.heading,
      table(words.verdicts.columns, words.verdicts.rows, ' class="wide"') + paragraphs(words.verdicts.after),
    ),
    section(words.errors.heading, points(words.errors.points)),
    section(words.numbers.heading, points(words.numbers.points)),
    section(words.cautions.heading, paragraphs(words.cautions.text)),
    section(words.privacy.heading, `${paragraphs(words.privacy.text)}\n<p>${linked(words.install)}</p>`),
    section(words.functions.heading, functionReference(functions, namespace, words.functions, wording)),
    section(words.units.heading, paragraphs(words.units.text) + table(words.units.columns, unitRows(functions))),
  ];
  return staticPage('help', language, { title: words.title, body: body.join('\n') });
};
