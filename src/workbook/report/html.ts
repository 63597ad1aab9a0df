import type { Language } from '../../core/language';
import { VERDICTS, type Verdict } from '../../core/verdict';
import type { ChannelCheck } from '../../plan/check';
import type { Limits } from '../../plan/limits';
import { levelLadder } from '../../plots/level-ladder';
import { spanBar } from '../../plots/span-bar';
import { escapeXml as escaped, svgText } from '../../plots/svg';
import { thermalStrip } from '../../plots/thermal-strip';
import { reasonsOf, worstFirst } from '../annotate';
import type { ReportContent } from './content';
import { verdictBars } from './html-charts';
import { htmlStyle, type Paper } from './html-style';
import type { Section, Typed } from './section';
import { HTML_WORDS } from './html-words';

export { PAPERS, type Paper } from './html-style';

export interface HtmlOptions {
  readonly language: Language;
  readonly paper: Paper;
  /** Which channels get their plots: those that are not PASS, or every one. */
  readonly plots: 'open' | 'all';
  readonly checks: readonly ChannelCheck[];
  readonly limits: Limits;
}

const isVerdict = (typed: Typed | undefined): typed is Verdict => VERDICTS.includes(typed as Verdict);
/** Each verdict has a mark of its own beside the word, so that it holds in grey. */
const MARK: Readonly<Record<Verdict, string>> = { PASS: '✓', WARN: '△', FAIL: '✕', INCOMPLETE: '▨' };
const verdictWord = (verdict: Verdict): string => `<span class="${verdict}">${MARK[verdict]} ${verdict}</span>`;

const cellHtml = (typed: Typed | undefined, isNumber: boolean): string => {
  if (isVerdict(typed)) return `<td class="verdict">${verdictWord(typed)}</td>`;
  const said = typed === null || typed === undefined ? '' : escaped(String(typed));
  return `<td${isNumber ? ' class="number"' : ''}>${said}</td>`;
};

const tableHtml = ({ title, text, columns, lines, hasTotal }: Section, linked: ReadonlySet<string>): string => {
  const head = [title, text].map((said) => `<th scope="col">${escaped(said)}</th>`).join('');
  const more = columns.map((said) => `<th scope="col" class="number">${escaped(said)}</th>`).join('');
  const body = lines.map((line, i) => {
    const name = String(line[0] ?? '');
    const said = isVerdict(line[0])
      ? verdictWord(line[0])
      : linked.has(name)
        ? `<a href="#${anchorOf(name)}">${escaped(name)}</a>`
        : escaped(name);
    const cells = columns.map((_, c) => cellHtml(line[c + 2], true)).join('');
    const total = hasTotal && i === lines.length - 1 ? ' class="total"' : '';
    return `<tr${total}><th scope="row">${said}</th>${cellHtml(line[1], false)}${cells}</tr>`;
  });
  return `<div class="scroll"><table><thead><tr>${head}${more}</tr></thead><tbody>${body.join('')}</tbody></table></div>`;
};

const anchorOf = (id: string): string =>
  `channel-${[...id].map((letter) => letter.codePointAt(0)!.toString(36)).join('-')}`;

const PLOT_WIDTH = 320;
const channelHtml = (check: ChannelCheck, { language, limits }: HtmlOptions): string => {
  const { channel, verdict } = check;
  const rows = [{ label: channel.named?.sensor ?? channel.sensor?.name ?? channel.id, check }];
  const place = [channel.group, `${channel.point ?? ''}${channel.direction ?? ''}`, channel.location].filter(Boolean);
  const reasons = reasonsOf(check, limits, language).map(({ sentence }) => `<li>${escaped(sentence)}</li>`);
  const figures = [levelLadder, spanBar, thermalStrip].map((draw) => {
    const plot = draw(rows, { width: PLOT_WIDTH, limits, language });
    return `<figure><figcaption>${escaped(plot.title)}</figcaption>${svgText(plot)}</figure>`;
  });
  return [
    `<article id="${anchorOf(channel.id)}"><h3>${escaped(channel.id)} ${verdictWord(verdict)}</h3>`,
    place.length > 0 ? `<p class="quiet">${escaped(place.join(' · '))}</p>` : '',
    reasons.length > 0 ? `<ul>${reasons.join('')}</ul>` : '',
    `<div class="plots">${figures.join('')}</div></article>`,
  ].join('');
};

/** More plots than this make a page that no browser prints in reasonable time. */
const MOST_PLOTS = 400;

/** One page without scripts that holds the whole report: to read, to send and to print. */
export const htmlReport = (source: string, content: ReportContent, options: HtmlOptions): string => {
  const { language, paper, plots, checks } = options;
  const words = HTML_WORDS[language];
  const shown = checks.filter(({ verdict }) => plots === 'all' || verdict !== 'PASS').sort(worstFirst);
  const drawn = shown.slice(0, MOST_PLOTS);
  const linked = new Set(drawn.map(({ channel }) => channel.id));
  const { title, outcome, aid, facts } = content;
  const sections = [...content.sections, content.channels];
  const chapters = sections.map((section) => {
    const hasBars = section.key === 'parts' || section.key === 'checks';
    const heading = `<h2 id="${section.key}">${escaped(section.title)}</h2>`;
    return `<section aria-labelledby="${section.key}">${heading}${hasBars ? verdictBars(section) : ''}${tableHtml(section, linked)}</section>`;
  });
  const contents = sections.map(({ key, title: name }) => `<li><a href="#${key}">${escaped(name)}</a></li>`);
  const rest = shown.length - drawn.length;
  return [
    `<!doctype html>\n<html lang="${language}"><head><meta charset="utf-8" />`,
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'" />`,
    '<meta name="viewport" content="width=device-width, initial-scale=1" />',
    `<title>${escaped(`${title}: ${source}`)}</title><style>${htmlStyle(paper)}</style></head><body>`,
    `<header><h1>${escaped(title)}: ${escaped(source)}</h1><p>${escaped(outcome)}.</p>`,
    facts.length > 0
      ? `<dl>${facts.map(([label, value]) => `<dt>${escaped(label)}</dt><dd>${escaped(value)}</dd>`).join('')}</dl>`
      : '',
    `<p class="quiet">${escaped(aid)}</p></header>`,
    `<nav aria-label="${words.contents}"><ul>${contents.join('')}`,
    drawn.length > 0 ? `<li><a href="#plots">${words.channels}</a></li>` : '',
    `</ul></nav><main>${chapters.join('')}`,
    drawn.length > 0
      ? `<section aria-labelledby="plots"><h2 id="plots">${words.channels}</h2>${drawn.map((check) => channelHtml(check, options)).join('')}</section>`
      : '',
    rest > 0 ? `<p>${escaped(words.notDrawn(rest))}</p>` : '',
    `</main><footer>${escaped(aid)}</footer></body></html>\n`,
  ].join('');
};
