import type { Language } from '../../core/language';
import { markdownText } from '../report/markdown';
import type { CompareContent, CompareEntry } from './compare-content';
import { COMPARE_WORDS } from './compare-words';

const verdictWords = ({ verdicts }: CompareEntry): string =>
  verdicts ? ` ${[verdicts.before, verdicts.after].filter(Boolean).join(' → ')}` : '';

/** A comparison as Markdown, for text tools and version control. */
export const compareMarkdown = (
  { title, outcome, sections }: CompareContent,
  [before, after]: readonly [string, string],
  language: Language,
): string =>
  [
    `# ${COMPARE_WORDS[language].labelled(title, `${markdownText(before)} → ${markdownText(after)}`)}`,
    '',
    ...outcome.map((line) => `- ${markdownText(line)}`),
    '',
    ...sections.flatMap((section) => [
      `## ${section.title}`,
      '',
      ...section.entries.map((entry) => {
        const head = entry.name === '' ? '' : `**${markdownText(entry.name)}**${verdictWords(entry)}: `;
        return `- ${head}${markdownText(entry.sentences.join(' '))}`.replace(/: $/, '');
      }),
      '',
    ]),
  ].join('\n');
