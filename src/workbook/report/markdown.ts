import type { ReportContent } from './content';
import type { Section } from './section';

/** Text from a plan shows as it is: no mark-up, no HTML, no table edge and no line break comes out of it. */
export const markdownText = (text: string): string =>
  text
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ')
    .replace(/[\\`*_{}[\]#|~]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;');

const sectionLines = ({ title, text, columns, lines }: Section): string[] => {
  const row = (cells: readonly (string | number | null)[]) =>
    `| ${cells.map((cell) => markdownText(String(cell ?? ''))).join(' | ')} |`;
  const width = 2 + columns.length;
  return [
    `## ${markdownText(title)}`,
    '',
    row([title, text, ...columns]),
    `| ${Array.from({ length: width }, (_, i) => (i < 2 ? '---' : '---:')).join(' | ')} |`,
    ...lines.map((line) => row(Array.from({ length: width }, (_, i) => line[i] ?? null))),
    '',
  ];
};

/** The report as Markdown, for text tools and version control. */
export const markdownReport = (
  source: string,
  { title, outcome, aid, facts, sections, channels }: ReportContent,
): string =>
  [
    `# ${markdownText(title)}: ${markdownText(source)}`,
    '',
    `${markdownText(outcome)}.`,
    '',
    markdownText(aid),
    '',
    ...facts.map(([label, value]) => `- ${markdownText(label)}: ${markdownText(value)}`),
    ...(facts.length > 0 ? [''] : []),
    ...[...sections, channels].flatMap(sectionLines),
  ].join('\n');
